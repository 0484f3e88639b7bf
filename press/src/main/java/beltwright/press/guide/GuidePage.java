package beltwright.press.guide;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.Verdict;
import beltwright.dossier.Dossier;
import beltwright.part.Reference;
import beltwright.press.drawing.Drawing;
import beltwright.press.drawing.DrawingOffice;
import beltwright.press.svg.SvgWriter;
import beltwright.quantity.Numbers;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/// The assembly guide of a kit, and its packing list: one self-contained page each, the same bytes for the same
/// dossier.
public final class GuidePage {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final Dossier dossier;
    private final Function<Step, Optional<Drawing>> pictures;
    private final String revision;

    private GuidePage(Dossier dossier, Reference reference, String revision) {
        this.dossier = dossier;
        this.pictures = new DrawingOffice(dossier, reference, revision).steps();
        this.revision = revision;
    }

    /// {@return the assembly guide}
    public static String html(Dossier dossier, Reference reference, String revision) {
        return rendered("guide/guide.jte", new GuidePage(dossier, reference, revision));
    }

    /// {@return the packing list}
    public static String box(Dossier dossier, Reference reference, String revision) {
        return rendered("guide/box.jte", new GuidePage(dossier, reference, revision));
    }

    private static String rendered(String template, GuidePage page) {
        var output = new StringOutput(128 * 1024);
        TEMPLATES.render(template, Map.of("page", page), output);
        return output.toString();
    }

    public String style() {
        return "\n" + SvgWriter.style() + resource("/beltwright/press/guide.css") + foot();
    }

    /// Every printed page says which kit and revision it belongs to, so that no page of another one is mixed in.
    private String foot() {
        var words = name() + " · " + dossier.kit().id() + " · " + revision + (invented() ? " · invented example" : "");
        return "@page { @bottom-left { content: \"" + quoted(words) + "\"; } }\n";
    }

    /// {@return the words inside a string of a style sheet: whatever is not plain is written by its number}
    private static String quoted(String words) {
        var out = new StringBuilder();
        words.codePoints().forEach(c -> {
            if (Character.isLetterOrDigit(c) || " ,.-·".indexOf(c) >= 0) {
                out.appendCodePoint(c);
            } else {
                out.append('\\').append(Integer.toHexString(c)).append(' ');
            }
        });
        return out.toString();
    }

    public Dossier dossier() {
        return dossier;
    }

    public String name() {
        return dossier.kit().draft().name();
    }

    public String revision() {
        return revision;
    }

    public boolean invented() {
        return dossier.kit().draft().invented();
    }

    /// {@return what speaks against assembling this kit as it is}
    public List<Finding> against() {
        return dossier.findings().stream()
                .filter(f -> f.verdict() == Verdict.FAILS || f.verdict() == Verdict.CANNOT_TELL)
                .toList();
    }

    /// {@return what holds at nominal only: to be measured on these very parts}
    public List<Finding> marginal() {
        return dossier.findings().stream()
                .filter(f -> f.verdict() == Verdict.MARGINAL)
                .toList();
    }

    public Set<String> tools() {
        var tools = new LinkedHashSet<String>();
        dossier.steps().forEach(s -> tools.addAll(s.tools()));
        return tools;
    }

    public List<Box.Item> items() {
        return dossier.box().items();
    }

    /// {@return what the rider's own board brings, seat by seat}
    public List<String> ridersOwn() {
        return dossier.kit().seats().values().stream()
                .filter(s -> s.fromRider())
                .map(s -> s.name() + ": " + (s.count() == 1 ? "" : s.count() + " × ")
                        + s.part().name())
                .toList();
    }

    public String mass() {
        double mass = dossier.box().massKg();
        return Double.isNaN(mass) ? "unknown" : Numbers.fixed(mass, 2) + " kg";
    }

    public static String mass(Box.Item item) {
        return Double.isNaN(item.massKg()) ? "unknown" : Numbers.significant(item.massKg() * 1000, 3) + " g";
    }

    public static String torque(Step.Torque torque) {
        return Numbers.fixed(torque.torqueNm(), 1) + " N·m";
    }

    /// {@return the picture of a step as an element of the page, or an empty text}
    public String picture(Step step) {
        return pictures.apply(step)
                .map(d -> SvgWriter.inline(d, "step-" + step.number()))
                .orElse("");
    }

    /// Why a step comes after an earlier one.
    ///
    /// @param number of the earlier step
    /// @param says the joint it makes, and the reason, as the dossier tells it
    public record Reason(int number, String says) {}

    /// {@return why this step comes after earlier ones, in the order of those}
    public List<Reason> after(Step step) {
        return step.after().stream()
                .map(says -> new Reason(making(says), says))
                .sorted(Comparator.comparingInt(Reason::number))
                .toList();
    }

    private int making(String says) {
        return dossier.steps().stream()
                .filter(s -> !s.joint().isEmpty() && says.startsWith(s.joint() + ": "))
                .mapToInt(Step::number)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no step makes the joint of: " + says));
    }

    public List<Tally> tallies() {
        return dossier.tallies();
    }

    public int inBox() {
        return Tally.total(tallies()).inBox();
    }

    public int inSteps() {
        return Tally.total(tallies()).inSteps();
    }

    public boolean meets() {
        return tallies().stream().allMatch(Tally::meets);
    }

    private static String resource(String name) {
        try (var in = Objects.requireNonNull(GuidePage.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
