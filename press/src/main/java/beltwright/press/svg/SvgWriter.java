package beltwright.press.svg;

import beltwright.press.drawing.Bounds;
import beltwright.press.drawing.Contour;
import beltwright.press.drawing.DimensionFigure;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity;
import beltwright.press.drawing.Fill;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Placing;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import beltwright.press.drawing.Tag;
import beltwright.press.drawing.View;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.TreeSet;

/// Writes a drawing as SVG: real size in mm, classes for meaning, `data-seat`, `data-finding` and `data-field` for
/// whoever points.
///
/// The same drawing gives the same bytes.
public final class SvgWriter {
    private static final double DASH_AND_GAP = 3.2; // of a hidden line, as drawing.css has it (mm)
    private static final String STYLE =
            resource("/beltwright/press/tokens.css") + resource("/beltwright/press/drawing.css");

    private final StringBuilder out = new StringBuilder(32_768);
    private final Drawing drawing;
    private final String prefix;
    private Tag open = Tag.NONE;

    private SvgWriter(Drawing drawing, String prefix) {
        this.drawing = drawing;
        this.prefix = prefix;
    }

    /// {@return a file of its own, with its style in it}
    public static String standalone(Drawing drawing) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + new SvgWriter(drawing, drawing.id()).write(true);
    }

    /// {@return an element for a page that carries tokens.css and drawing.css itself}
    ///
    /// @param prefix begins every id, different for each drawing on the page
    public static String inline(Drawing drawing, String prefix) {
        return new SvgWriter(drawing, prefix).write(false);
    }

    /// {@return the style that a page with inlined drawings needs: tokens and line classes}
    public static String style() {
        return STYLE;
    }

    private String write(boolean alone) {
        var w = number(drawing.widthMm());
        var h = number(drawing.heightMm());
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" id=\"")
                .append(id("drawing"));
        out.append("\" width=\"").append(w).append("mm\" height=\"").append(h).append("mm\" viewBox=\"0 0 ");
        out.append(w).append(' ').append(h).append("\" fill=\"none\" role=\"img\" aria-labelledby=\"");
        out.append(id("title"))
                .append(' ')
                .append(id("desc"))
                .append("\">\n<title id=\"")
                .append(id("title"));
        out.append("\">")
                .append(escaped(drawing.title()))
                .append("</title>\n<desc id=\"")
                .append(id("desc"));
        out.append("\">").append(escaped(drawing.tells())).append("</desc>\n");
        if (alone) {
            out.append("<style>\n").append(STYLE).append("</style>\n");
            out.append("<rect class=\"paper\" width=\"")
                    .append(w)
                    .append("\" height=\"")
                    .append(h)
                    .append("\"/>\n");
        }
        definitions();
        drawing.views().forEach(this::view);
        return out.append("</svg>\n").toString();
    }

    private void definitions() {
        var hatches = new TreeSet<String>();
        for (var view : drawing.views()) {
            for (var e : view.entities()) {
                hatch(e, hatches);
            }
        }
        boolean windows = drawing.views().stream().anyMatch(v -> v.window() != null);
        if (hatches.isEmpty() && !windows) {
            return;
        }
        out.append("<defs>\n");
        for (var hatch : hatches) {
            out.append(Hatches.pattern(id(hatch), hatch));
        }
        for (int i = 0; i < drawing.views().size(); i++) {
            var window = drawing.views().get(i).window();
            if (window != null) {
                var on = drawing.views().get(i).placing().of(window);
                out.append("<clipPath id=\"")
                        .append(id("window-" + i))
                        .append("\"><rect")
                        .append(rectangle(on));
                out.append("/></clipPath>\n");
            }
        }
        out.append("</defs>\n");
    }

    private static void hatch(Entity e, TreeSet<String> into) {
        switch (e) {
            case Entity.Path p when p.fill().hatched() -> into.add(Hatches.name(p.fill(), p.turned()));
            case Entity.Circle c when c.fill().hatched() -> into.add(Hatches.name(c.fill(), c.turned()));
            default -> {}
        }
    }

    private String rectangle(Bounds b) {
        return " x=\"" + number(b.left()) + "\" y=\"" + number(drawing.heightMm() - b.top()) + "\" width=\""
                + number(b.width()) + "\" height=\"" + number(b.height()) + "\"";
    }

    private void view(View view) {
        int at = drawing.views().indexOf(view);
        out.append("<g data-view=\"").append(escaped(view.name())).append('"');
        if (view.window() != null) {
            out.append(" clip-path=\"url(#").append(id("window-" + at)).append(")\"");
        }
        out.append(">\n");
        for (var e : view.entities()) {
            group(e.tag());
            entity(e, view.placing());
        }
        group(Tag.NONE);
        out.append("</g>\n");
    }

    /// Neighbours with the same tag stand in one group.
    private void group(Tag tag) {
        if (tag.equals(open)) {
            return;
        }
        if (!open.equals(Tag.NONE)) {
            out.append("</g>\n");
        }
        open = tag;
        if (tag.equals(Tag.NONE)) {
            return;
        }
        out.append("<g");
        if (!tag.seat().isEmpty()) {
            out.append(" data-seat=\"").append(escaped(tag.seat())).append('"');
        }
        if (!tag.finding().isEmpty()) {
            out.append(" data-finding=\"").append(escaped(tag.finding())).append('"');
        }
        if (!tag.field().isEmpty()) {
            out.append(" data-field=\"").append(escaped(tag.field())).append('"');
        }
        switch (tag.emphasis()) {
            case NORMAL -> {}
            case CHOSEN -> out.append(" class=\"sel\"");
            case QUIET -> out.append(" class=\"quiet\"");
        }
        out.append(">\n");
    }

    private void entity(Entity entity, Placing placing) {
        switch (entity) {
            case Entity.Line l -> line(placing.of(l.from()), placing.of(l.to()), l.line());
            case Entity.Arc a -> {
                out.append("<path class=\"").append(a.line().word()).append("\" d=\"");
                move(a.bow().mapped(placing).from());
                piece(a.bow().mapped(placing));
                out.append("\"/>\n");
            }
            case Entity.Circle c -> circle(c, placing);
            case Entity.Path p -> path(p, placing);
            case Entity.Text t -> text(t, placing);
            case Entity.Dimension d -> dimension(d, placing);
        }
    }

    private void line(Point a, Point b, LineClass line) {
        out.append("<path class=\"").append(line.word()).append("\" d=\"");
        move(a);
        out.append('L').append(point(b)).append("\"/>\n");
    }

    private void circle(Entity.Circle c, Placing placing) {
        var at = placing.of(c.centre());
        var shape = "\" cx=\"" + number(at.x()) + "\" cy=\"" + number(drawing.heightMm() - at.y()) + "\" r=\""
                + number(c.radius() * placing.scale()) + "\"" + dashes(c.line(), c.radius() * placing.scale());
        filled("circle", c.line(), c.fill(), c.turned(), shape);
    }

    /// {@return what makes the dashes of a small hidden circle shorter: of fewer than four it is no round}
    private static String dashes(LineClass line, double radius) {
        double least = 4 * DASH_AND_GAP;
        return line == LineClass.HIDDEN && 2 * Math.PI * radius < least ? " pathLength=\"" + number(least) + "\"" : "";
    }

    private void path(Entity.Path p, Placing placing) {
        int start = out.length();
        for (var contour : p.contours()) {
            contour(contour.mapped(placing));
        }
        var d = out.substring(start);
        out.setLength(start);
        filled("path", p.line(), p.fill(), p.turned(), "\" d=\"" + d + "\" fill-rule=\"evenodd\"");
    }

    /// A hatched shape lies on paper, so that nothing behind shows through the hatch.
    private void filled(String element, LineClass line, Fill fill, boolean turned, String shape) {
        if (fill.hatched()) {
            out.append('<')
                    .append(element)
                    .append(" class=\"paper")
                    .append(shape)
                    .append("/>\n");
            out.append('<')
                    .append(element)
                    .append(" class=\"")
                    .append(line.word())
                    .append(shape);
            out.append(" fill=\"url(#").append(id(Hatches.name(fill, turned))).append(")\"/>\n");
        } else {
            out.append('<').append(element).append(" class=\"").append(line.word());
            out.append(fill == Fill.OPEN ? "" : " " + fill.word());
            out.append(fill == Fill.OPEN ? shape.replace(" fill-rule=\"evenodd\"", "") : shape)
                    .append("/>\n");
        }
    }

    private void contour(Contour contour) {
        move(contour.segments().getFirst().from());
        contour.segments().forEach(this::piece);
        out.append('Z');
    }

    private void move(Point p) {
        out.append('M').append(point(p));
    }

    private void piece(Segment segment) {
        switch (segment) {
            case Segment.Straight s -> out.append('L').append(point(s.to()));
            case Segment.Bow b -> {
                // an arc of more than half a turn is written as two, a whole turn has no end point of its own
                if (Math.abs(b.sweep()) > Math.PI) {
                    arc(b.radius(), b.sweep(), b.halfway());
                }
                arc(b.radius(), b.sweep(), b.to());
            }
        }
    }

    private void arc(double radius, double sweep, Point to) {
        var r = number(radius);
        out.append('A')
                .append(r)
                .append(' ')
                .append(r)
                .append(" 0 0 ")
                .append(sweep > 0 ? 0 : 1)
                .append(' ');
        out.append(point(to));
    }

    private void dimension(Entity.Dimension d, Placing placing) {
        var figure = DimensionFigure.of(d, placing.scale());
        out.append("<g data-dimension=\"").append(escaped(d.name())).append("\"><title>");
        out.append(escaped(d.name())).append("</title>\n");
        out.append("<path class=\"dimension\" d=\"");
        for (var line : figure.lines()) {
            move(placing.of(line.from()));
            out.append('L').append(point(placing.of(line.to())));
        }
        out.append("\"/>\n<path class=\"arrow\" d=\"");
        figure.arrows().forEach(a -> contour(a.mapped(placing)));
        out.append("\"/>\n");
        text(d.text(), placing);
        out.append("</g>\n");
    }

    private void text(Entity.Text t, Placing placing) {
        var at = placing.of(t.at());
        out.append("<text x=\"").append(number(at.x())).append("\" y=\"").append(number(drawing.heightMm() - at.y()));
        out.append("\" font-size=\"").append(number(t.sizeMm())).append('"');
        switch (t.anchor()) {
            case START -> {}
            case MIDDLE -> out.append(" text-anchor=\"middle\"");
            case END -> out.append(" text-anchor=\"end\"");
        }
        if (t.strong()) {
            out.append(" class=\"strong\"");
        }
        if (t.angleDeg() != 0) {
            out.append(" transform=\"rotate(")
                    .append(number(-t.angleDeg()))
                    .append(' ')
                    .append(point(at))
                    .append(")\"");
        }
        out.append('>').append(escaped(t.words())).append("</text>\n");
    }

    private String point(Point p) {
        return number(p.x()) + " " + number(drawing.heightMm() - p.y());
    }

    private String id(String name) {
        return prefix + "-" + name;
    }

    /// {@return the number to a thousandth of a millimetre}
    static String number(double value) {
        long thousandths = Math.round(value * 1000);
        if (thousandths % 1000 == 0) {
            return Long.toString(thousandths / 1000);
        }
        long beyond = Math.abs(thousandths) % 1000;
        var digits = new StringBuilder(12).append(thousandths < 0 ? "-" : "").append(Math.abs(thousandths) / 1000);
        digits.append(beyond < 10 ? ".00" : beyond < 100 ? ".0" : ".").append(beyond);
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        digits.setLength(end);
        return digits.toString();
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String resource(String path) {
        try (var in = Objects.requireNonNull(SvgWriter.class.getResourceAsStream(path), path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
