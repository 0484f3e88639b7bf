package beltwright.press.caliper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import beltwright.part.Field;
import beltwright.part.Kinds;
import beltwright.press.drawing.Bounds;
import beltwright.press.drawing.DimensionFigure;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.Entity;
import beltwright.press.drawing.LineClass;
import beltwright.press.drawing.Point;
import beltwright.press.drawing.Segment;
import beltwright.press.drawing.TextBox;
import beltwright.press.drawing.View;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Dimension;
import beltwright.quantity.Unit;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;

/// Every kind of part as it is shown to whoever measures it.
class CaliperFigureTest {
    private static final double WIDEST = 200; // mm; wider, and the letters are too small beside a form

    /// Every length and angle of a kind, found here by another way than the figures find it.
    private static List<String> measured(Kinds kind) {
        var paths = new ArrayList<String>();
        for (var outer : kind.type().getRecordComponents()) {
            paths.add(outer.getName());
            if (outer.getType().isRecord() && outer.getType() != Dimension.class) {
                for (var inner : outer.getType().getRecordComponents()) {
                    paths.add(outer.getName() + "." + inner.getName());
                }
            }
        }
        paths.removeIf(p -> !Set.of(Unit.MM, Unit.DEGREE).contains(Unit.of(p)));
        paths.removeIf(p -> Fields.WITHOUT_PLACE.containsKey(kind.words() + "." + p));
        return paths;
    }

    private static List<Entity> entities(Drawing drawing) {
        return drawing.views().stream().flatMap(v -> v.entities().stream()).toList();
    }

    /// The letters that a figure prints at this field.
    private static List<String> printed(Drawing drawing, String path) {
        return entities(drawing).stream()
                .filter(e -> e.tag().field().equals(path))
                .<String>mapMulti((e, to) -> {
                    switch (e) {
                        case Entity.Text t -> to.accept(t.words());
                        case Entity.Dimension d -> to.accept(d.text().words());
                        default -> {}
                    }
                })
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void everyLengthAndAngleHasOneDimensionWithItsLetter(Kinds kind) {
        var letters = CaliperFigure.letters(kind);
        var drawing = CaliperFigure.of(kind);
        assertThat(letters.sequencedKeySet())
                .as("a %s has these lengths and angles, in this order", kind.words())
                .containsExactlyElementsOf(measured(kind));
        for (var path : measured(kind)) {
            assertThat(printed(drawing, path))
                    .as(
                            "the figure of a %s (package beltwright.press.caliper) shows once where to measure %s",
                            kind.words(), path)
                    .containsExactly(letters.get(path));
            assertThat(figures(drawing, path))
                    .as("%s of a %s", path, kind.words())
                    .isEqualTo(1);
        }
        assertThat(new LinkedHashSet<>(letters.values())).hasSameSizeAs(letters.values());
    }

    /// A length is a dimension; an angle is an arc with a head at each end.
    private static long figures(Drawing drawing, String path) {
        return entities(drawing).stream()
                .filter(e -> e.tag().field().equals(path))
                .filter(e -> Unit.of(path) == Unit.DEGREE ? e instanceof Entity.Arc : e instanceof Entity.Dimension)
                .count();
    }

    @ParameterizedTest
    @EnumSource
    void everyKindHasAFigureAndItTellsWhatItsLettersMean(Kinds kind) {
        var drawing = CaliperFigure.of(kind);
        assertThat(entities(drawing))
                .as("a figure of a %s in package beltwright.press.caliper", kind.words())
                .anyMatch(e -> e instanceof Entity.Path);
        CaliperFigure.letters(kind)
                .forEach((path, letter) -> assertThat(drawing.tells()).contains(letter + ": "));
        assertThat(drawing.title()).endsWith(kind.words());
        assertThat(drawing.views()).extracting(View::name).doesNotHaveDuplicates();
    }

    @Test
    void theFieldsWithoutAPlaceAreFewAndThereAndSayWhy() {
        assertThat(Fields.WITHOUT_PLACE).hasSizeLessThan(4);
        Fields.WITHOUT_PLACE.forEach((path, why) -> {
            var parts = path.split("\\.", 2);
            assertThat(why).isNotBlank();
            assertThat(Kinds.named(parts[0]).orElseThrow().type().getRecordComponents())
                    .anyMatch(c -> c.getName().equals(parts[1]) && c.isAnnotationPresent(Field.class));
        });
    }

    @Test
    void lettersFollowTheRecordAndLeaveOutWhatHasNoPlace() {
        assertThat(CaliperFigure.letters(Kinds.BEARING).toString()).isEqualTo("{boreMm=a, outsideMm=b, widthMm=c}");
        assertThat(CaliperFigure.letters(Kinds.CONSUMABLE)).isEmpty();
        assertThat(CaliperFigure.letters(Kinds.MOTOR))
                .doesNotContainKeys("kvRpmPerV", "resistanceOhm", "boltHoles", "label.massKg", "polePairs");
        assertThat(CaliperFigure.letters(Kinds.HANGER).values()).doesNotContain("i", "l", "o");
    }

    @Test
    void aFigureCannotDimensionWhatThePartDoesNotHave() {
        var pane = new Figure(Kinds.NUT).view();
        assertThatThrownBy(() -> pane.level("widthMm", Point.ORIGIN, new Point(20, 0), 9))
                .hasMessageContaining("nut")
                .hasMessageContaining("widthMm")
                .hasMessageContaining("heightMm");
    }

    @ParameterizedTest
    @EnumSource
    void noLetterOverlapsAnotherOrIsStruckByTheLinesOfAnother(Kinds kind) {
        var drawing = CaliperFigure.of(kind);
        var sheet = new Bounds(0, 0, drawing.widthMm(), drawing.heightMm());
        assertThat(sheet.width()).isLessThanOrEqualTo(WIDEST);
        var all = lettered(drawing);
        for (var one : all) {
            assertThat(one.box().bounds().within(sheet))
                    .as("%s on the sheet", one)
                    .isTrue();
            for (var other : all) {
                if (one != other) {
                    assertThat(one.box().overlaps(other.box()))
                            .as("%s: %s over %s", kind.words(), one, other)
                            .isFalse();
                    assertThat(other.lines())
                            .as("%s: %s struck by the lines of %s", kind.words(), one, other)
                            .noneMatch(l -> one.box().meets(l));
                }
            }
        }
    }

    /// One letter, or words, on the sheet, and the lines that belong to it.
    private record Lettered(String words, String field, TextBox box, List<Segment.Straight> lines) {
        @Override
        public String toString() {
            return words + " " + field;
        }
    }

    private static List<Lettered> lettered(Drawing drawing) {
        var all = new ArrayList<Lettered>();
        for (var view : drawing.views()) {
            for (var e : view.entities()) {
                switch (e) {
                    case Entity.Text t ->
                        all.add(new Lettered(
                                t.words(),
                                t.tag().field(),
                                t.box(view.placing()),
                                angle(view, t.tag().field())));
                    case Entity.Dimension d ->
                        all.add(new Lettered(
                                d.text().words(),
                                d.tag().field(),
                                d.text().box(view.placing()),
                                DimensionFigure.of(d, 1).lines().stream()
                                        .map(l -> (Segment.Straight) l.mapped(view.placing()))
                                        .toList()));
                    default -> {}
                }
            }
        }
        return all;
    }

    private static List<Segment.Straight> angle(View view, String field) {
        var lines = new ArrayList<Segment.Straight>();
        for (var e : view.entities()) {
            if (!field.isEmpty() && e.tag().field().equals(field)) {
                switch (e) {
                    case Entity.Line l -> lines.addAll(pieces(new Segment.Straight(l.from(), l.to()), view));
                    case Entity.Arc a -> lines.addAll(pieces(a.bow(), view));
                    default -> {}
                }
            }
        }
        return lines;
    }

    /// An outline through a letter hides which is which; a centre line gives way to it.
    @ParameterizedTest
    @EnumSource
    void noLetterStandsOnAnOutline(Kinds kind) {
        var drawing = CaliperFigure.of(kind);
        var letters = lettered(drawing);
        for (var view : drawing.views()) {
            for (var line : outlines(view)) {
                assertThat(letters)
                        .as("%s, on the outline %s", kind.words(), line)
                        .noneMatch(l -> l.box().meets(line));
            }
        }
    }

    private static List<Segment.Straight> outlines(View view) {
        var segments = new ArrayList<Segment>();
        for (var e : view.entities()) {
            switch (e) {
                case Entity.Line l
                when l.line() == LineClass.OUTLINE -> segments.add(new Segment.Straight(l.from(), l.to()));
                case Entity.Arc a when a.line() == LineClass.OUTLINE -> segments.add(a.bow());
                case Entity.Circle c
                when c.line() == LineClass.OUTLINE ->
                    segments.add(new Segment.Bow(c.centre(), c.radius(), 0, 2 * Math.PI));
                case Entity.Path p
                when p.line() == LineClass.OUTLINE -> p.contours().forEach(c -> segments.addAll(c.segments()));
                default -> {}
            }
        }
        return segments.stream().flatMap(s -> pieces(s, view).stream()).toList();
    }

    /// A line as it stands on the sheet, an arc in straight pieces.
    private static List<Segment.Straight> pieces(Segment segment, View view) {
        return switch (segment.mapped(view.placing())) {
            case Segment.Straight s -> List.of(s);
            case Segment.Bow b ->
                IntStream.range(0, 24)
                        .mapToObj(i ->
                                new Segment.Bow(b.centre(), b.radius(), b.start() + i * b.sweep() / 24, b.sweep() / 24))
                        .map(p -> new Segment.Straight(p.from(), p.to()))
                        .toList();
        };
    }

    @ParameterizedTest
    @EnumSource
    void aPageCanPointAtOneDimension(Kinds kind) throws Exception {
        var svg = SvgWriter.inline(CaliperFigure.of(kind), "figure");
        var factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        var document =
                factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        var groups = document.getElementsByTagName("g");
        var fields = new ArrayList<String>();
        for (int i = 0; i < groups.getLength(); i++) {
            var field = ((Element) groups.item(i)).getAttribute("data-field");
            if (!field.isEmpty()) {
                fields.add(field);
            }
        }
        assertThat(fields)
                .as("one group for each field")
                .containsExactlyInAnyOrderElementsOf(CaliperFigure.letters(kind).sequencedKeySet());
        assertThat(svg).doesNotContain("data-finding", "data-seat");
    }
}
