package beltwright.press.svg;

import static org.assertj.core.api.Assertions.assertThat;

import beltwright.press.drawing.DemoKits;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgWriterTest {
    private static final Pattern NUMBER_TOO_LONG = Pattern.compile("\\d\\.\\d{4,}|\\dE-?\\d|NaN|Infinity");
    private static final Pattern ID = Pattern.compile("\\bid=\"([^\"]+)\"");
    private static final Pattern USED = Pattern.compile("url\\(#([^)]+)\\)");

    @ParameterizedTest
    @MethodSource("beltwright.press.drawing.DemoKits#ids")
    void isWellFormedTitledAndOfTrueSize(String kit) throws Exception {
        for (var drawing : DemoKits.office(kit).all()) {
            var svg = SvgWriter.standalone(drawing);
            var root = parsed(svg).getDocumentElement();
            assertThat(root.getAttribute("role")).isEqualTo("img");
            assertThat(root.getAttribute("width")).isEqualTo(SvgWriter.number(drawing.widthMm()) + "mm");
            assertThat(root.getAttribute("viewBox"))
                    .isEqualTo(
                            "0 0 " + SvgWriter.number(drawing.widthMm()) + " " + SvgWriter.number(drawing.heightMm()));
            assertThat(((Element) root.getElementsByTagName("title").item(0)).getTextContent())
                    .isEqualTo(drawing.title());
            assertThat(svg).doesNotContainPattern(NUMBER_TOO_LONG).doesNotContain("style=\"");
            assertThat(SvgWriter.standalone(drawing)).isEqualTo(svg);
            assertThat(SvgWriter.standalone(DemoKits.office(kit).all().stream()
                            .filter(d -> d.id().equals(drawing.id()))
                            .findFirst()
                            .orElseThrow()))
                    .isEqualTo(svg);
        }
    }

    @Test
    void twoDrawingsOfOnePageShareNoId() {
        var office = DemoKits.office("steep-street");
        var seen = new TreeSet<String>();
        var all = new ArrayList<String>();
        int number = 0;
        for (var drawing : office.all()) {
            for (int twice = 0; twice < 2; twice++) {
                var svg = SvgWriter.inline(drawing, "d" + number++);
                var own = new TreeSet<String>();
                ID.matcher(svg).results().forEach(m -> own.add(m.group(1)));
                USED.matcher(svg).results().forEach(m -> assertThat(own).contains(m.group(1)));
                all.addAll(own);
                seen.addAll(own);
                assertThat(svg).doesNotContain("<style");
            }
        }
        assertThat(seen).hasSameSizeAs(all).hasSizeGreaterThan(10);
    }

    @Test
    void everyClassHasAStyle() {
        var svg = SvgWriter.inline(DemoKits.office("steep-street").plan(), "p");
        Pattern.compile("class=\"([^\"]+)\"")
                .matcher(svg)
                .results()
                .flatMap(m -> java.util.Arrays.stream(m.group(1).split(" ")))
                .distinct()
                .filter(c -> !c.equals("edge")) // the usual narrow line
                .forEach(c -> assertThat(SvgWriter.style()).contains("." + c));
    }

    @Test
    void namesOfAnyKindAreEscaped() throws Exception {
        assertThat(SvgWriter.escaped("a <b> & \"c\"")).isEqualTo("a &lt;b&gt; &amp; &quot;c&quot;");
    }

    @Test
    void aRoundNumberIsShort() {
        assertThat(SvgWriter.number(100)).isEqualTo("100");
        assertThat(SvgWriter.number(0.12345)).isEqualTo("0.123");
        assertThat(SvgWriter.number(-0.0001)).isEqualTo("0");
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
