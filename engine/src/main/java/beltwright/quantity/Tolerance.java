package beltwright.quantity;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/// ISO 286 limits and fits: the deviations that `8 h6` and `22 N7` stand for.
///
///     shaft:  upper, lower = es, es − IT   (a to h)      ei + IT, ei   (k to r)
///     hole:   lower, upper = EI, EI + IT   (A to H)      ES − IT, ES   (K to R),  ES = −ei + Δ,  Δ = ITn − ITn−1 (0 to
/// 3 mm)
///
/// - Source: ISO 286-1/-2, transcribed; rows are checked against printed bearing-catalogue tables in the tests.
/// - Valid: above 0 to 120 mm, grades 5 to 11, letters c to r (js included), K, M, N to IT8 and P, R to IT7 as holes.
/// - Neglects: sizes over 120 mm and the letters this trade does not call for.
public record Tolerance(double lower, double upper) {
    private static final double[] SIZE = {3, 6, 10, 18, 30, 50, 80, 120}; // upper end of each step (mm)
    private static final int[][] IT = { // µm, rows IT5 to IT11
        {4, 5, 6, 8, 9, 11, 13, 15},
        {6, 8, 9, 11, 13, 16, 19, 22},
        {10, 12, 15, 18, 21, 25, 30, 35},
        {14, 18, 22, 27, 33, 39, 46, 54},
        {25, 30, 36, 43, 52, 62, 74, 87},
        {40, 48, 58, 70, 84, 100, 120, 140},
        {60, 75, 90, 110, 130, 160, 190, 220},
    };
    private static final Map<String, int[]> UPPER = Map.of( // es (µm)
            "d", new int[] {-20, -30, -40, -50, -65, -80, -100, -120},
            "e", new int[] {-14, -20, -25, -32, -40, -50, -60, -72},
            "f", new int[] {-6, -10, -13, -16, -20, -25, -30, -36},
            "g", new int[] {-2, -4, -5, -6, -7, -9, -10, -12},
            "h", new int[] {0, 0, 0, 0, 0, 0, 0, 0});
    private static final Map<String, int[]> LOWER = Map.of( // ei (µm)
            "k", new int[] {0, 1, 1, 1, 2, 2, 2, 3},
            "m", new int[] {2, 4, 6, 7, 8, 9, 11, 13},
            "n", new int[] {4, 8, 10, 12, 15, 17, 20, 23},
            "p", new int[] {6, 12, 15, 18, 22, 26, 32, 37});
    private static final double[] SIZE_FINE = {3, 6, 10, 18, 30, 40, 50, 65, 80, 100, 120}; // steps of c and r (mm)
    private static final int[] C = {-60, -70, -80, -95, -110, -120, -130, -140, -150, -170, -180};
    private static final int[] R = {10, 15, 19, 23, 28, 34, 34, 41, 43, 51, 54};
    private static final int[] J5_6 = {-2, -2, -2, -3, -4, -5, -7, -9};

    /// @param size nominal size (mm)
    /// @param code such as `h6` (shaft) or `N7` (hole)
    /// @return lower and upper deviation (mm)
    /// @throws Refusal if the code or the size is outside what the table holds
    public static Tolerance iso286(double size, String code) {
        var letters = code.replaceAll("[0-9]+$", "");
        int grade = code.length() > letters.length() ? Integer.parseInt(code.substring(letters.length())) : 0;
        boolean hole = !letters.isEmpty() && Character.isUpperCase(letters.charAt(0));
        var letter = letters.toLowerCase(java.util.Locale.ROOT);
        if (!(size > 0 && size <= 120) || grade < 5 || grade > 11) {
            throw refused(size, code);
        }
        int width = it(size, grade);
        if (letter.equals("js")) {
            return new Tolerance(-width / 2000.0, width / 2000.0);
        }
        if (letter.equals("j") && !hole && grade <= 6) {
            int low = J5_6[step(SIZE, size)];
            return microns(low, low + width);
        }
        var es = letter.equals("c") ? Integer.valueOf(C[step(SIZE_FINE, size)]) : at(UPPER, letter, size);
        if (es != null) {
            return hole ? microns(-es, -es + width) : microns(es - width, es);
        }
        var ei = letter.equals("r") ? Integer.valueOf(R[step(SIZE_FINE, size)]) : at(LOWER, letter, size);
        if (ei == null) {
            throw refused(size, code);
        }
        if (!hole) {
            int low = letter.equals("k") && grade > 7 ? 0 : ei;
            return microns(low, low + width);
        }
        boolean deltaApplies = grade <= (letter.equals("p") || letter.equals("r") ? 7 : 8);
        if (!deltaApplies || grade < 6) {
            throw refused(size, code);
        }
        int delta = size <= 3 ? 0 : width - it(size, grade - 1);
        int top = -ei + delta;
        return microns(top - width, top);
    }

    private static int it(double size, int grade) {
        return IT[grade - 5][step(SIZE, size)];
    }

    private static @Nullable Integer at(Map<String, int[]> table, String letter, double size) {
        var row = table.get(letter);
        return row == null ? null : Integer.valueOf(row[step(SIZE, size)]);
    }

    private static int step(double[] ends, double size) {
        int i = 0;
        while (size > ends[i]) {
            i++;
        }
        return i;
    }

    private static Tolerance microns(int lower, int upper) {
        return new Tolerance(lower / 1000.0, upper / 1000.0);
    }

    private static Refusal refused(double size, String code) {
        return new Refusal(
                "",
                "'" + code + "' at " + Numbers.plain(size) + " mm is not in the table of limits and fits",
                "sizes to 120 mm, grades 5 to 11, letters c d e f g h j js k m n p r (K M N to 8, P R to 7 as holes)",
                "write the limits out, for example '8 +0.02/-0.01'");
    }
}
