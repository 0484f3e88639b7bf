package beltwright.app.bench;

import beltwright.kit.Kit;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// What every page of a kit beside its sheet shows around its own matter: the kit, its edits, the way to the other
/// pages.
///
/// @param here which page this is, as the end of its address
public record RoadSheet(Shelf shelf, Draft draft, Kit kit, String here) {
    private static final List<String[]> PAGES = List.of(
            new String[] {"", "Sheet"},
            new String[] {"/spread", "Spread"},
            new String[] {"/tension", "Tension"},
            new String[] {"/weakest", "Weakest link"},
            new String[] {"/power", "Power"},
            new String[] {"/brakes", "Brakes"},
            new String[] {"/limits", "Limits"},
            new String[] {"/ride", "Ride"},
            new String[] {"/log", "Log"});

    /// A page of a kit.
    public record Way(String words, String address, boolean here) {}

    static RoadSheet of(Shelf kept, Draft draft, String here) {
        var shelf = draft.over(kept);
        return new RoadSheet(shelf, draft, shelf.kit(draft.kit()), here);
    }

    static List<Way> ways(Draft draft, @Nullable String here) {
        return PAGES.stream()
                .map(p -> new Way(p[1], draft.address(p[0]), p[0].equals(here)))
                .toList();
    }

    public Places places() {
        return Places.of(shelf, "kits");
    }

    public List<Way> ways() {
        return ways(draft, here);
    }

    public String name() {
        return kit.draft().name();
    }

    public boolean invented() {
        return kit.draft().invented();
    }

    public String note() {
        return kit.draft().note();
    }

    public String revision() {
        return draft.revision();
    }

    public List<Edit> edits() {
        return draft.edits();
    }

    public String without(Edit edit) {
        return draft.without(edit).address(here);
    }

    public String address(String page) {
        return draft.address(page);
    }

    /// {@return the address of a page with more to ask after the draft}
    ///
    /// @param asked name and value in turn; a pair with an empty value is left out
    public String address(String page, String... asked) {
        var more = new ArrayList<String>();
        for (int i = 0; i < asked.length; i += 2) {
            if (!asked[i + 1].isEmpty()) {
                more.add(asked[i] + "=" + Bench.coded(asked[i + 1]));
            }
        }
        var address = draft.address(page);
        return more.isEmpty() ? address : address + (address.indexOf('?') < 0 ? '?' : '&') + String.join("&", more);
    }
}
