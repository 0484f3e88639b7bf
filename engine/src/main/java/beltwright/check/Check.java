package beltwright.check;

import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.layout.DrawnDimension;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/// One question asked of a kit.
///
/// `measure` gives demand and capacity, bare and fast; `explain` writes the working over the same primitive functions
/// and must end at the same bits. A test holds every check to that.
public abstract class Check {
    private final String slug;
    private final String name;
    private final String unit;
    private final Scope scope;
    private final String source;
    private final List<Role> about;
    private final long read;
    private boolean placed;
    private boolean tasked;

    /// @param slug short name in keys and scripts
    /// @param name the question as the ladder prints it
    /// @param unit of demand and capacity; empty for a yes-or-no question
    /// @param source where formula and required value come from
    /// @param about the seats whose parts it reads, the one to change first leading
    protected Check(String slug, String name, String unit, Scope scope, String source, Role... about) {
        this.slug = slug;
        this.name = name;
        this.unit = unit;
        this.scope = scope;
        this.source = source;
        this.about = List.of(about);
        this.read = this.about.stream().mapToLong(r -> 1L << r.ordinal()).reduce(0, (a, b) -> a | b);
    }

    public final String slug() {
        return slug;
    }

    public final String name() {
        return name;
    }

    public final String unit() {
        return unit;
    }

    public final Scope scope() {
        return scope;
    }

    public final String source() {
        return source;
    }

    public final String key(Subject s) {
        return slug + "." + s.word();
    }

    /// The answer also rests on where the motor sits.
    final void placed() {
        placed = true;
    }

    /// The answer also rests on what the kit is asked to do.
    final void tasked() {
        tasked = true;
    }

    /// {@return whether it reads where the motor sits}
    public final boolean readsPlacement() {
        return placed;
    }

    /// {@return whether it reads what the kit is asked to do}
    public final boolean readsTask() {
        return tasked;
    }

    /// {@return the roles whose parts decide the answer; a kit's optional parts may move it as well}
    public final List<Role> reads() {
        return about;
    }

    /// {@return whether this question is asked of this subject: every part that it reads is there}
    public final boolean concerns(Subject s) {
        return s.scope() == scope && s.filled(read) && applies(s);
    }

    /// {@return whether there is anything to ask of this subject, whose parts are all there}
    public boolean applies(Subject s) {
        return true;
    }

    public abstract void measure(Subject s, Reading out);

    /// Measures one piece of each part, with no limits left. It is `measure`, except where that is slow at every limit,
    /// and where the builder takes up what the limits add: then this says what is left of it.
    ///
    /// @param designed the kit that it is a piece of, with all its limits
    public void measureDrawn(Subject drawn, Subject designed, Reading out) {
        measure(drawn, out);
    }

    /// Writes the working and fills `out` from it.
    public abstract void explain(Subject s, Working w, Reading out);

    public Verdict verdict(Subject s, Reading r) {
        return r.verdict();
    }

    /// {@return the answer in one sentence, only asked for when every number is known}
    public String says(Subject s, Reading r) {
        return r.capacityText() + " " + unit + "; " + r.demandText() + " wanted";
    }

    /// {@return what the demand is, such as `off a standard size`, where a cell is to tell that and not what is
    /// left
    /// of it; empty for a room or a reserve}
    protected String off() {
        return "";
    }

    /// {@return what would put it right, only asked for when the verdict is not `holds`}
    public abstract String remedy(Subject s, Reading r);

    /// {@return the distances that the drawing shows for this question}
    public List<DrawnDimension> places(Subject s) {
        return List.of();
    }

    /// {@return the seats it is about}
    public List<SeatName> seats(Subject s) {
        var seats = new ArrayList<SeatName>();
        for (var role : about) {
            if (role.extent() == Role.Extent.KIT) {
                seats.add(SeatName.of(role));
            } else if (s.scope() == Scope.KIT) {
                s.kit().drives().forEach(d -> seats.add(d.seat(role)));
            } else {
                seats.add(new SeatName(s.side(), role));
            }
        }
        return seats;
    }

    /// {@return a length in mm for a remedy, to a tenth}
    protected static String mm(double value) {
        return Numbers.fixed(value, 1) + " mm";
    }

    /// {@return by how much at least, or how long at least, for a remedy: a tenth up, so that what is done as told
    /// holds}
    protected static String leastMm(double value) {
        return Numbers.fixed(Numbers.up(value, 1), 1) + " mm";
    }

    /// {@return how long at most, for a remedy: a tenth down}
    protected static String mostMm(double value) {
        return Numbers.fixed(-Numbers.up(-value, 1), 1) + " mm";
    }
}
