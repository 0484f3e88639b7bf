package beltwright.part;

import beltwright.quantity.Numbers;
import beltwright.quantity.Refusal;

/// How wide the toothed face of a pulley has to be for its belt.
///
/// - Source: ISO 13050:2014 table 17, public transcription (the standard itself was not read). A
///   belt maker's technical manual, p. 93, is content with less (BD-14 in validation).
/// - Valid: belts of 5 mm pitch, 9, 15 and 25 mm wide.
public final class PulleyFace {
    private PulleyFace() {}

    /// {@return least toothed width (mm), between the flanges where it has both}
    public static double leastMm(double beltWidthMm, boolean flanged) {
        if (beltWidthMm != 9 && beltWidthMm != 15 && beltWidthMm != 25) {
            throw new Refusal(
                    "belt width",
                    Numbers.plain(beltWidthMm) + " mm is no standard width of 5 mm belts",
                    "9, 15 or 25 mm",
                    "take the next wider one");
        }
        return beltWidthMm + (flanged ? 2 : 6);
    }
}
