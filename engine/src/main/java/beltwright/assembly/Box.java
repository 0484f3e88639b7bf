package beltwright.assembly;

import java.util.List;

/// What is in the box, counted from the joints: one line a part.
public record Box(List<Item> items) {
    public Box {
        items = List.copyOf(items);
    }

    /// So many pieces of one part, and the seats they are for.
    ///
    /// @param massKg mass of all pieces together; NaN where the mass of one is unknown
    public record Item(
            String part, String name, String kind, String revision, int count, double massKg, List<String> seats) {
        public Item {
            seats = List.copyOf(seats);
        }
    }

    /// {@return mass of everything in the box (kg), NaN where the mass of a part is unknown}
    public double massKg() {
        return items.stream().mapToDouble(Item::massKg).sum();
    }

    public int pieces() {
        return items.stream().mapToInt(Item::count).sum();
    }
}
