package beltwright.press.drawing;

import java.util.ArrayList;
import java.util.List;

/// The frame of a sheet, its heading and the strip at the foot; all in mm on the sheet.
final class TitleStrip {
    static final double FRAME = 5; // edge of the sheet to the frame
    static final double HEAD = 9; // band of the heading
    static final double FOOT = 12; // height of the strip
    private static final double LABEL = 2.2;
    private static final double VALUE = 3.2;
    private static final double PAD = 2.5;
    private static final double KIT_LEAST = 45;
    private static final double BAR = 40; // length of the scale bar

    private final List<Entity> entities = new ArrayList<>();
    private final double width;
    private final double height;

    private TitleStrip(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /// What the strip says.
    record Words(String kit, String revision, String view, String note, double scale, boolean invented) {
        private List<String[]> cells() {
            var cells = new ArrayList<String[]>();
            cells.add(new String[] {"View", view});
            cells.add(new String[] {"Revision", revision});
            cells.add(new String[] {"Scale", Drawing.words(scale)});
            cells.add(new String[] {"Unit", "mm"});
            if (invented) {
                cells.add(new String[] {"Note", "invented example"});
            }
            return cells;
        }

        /// {@return the width below which the strip does not fit (mm)}
        double leastWidthMm() {
            return 2 * FRAME
                    + KIT_LEAST
                    + cells().stream().mapToDouble(TitleStrip::cell).sum()
                    + BAR
                    + 4 * PAD;
        }
    }

    private static double cell(String[] words) {
        return 2 * PAD + Math.max(Lettering.widthMm(words[0], LABEL, false), Lettering.widthMm(words[1], VALUE, false));
    }

    /// @param travel direction of travel on the sheet
    static List<Entity> of(Words words, double width, double height, Point travel) {
        var strip = new TitleStrip(width, height);
        strip.frame();
        strip.heading(words, travel);
        strip.foot(words);
        return List.copyOf(strip.entities);
    }

    private void frame() {
        entities.add(new Entity.Path(
                List.of(Contour.rectangle(FRAME, FRAME, width - FRAME, height - FRAME)),
                LineClass.OUTLINE,
                Fill.OPEN,
                false,
                Tag.NONE));
        line(FRAME, FRAME + FOOT, width - FRAME, FRAME + FOOT, LineClass.OUTLINE);
    }

    private void heading(Words words, Point travel) {
        double y = height - FRAME - HEAD + 3;
        double arrow = 9;
        var middle = new Point(width - FRAME - PAD - arrow / 2, height - FRAME - HEAD / 2 - (travel.y() == 0 ? 0 : 1));
        var tail = middle.minus(travel.times(arrow / 2));
        var tip = middle.plus(travel.times(arrow / 2));
        line(tail.x(), tail.y(), tip.x(), tip.y(), LineClass.DIMENSION);
        var foot = tip.minus(travel.times(3));
        entities.add(new Entity.Path(
                List.of(Contour.polygon(
                        tip,
                        foot.plus(travel.left().times(0.9)),
                        foot.minus(travel.left().times(0.9)))),
                LineClass.DIMENSION,
                Fill.INK,
                false,
                Tag.NONE));
        double right = width - FRAME - 2 * PAD - arrow;
        text(right, y, "travel", Annotation.SMALL, Entity.Text.Anchor.END, false);
        double room = right - Lettering.widthMm("travel", Annotation.SMALL, false) - 2 * PAD - FRAME - PAD;
        var title = Lettering.fitted(words.view(), VALUE + 0.5, true, room);
        text(FRAME + PAD, y, title, VALUE + 0.5, Entity.Text.Anchor.START, true);
        double titled = Lettering.widthMm(title, VALUE + 0.5, true) + PAD;
        if (room > titled + 10) {
            text(
                    FRAME + PAD + titled,
                    y,
                    Lettering.fitted(words.note(), Annotation.SMALL, false, room - titled),
                    Annotation.SMALL,
                    Entity.Text.Anchor.START,
                    false);
        }
    }

    private void foot(Words words) {
        double x = width - FRAME;
        var cells = words.cells();
        for (var cell : cells.reversed()) {
            x -= cell(cell);
            cell(x, cell[0], cell[1]);
        }
        x -= BAR + 2 * PAD;
        bar(x + PAD, words.scale());
        line(x, FRAME, x, FRAME + FOOT, LineClass.EDGE);
        cell(FRAME, "Kit", Lettering.fitted(words.kit(), VALUE, false, x - FRAME - 2 * PAD));
    }

    private void cell(double x, String label, String value) {
        text(x + PAD, FRAME + FOOT - PAD - LABEL * 0.7, label, LABEL, Entity.Text.Anchor.START, false);
        text(x + PAD, FRAME + PAD, value, VALUE, Entity.Text.Anchor.START, false);
        if (x > FRAME) {
            line(x, FRAME, x, FRAME + FOOT, LineClass.EDGE);
        }
    }

    /// A bar of round length: it stays true when the sheet is shown or printed at another size.
    private void bar(double x, double scale) {
        double real = 5;
        for (double next : new double[] {10, 20, 50, 100, 200}) {
            if (next * scale <= BAR - 12) {
                real = next;
            }
        }
        double y = FRAME + PAD + 0.8;
        for (int i = 0; i < 4; i++) {
            entities.add(new Entity.Path(
                    List.of(Contour.rectangle(x + i * real / 4 * scale, y, x + (i + 1) * real / 4 * scale, y + 1.2)),
                    LineClass.EDGE,
                    i % 2 == 0 ? Fill.INK : Fill.OPEN,
                    false,
                    Tag.NONE));
        }
        text(x + real * scale + 1.2, FRAME + PAD, Lettering.number(real), LABEL, Entity.Text.Anchor.START, false);
        text(x, FRAME + FOOT - PAD - LABEL * 0.7, "Scale bar, mm", LABEL, Entity.Text.Anchor.START, false);
    }

    private void text(double x, double y, String words, double size, Entity.Text.Anchor anchor, boolean strong) {
        entities.add(new Entity.Text(new Point(x, y), words, size, anchor, 0, strong, Tag.NONE));
    }

    private void line(double x1, double y1, double x2, double y2, LineClass line) {
        entities.add(new Entity.Line(new Point(x1, y1), new Point(x2, y2), line, Tag.NONE));
    }
}
