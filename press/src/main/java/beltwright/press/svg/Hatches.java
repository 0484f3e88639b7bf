package beltwright.press.svg;

import beltwright.press.drawing.Fill;

/// Section hatches as SVG patterns, sizes in mm on the sheet (ISO 128-50 habits).
final class Hatches {
    private Hatches() {}

    static String name(Fill fill, boolean turned) {
        return fill.word() + (turned ? "-turned" : "");
    }

    static String pattern(String id, String name) {
        boolean turned = name.endsWith("-turned");
        var fill = turned ? name.substring(0, name.length() - "-turned".length()) : name;
        String angle = turned ? "-45" : "45";
        return switch (fill) {
            case "steel" -> tile(id, 1.8, angle, "<path class=\"hatch\" d=\"M.9 0V1.8\"/>");
            case "light-metal" -> tile(id, 3, angle, "<path class=\"hatch\" d=\"M.8 0V3M1.7 0V3\"/>");
            case "plastic" -> tile(id, 2, angle, "<path class=\"hatch\" d=\"M1 0V2M0 1H2\"/>");
            default ->
                tile(
                        id,
                        2.2,
                        turned ? "30" : "0",
                        "<circle class=\"dot\" cx=\".6\" cy=\".6\" r=\".2\"/>"
                                + "<circle class=\"dot\" cx=\"1.7\" cy=\"1.7\" r=\".2\"/>");
        };
    }

    private static String tile(String id, double size, String angle, String marks) {
        var s = SvgWriter.number(size);
        return "<pattern id=\"" + id + "\" width=\"" + s + "\" height=\"" + s
                + "\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(" + angle + ")\">" + marks
                + "</pattern>\n";
    }
}
