package beltwright.check;

import beltwright.kit.JumpTests;
import beltwright.kit.Kit;
import beltwright.kit.Side;
import beltwright.layout.Layout;
import beltwright.power.DriveLimits;
import beltwright.power.Operating;
import beltwright.power.Powertrain;
import beltwright.ride.Bands;
import beltwright.ride.Board;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleBiFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/// As the torque of a motor rises, what gives first.
///
/// Every link is put on one scale, the torque at the motor (N·m): where its demand reaches what it stands, with all
/// numbers at nominal and at their worse limits. Links of one drive only; a kit is as strong as its weaker drive.
///
/// What rests on the whole board, pack and heat, takes each limit alone and adds up what it moves by, as `Bands` does.
public final class WeakestLink {
    /// The usual caution where strengths are read. Common practice, no source.
    public static final String CAUTION =
            "A belt that jumps or breaks brakes nothing, a broken axle throws the rider, and printed or moulded plastic in the"
                    + " path of load creeps, softens when warm and breaks without warning. These margins are advice to a"
                    + " competent builder, no certificate.";

    private static final double MOST_NM = 1000;
    private static final double EVER_A = 1e6;
    private static final double NEVER_C = 1e6; // stands for a winding that does not settle

    private WeakestLink() {}

    /// What a link does when it gives.
    public enum Kind {
        /// Nothing breaks: it lets no more torque through.
        LIMITS("lets no more through"),
        /// It slips or jumps and may go on afterwards.
        SLIPS("slips"),
        /// It breaks, bends or wears out.
        BREAKS("breaks or wears out");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /// One link.
    ///
    /// @param key the finding that tells more, `check.side`, or empty
    /// @param driveNm torque at the motor at which it gives, driving (N·m); infinite where it never does
    /// @param brakeNm the same, braking
    /// @param driveWorstNm with every number at its worse limit
    /// @param brakeWorstNm with every number at its worse limit
    /// @param under what it rests on
    public record Link(
            String name,
            String key,
            Kind kind,
            double driveNm,
            double brakeNm,
            double driveWorstNm,
            double brakeWorstNm,
            String under) {
        /// {@return torque at the motor at which it gives (N·m); NaN where that cannot be told}
        public double atNm(boolean braking) {
            return braking ? brakeNm : driveNm;
        }

        /// {@return the same with every number at its worse limit}
        public double atWorstNm(boolean braking) {
            return braking ? brakeWorstNm : driveWorstNm;
        }

        /// {@return whether no number that it rests on has limits, so that there is no worse case than nominal}
        public boolean nominalOnly() {
            return Double.isFinite(driveNm) && driveNm == driveWorstNm && brakeNm == brakeWorstNm;
        }
    }

    /// The links of one drive, weakest when driving first.
    ///
    /// @param driveNm worst torque that the drive sees, driving (N·m)
    /// @param brakeNm the same, braking
    /// @param needs numbers that nobody gave, so that a link is left out or cannot be told
    /// @param estimates numbers that rest on an estimate
    public record Chain(
            Side side, double driveNm, double brakeNm, List<Link> links, List<String> needs, List<String> estimates) {
        public Chain {
            links = List.copyOf(links);
            needs = List.copyOf(needs);
            estimates = List.copyOf(estimates);
        }

        /// {@return whether the other side's links are the same, number for number}
        public boolean alike(Chain other) {
            if (Double.compare(driveNm, other.driveNm) != 0
                    || Double.compare(brakeNm, other.brakeNm) != 0
                    || links.size() != other.links.size()) {
                return false;
            }
            for (int i = 0; i < links.size(); i++) {
                var a = links.get(i);
                var b = other.links.get(i);
                var there = new Link(
                        b.name,
                        a.key,
                        b.kind,
                        b.driveNm,
                        b.brakeNm,
                        b.driveWorstNm,
                        b.brakeWorstNm,
                        b.under.replace(other.side.toString(), side.toString()));
                if (!a.equals(there)) {
                    return false;
                }
            }
            return true;
        }

        /// {@return what keeps the torque down first}
        public Optional<Link> firstToLimit(boolean braking) {
            return first(braking, EnumSet.of(Kind.LIMITS));
        }

        /// {@return what slips or breaks first: limits only keep the torque from rising}
        public Optional<Link> firstToGive(boolean braking) {
            return first(braking, EnumSet.complementOf(EnumSet.of(Kind.LIMITS)));
        }

        private Optional<Link> first(boolean braking, Set<Kind> kinds) {
            return links.stream()
                    .filter(l -> kinds.contains(l.kind) && Double.isFinite(l.atNm(braking)))
                    .min(Comparator.comparingDouble(l -> l.atNm(braking)));
        }

        /// {@return whether this slips or breaks before the worst torque that the drive sees}
        public boolean early(Link link) {
            return link.kind != Kind.LIMITS && (link.driveNm < driveNm || link.brakeNm < brakeNm);
        }
    }

    /// {@return one chain for each drive}
    public static List<Chain> of(Kit kit, Layout layout) {
        var chains = new ArrayList<Chain>();
        var board = Board.of(kit);
        var whole = board.known() ? List.of(pack(kit), heat(kit)) : List.<Link>of();
        for (var subject : Subject.of(kit, layout)) {
            if (subject.scope() == Scope.DRIVE) {
                chains.add(chain(subject, board, whole));
            }
        }
        return chains;
    }

    private static Chain chain(Subject s, Board board, List<Link> whole) {
        var links = new ArrayList<>(whole);
        var needs = new LinkedHashSet<>(board.needs());
        var estimates = new LinkedHashSet<String>();
        links.add(new Link(
                "grip of the tread",
                "hill-grip.kit",
                Kind.SLIPS,
                grip(s, At.NOMINAL, false),
                grip(s, At.NOMINAL, true),
                grip(s, At.BEST, false),
                grip(s, At.BEST, true),
                "friction and share of the weight from the task; more grip is worse for the rest"));
        links.add(new Link(
                "the controller's limit",
                "",
                Kind.LIMITS,
                DrivePull.controllerNm(s, At.NOMINAL, false),
                DrivePull.controllerNm(s, At.NOMINAL, true),
                DrivePull.controllerNm(s, At.BEST, false),
                DrivePull.controllerNm(s, At.BEST, true),
                "phase current"));
        var jump = jump(s);
        links.add(jump);
        if (Double.isNaN(jump.driveNm) && JumpTests.tell(s.drive().placement().jumpTests())) {
            needs.add("a jump test at the tension that is set");
        }
        var set = new Working();
        Tension.writeSet(s, set);
        needs.addAll(set.needs());
        estimates.addAll(set.estimates());
        for (var check : Checks.ALL) {
            if (check instanceof StrengthCheck strength
                    && strength.scope() == Scope.DRIVE
                    && strength.torqued()
                    && strength.concerns(s)) {
                double nominal = gives(s, strength, At.NOMINAL);
                double worst = gives(s, strength, At.WORST);
                var written = Working.untold();
                strength.write(s, written);
                estimates.addAll(written.estimates());
                if (Double.isNaN(nominal)) {
                    needs.addAll(written.needs());
                }
                links.add(new Link(
                        strength.gives(),
                        strength.key(s),
                        strength.kind(s),
                        nominal,
                        nominal,
                        worst,
                        worst,
                        strength.source()));
            }
        }
        links.sort(Comparator.comparingDouble(l -> Double.isNaN(l.driveNm) ? Double.MAX_VALUE : l.driveNm));
        return new Chain(
                s.side(),
                DrivePull.motorNm(s, At.NOMINAL, false),
                DrivePull.motorNm(s, At.NOMINAL, true),
                links,
                List.copyOf(needs),
                rests(board, estimates));
    }

    /// {@return all estimates, those that a board tells with their reason only once}
    private static List<String> rests(Board board, Set<String> others) {
        var all = new ArrayList<>(board.estimates());
        others.stream()
                .filter(o -> board.estimates().stream().noneMatch(b -> b.startsWith(o + ":")))
                .forEach(all::add);
        return all;
    }

    /// {@return torque at which the tread slips; NaN where the grip is not known}
    private static double grip(Subject s, At at, boolean braking) {
        double torque = DrivePull.gripNm(s, at, braking);
        return Double.isInfinite(torque) ? Double.NaN : torque;
    }

    /// {@return torque at which the demand of a check reaches its capacity}
    static double gives(Subject s, StrengthCheck check, At at) {
        return root(torque -> check.capacity(s, at, torque) - check.demand(s, at, torque));
    }

    private static Link jump(Subject s) {
        double nominal = jumpsNm(s, At.NOMINAL);
        double worst = jumpsNm(s, At.WORST);
        return new Link(
                "a tooth jumps",
                s.drive().placement().tensionN().known() ? "tension-set." + s.side() : "tension-band." + s.side(),
                Kind.SLIPS,
                nominal,
                nominal,
                worst,
                worst,
                JumpTests.tell(s.drive().placement().jumpTests())
                        ? Tension.floor(s, nominal) == Tension.Floor.TAUT
                                ? "at the tension that is set: the slack span goes slack before the workshop's jump tests tell"
                                        + " of a jump"
                                : "at the tension that is set, with a quarter of the torque to spare, by the workshop's jump"
                                        + " tests"
                        : "at the tension that is set; habit, no jump test tells");
    }

    private static double jumpsNm(Subject s, At at) {
        var typed = s.drive().placement().tensionN();
        double set = typed.known() ? at.least(typed) : Tension.setN(s, At.NOMINAL);
        var tests = s.drive().placement().jumpTests();
        return JumpTests.tell(tests) ? Tension.enoughForNm(s, set) : root(torque -> set - Tension.leastN(s, torque));
    }

    private static double root(DoubleUnaryOperator left) {
        double none = left.applyAsDouble(0);
        if (Double.isNaN(none) || Double.isNaN(left.applyAsDouble(1))) {
            return Double.NaN;
        }
        if (none <= 0) {
            return 0;
        }
        double high = 1;
        while (high < MOST_NM && left.applyAsDouble(high) > 0) {
            high *= 2;
        }
        if (!(left.applyAsDouble(high) <= 0)) {
            return Double.isNaN(left.applyAsDouble(high)) ? Double.NaN : Double.POSITIVE_INFINITY;
        }
        return zero(left, 0, high, new double[] {1e-12, 1e-9, 1e-12});
    }

    /// {@return where a function passes through zero between two ends of opposite sign}
    ///
    /// @param within accuracy: of the place as a share of it, of the place, of the value
    static double zero(DoubleUnaryOperator function, double low, double high, double[] within) {
        return new BracketingNthOrderBrentSolver(within[0], within[1], within[2], 5)
                .solve(500, function::applyAsDouble, low, high);
    }

    /// A link that rests on the whole board, with each limit moved alone and all of it added up.
    private static Link band(Kit kit, String name, String under, ToDoubleBiFunction<Board, Boolean> atNm) {
        var ranges = Bands.of(kit, b -> new double[] {atNm.applyAsDouble(b, false), atNm.applyAsDouble(b, true)});
        return new Link(
                name,
                "",
                Kind.LIMITS,
                ranges[0].nominal(),
                ranges[1].nominal(),
                Math.max(0, ranges[0].low()), // added up, limits may take more away than there is
                Math.max(0, ranges[1].low()),
                under);
    }

    /// The pack at cruise: as if nothing else limited.
    private static Link pack(Kit kit) {
        return band(
                kit,
                "what the pack gives and takes at cruise",
                "current of pack and cells at the charge of the start; slower, it lets more torque through",
                WeakestLink::packNm);
    }

    private static double packNm(Board board, boolean braking) {
        var train = board.train();
        var l = train.limits();
        var free = new Powertrain(
                train.motors(),
                train.ratio(),
                train.wheelRadiusM(),
                train.beltShare(),
                train.motor(),
                train.heat(),
                train.pack(),
                new DriveLimits(EVER_A, EVER_A, EVER_A, EVER_A, 1, 0, -1, l.windingFromC(), l.windingToC(), EVER_A));
        double wanted = braking ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        var now = new Operating();
        free.at(board.cruiseMps(), wanted, Double.POSITIVE_INFINITY, board.charge(), board.airC(), now);
        return Math.abs(now.shaftNm);
    }

    private static Link heat(Kit kit) {
        return band(
                kit,
                "the winding's heat, held for ever at cruise",
                "settled where the controller begins to cut back; for minutes it stands much more; braking, iron and"
                        + " bearings take their share before the winding must",
                WeakestLink::heatNm);
    }

    /// Torque that, held for ever at cruise, warms the winding to where the controller cuts back. Braking, the
    /// motor's own loss torque helps, so the same winding current brakes harder than it drives.
    private static double heatNm(Board board, boolean braking) {
        var train = board.train();
        double omega = train.radPerS(board.cruiseMps());
        double away =
                train.heat().caseToAirWPerK(board.cruiseMps() + board.road().headWindMps(), omega);
        double iron = train.motor().lossNm(omega) * omega;
        return root(shaft -> {
            double current = train.motor().currentA(braking ? -shaft : shaft, omega);
            double settled = train.heat().settledWindingC(train.motor(), current, iron, board.airC(), away);
            return train.limits().windingFromC() - Math.min(NEVER_C, settled);
        });
    }
}
