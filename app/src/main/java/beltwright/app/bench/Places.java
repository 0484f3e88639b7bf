package beltwright.app.bench;

import beltwright.workshop.Shelf;

/// Where a reader can go from any page of the bench, and which of these places this is.
public record Places(String here, int kits, int parts) {
    static Places of(Shelf shelf, String here) {
        return new Places(here, shelf.drafts().size(), shelf.parts().size());
    }

    public boolean at(String place) {
        return here.equals(place);
    }
}
