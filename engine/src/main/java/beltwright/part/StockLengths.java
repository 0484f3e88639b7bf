package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;
import java.util.List;

/// Lengths that belts of 5 mm pitch are stocked in, to 600 mm.
///
/// - Source: length lists of a belt maker's technical manual for rubber timing belt drives, p. 21
///   to 27. Other makers stock other lengths.
public final class StockLengths {
    /// Pitch lengths (mm), shortest first.
    public static final List<Integer> MM = List.of(
            120, 180, 225, 255, 265, 270, 275, 280, 295, 300, 305, 325, 330, 340, 345, 350, 360, 365, 370, 375, 385,
            400, 415, 420, 425, 450, 460, 475, 490, 500, 520, 525, 535, 540, 550, 560, 565, 575, 580, 600);

    private StockLengths() {}

    /// {@return the shortest stocked length (mm) that is at least this}
    public static int atLeastMm(double lengthMm) {
        return MM.stream()
                .filter(mm -> mm >= lengthMm)
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "belt length",
                        Numbers.plain(lengthMm) + " mm is longer than any in the list",
                        "up to 600 mm",
                        "bring the pulleys closer together"));
    }
}
