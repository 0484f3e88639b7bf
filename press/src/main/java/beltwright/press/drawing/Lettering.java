package beltwright.press.drawing;

import beltwright.quantity.Numbers;

/// How numbers are printed on a drawing, and how wide letters are.
///
/// Widths are those of the common sans-serif metrics (Helvetica and its metric equals), in thousandths of the type
/// size, transcribed from the published font metrics; a tenth is added so that a wider fallback face still fits.
public final class Lettering {
    private static final double ALLOWANCE = 1.1;
    private static final int OTHER = 667;
    // advance of the characters from ' ' to '~'
    private static final int[] WIDTH = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // space to /
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, // p to ~
    };
    private static final double STRONG = 1.08;

    private Lettering() {}

    /// {@return a length as a drawing prints it: two decimals at most, no idle zeros}
    public static String number(double mm) {
        var text = Numbers.fixed(mm, 2);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }

    /// {@return the width of these words at this type size (mm)}
    public static double widthMm(String words, double sizeMm, boolean strong) {
        double thousandths = words.codePoints()
                .mapToDouble(c -> c >= ' ' && c <= '~' ? WIDTH[c - ' '] : c > 0x2fff ? 1000 : OTHER)
                .sum();
        return thousandths / 1000 * sizeMm * ALLOWANCE * (strong ? STRONG : 1);
    }

    /// {@return the words cut so that they fit, with an ellipsis where something was cut off}
    public static String fitted(String words, double sizeMm, boolean strong, double widthMm) {
        if (widthMm(words, sizeMm, strong) <= widthMm) {
            return words;
        }
        int keep = words.length();
        while (keep > 0 && widthMm(words.substring(0, keep).strip() + "…", sizeMm, strong) > widthMm) {
            keep = words.offsetByCodePoints(keep, -1);
        }
        return words.substring(0, keep).strip() + "…";
    }
}
