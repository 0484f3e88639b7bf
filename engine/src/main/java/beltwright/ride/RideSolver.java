package beltwright.ride;

import beltwright.power.Governs;
import beltwright.power.Operating;
import beltwright.quantity.Refusal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/// Rides a board over a route: longitudinal motion, charge, two temperatures and the energy in every place it goes to,
/// integrated together with error control.
///
///     dx/dt = v      dv/dt = (F − F_load)/m_e      dq/dt = −I_p/C      T_w, T_c as in `MotorHeat`
///
/// - Source: equations of `Powertrain`, `MotorHeat` and `Road`; Dormand and Prince 5(4) of the numeric library.
/// - Valid: where those are.
/// - Neglects: slip, bends, warming of the pack, the vertical motion of the board.
public final class RideSolver {
    private static final int X = 0;
    private static final int V = 1;
    private static final int Q = 2;
    private static final int TW = 3;
    private static final int TC = 4;
    private static final int CELLS = 5;
    private static final int PACK = 6;
    private static final int COPPER = 7;
    private static final int IRON = 8;
    private static final int BELT = 9;
    private static final int ROLLING = 10;
    private static final int AIR = 11;
    private static final int BEARING = 12;
    private static final int THROUGH = 13;
    private static final int STATES = 14;

    /// How large an error of one step may be where the tolerance is 1: a natural size of each state.
    private static final double[] SIZE = {
        10, 1, 0.1, 10, 10, 1e4, 1e3, 1e3, 1e3, 1e3, 1e3, 1e3, 1e3, 1e4,
    };

    private static final double LONGEST_STEP_S = 2;
    private static final double LONGEST_RIDE_S = 86_400;
    private static final double HALT_M = 0.005;
    private static final double ROLLING_BACK_MPS = -0.02;
    private static final double CRAWL_MPS = 0.3;
    private static final double STANDS_MPS = 1e-3;
    private static final double BEGUN_M = 0.05;
    private static final double LOCATED_S = 1e-6;
    private static final int MOST_SAMPLES = 20_000;
    private static final int MOST_EVENTS = 5_000;
    private static final int MOST_STEPS = 3_000_000; // the roughest road of as many points as are allowed takes 700 000

    private final String kit;
    private final Board board;
    private final Rider rider;
    private final Profile profile;
    private final double tolerance;
    private double everyS;
    private final BooleanSupplier cancelled;

    private final Operating now = new Operating();
    private final double[] allowed = new double[2];
    private final Columns columns = new Columns();
    private final BeltPulls.Watch pulls;
    private final List<Route.Point> stops;
    private final List<Event> events = new ArrayList<>();
    private final double[] governed = new double[Governs.values().length];
    private Governs governs = Governs.WISH;
    private double nextSampleS;
    private boolean standing;
    private double hottestC;
    private double haltJ;
    private double stopAtM;
    private double beganM;
    private int steps;

    /// What can be chosen for a ride.
    ///
    /// @param smoothM stretch over which heights are averaged (m), 0 to take them as they are
    /// @param tolerance error that a step may make, as a share of each state's natural size
    /// @param everyS time between two samples (s)
    public record Options(Rider rider, double smoothM, double tolerance, double everyS) {
        public static final Options USUAL = new Options(Rider.CALM, 30, 1e-9, 1);

        public Options {
            if (!(tolerance >= 1e-11 && tolerance <= 1e-2)) {
                throw new Refusal("tolerance", tolerance + "", "1e-11 to 1e-2", "give another");
            }
            if (!(everyS >= 0.01 && everyS <= 60)) {
                throw new Refusal("every", everyS + " s", "0.01 to 60 s", "give another");
            }
        }

        public Options withTolerance(double other) {
            return new Options(rider, smoothM, other, everyS);
        }

        public Options withSmooth(double otherM) {
            return new Options(rider, otherM, tolerance, everyS);
        }
    }

    private RideSolver(String kit, Board board, Route route, Options options, BooleanSupplier cancelled) {
        if (!board.known()) {
            throw new Refusal(
                    kit,
                    "a ride needs numbers that nobody gave: " + String.join(", ", board.needs()),
                    "every one of them known",
                    "enter them, or allow estimates where a rule has one");
        }
        this.kit = kit;
        this.board = board;
        this.rider = options.rider();
        this.profile = new Profile(route, options.smoothM(), board.cruiseMps(), rider.brakingMps2());
        this.tolerance = options.tolerance();
        this.everyS = options.everyS();
        this.cancelled = cancelled;
        this.pulls = new BeltPulls.Watch(board.belting().pulleyDiameterM());
        this.stops = route.points().stream().filter(Route.Point::stop).toList();
    }

    /// {@return the ride}
    ///
    /// @throws Refusal if a number is missing
    public static Ride ride(String kit, Board board, Route route, Options options) {
        return ride(kit, board, route, options, () -> false);
    }

    /// As above, and can be given up.
    ///
    /// @throws GivenUp once `cancelled` says so
    public static Ride ride(String kit, Board board, Route route, Options options, BooleanSupplier cancelled) {
        return new RideSolver(kit, board, route, options, cancelled).run();
    }

    /// Fills `dy` for a state; the equations of the ride.
    private void derivatives(double[] y, double[] dy) {
        double v = y[V];
        double sine = profile.sine(y[X]);
        double load = operating(y, sine);
        double net = now.pushN - load;
        if (v <= 0) {
            // At rest, friction holds; it never pushes. So does the drag of the motors, which `operating` counts.
            double friction = board.road().rollingN(sine) + board.road().bearingN();
            net = net < 0 ? Math.min(0, net + 2 * friction) : net;
        }
        dy[X] = v;
        dy[V] = net / board.road().inertialKg();
        dy[Q] = -now.packA / board.train().pack().capacityAs();
        var heat = board.train().heat();
        double lossW = now.copperW + now.ironW;
        double away = heat.caseToAirWPerK(v + board.road().headWindMps(), now.radPerS);
        dy[TW] = heat.windingKPerS(lossW, y[TW], y[TC]);
        dy[TC] = heat.caseKPerS(y[TW], y[TC], board.airC(), away);
        int n = board.train().motors();
        dy[CELLS] = now.openV * now.packA;
        dy[PACK] = now.packA * now.packA * board.train().pack().ohm();
        dy[COPPER] = n * now.copperW;
        dy[IRON] = n * now.ironW;
        dy[BELT] = now.beltW;
        dy[ROLLING] = board.road().rollingN(sine) * Math.abs(v);
        dy[AIR] = board.road().airN(v) * v;
        dy[BEARING] = board.road().bearingN() * Math.abs(v);
        dy[THROUGH] = Math.abs(now.openV * now.packA);
    }

    /// Fills `now`; {@return what holds the board back (N)}
    ///
    /// A board at rest is taken as it begins to move, or the drag of its motors would come and go with every step.
    private double operating(double[] y, double sine) {
        double v = standing ? 0 : Math.max(y[V], Steady.BEGINS_MPS);
        double load = board.road().loadN(v, sine);
        profile.allowed(y[X], allowed);
        allowed[0] = standing ? 0 : allowed[0];
        double wanted = standing ? 0 : load + board.road().inertialKg() * rider.wantedMps2(v, allowed[0], allowed[1]);
        board.train().at(v, wanted, board.road().gripN(sine, wanted < 0), y[Q], y[TW], now);
        return load;
    }

    private Ride run() {
        var y = new double[STATES];
        y[Q] = board.charge();
        y[TW] = board.airC();
        y[TC] = board.airC();
        double t = 0;
        hottestC = y[TW];
        happened(t, y, Event.Kind.START, Governs.WISH);
        while (!events.getLast().kind().last()) {
            stopAtM = nextStop(y[X]);
            if (stuck(y)) {
                happened(
                        t,
                        y,
                        now.governs == Governs.LOW_VOLTAGE ? Event.Kind.EMPTY : Event.Kind.ROLLS_BACK,
                        now.governs);
                break;
            }
            try {
                var end = leg(t, y);
                t = end.getTime();
                y = end.getPrimaryState();
                t = ended(t, y);
            } catch (TooManySteps e) {
                t = e.reached.getTime();
                y = e.reached.getPrimaryState();
                happened(t, y, Event.Kind.TOO_MANY_STEPS, governs);
            }
        }
        sample(t, y);
        return result(t, y);
    }

    /// {@return whether the board does not even begin to move from rest}
    private boolean stuck(double[] y) {
        var dy = new double[STATES];
        derivatives(y, dy);
        return y[V] == 0 && dy[V] <= 0;
    }

    private double nextStop(double fromM) {
        return stops.stream()
                .mapToDouble(Route.Point::distanceM)
                .filter(at -> at > fromM + HALT_M)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /// Rides until the next stop, the end of the route, or whatever ends the ride.
    private ODEStateAndDerivative leg(double t, double[] y) {
        var absolute = new double[STATES];
        for (int i = 0; i < STATES; i++) {
            absolute[i] = tolerance * SIZE[i];
        }
        var relative = new double[STATES];
        var integrator = new DormandPrince54Integrator(1e-9, LONGEST_STEP_S, absolute, relative);
        integrator.setInitialStepSize(0.01);
        integrator.addStepHandler(new Steps());
        double goal = Math.min(stopAtM - HALT_M, profile.lengthM());
        integrator.addEventDetector(new End(s -> goal - s[X]));
        integrator.addEventDetector(new End(s -> s[V] - ROLLING_BACK_MPS));
        integrator.addEventDetector(new End(s -> s[Q]));
        integrator.addEventDetector(new End(this::boardHolds));
        integrator.addEventDetector(new End(this::crawls));
        beganM = y[X];
        integrator.addEventDetector(new End(this::rolls));
        governs = governsAt(y);
        if (governs != Governs.WISH) {
            happened(t, y, Event.Kind.MET, governs);
        }
        return integrator.integrate(
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return STATES;
                    }

                    @Override
                    public double[] computeDerivatives(double time, double[] state) {
                        var dy = new double[STATES];
                        derivatives(state, dy);
                        return dy;
                    }
                },
                new ODEState(t, y),
                LONGEST_RIDE_S);
    }

    /// {@return how far the pack's current is from opening the protection board (A)}
    private double boardHolds(double[] y) {
        governsAt(y);
        var belting = board.belting();
        double out = Double.isNaN(belting.disconnectsAboveA()) ? 1 : belting.disconnectsAboveA() - now.packA;
        // Only over-run charges harder than the pack allows; one ampere beyond keeps a brake at its limit apart from
        // it.
        double in = belting.mayDisconnect() ? now.packA + board.train().pack().chargeA() + 1 : 1;
        return Math.min(out, in);
    }

    /// {@return how far a board is from standing still for want of voltage (m/s); it would creep on for hours}
    private double crawls(double[] y) {
        return governsAt(y) == Governs.LOW_VOLTAGE && y[X] > 1 ? y[V] - CRAWL_MPS : 1;
    }

    /// {@return how far a board that has begun to move is from standing still (m/s): friction would hold it there for
    ///     ever, the motors pushing}
    private double rolls(double[] y) {
        return y[X] > beganM + BEGUN_M ? y[V] - STANDS_MPS : 1;
    }

    private Governs governsAt(double[] y) {
        operating(y, profile.sine(y[X]));
        return now.governs;
    }

    /// Says why a leg ended, waits at a stop; {@return the time after it}
    private double ended(double t, double[] y) {
        if (governs != Governs.WISH) {
            happened(t, y, Event.Kind.LEFT, governs);
        }
        if (t >= LONGEST_RIDE_S) {
            happened(t, y, Event.Kind.TOO_LONG, governs);
        } else if (boardHolds(y) <= 1e-6) {
            happened(t, y, Event.Kind.DISCONNECTED, governs);
        } else if (y[Q] <= 1e-9 || crawls(y) <= 1e-6) {
            happened(t, y, Event.Kind.EMPTY, governs);
        } else if (y[V] <= ROLLING_BACK_MPS / 2 || rolls(y) <= 1e-6) {
            var halted = y[X] > 1 ? Event.Kind.STALLS : Event.Kind.ROLLS_BACK;
            happened(t, y, governs == Governs.LOW_VOLTAGE ? Event.Kind.EMPTY : halted, governs);
        } else if (y[X] >= profile.lengthM() - 2 * HALT_M) {
            if (stopAtM <= profile.lengthM()) {
                halt(y);
            }
            happened(t, y, Event.Kind.ARRIVED, governs);
        } else {
            halt(y);
            happened(t, y, Event.Kind.STOP, governs);
            double after = waited(t, y);
            happened(after, y, after < LONGEST_RIDE_S ? Event.Kind.ON : Event.Kind.TOO_LONG, governs);
            return after;
        }
        return t;
    }

    private void halt(double[] y) {
        haltJ += 0.5 * board.road().inertialKg() * y[V] * y[V];
        haltJ += board.road().slopeN(1) * (profile.elevationM(y[X]) - profile.elevationM(stopAtM));
        y[X] = stopAtM;
        y[V] = 0;
    }

    /// Stands and cools; {@return the time after it}
    private double waited(double t, double[] y) {
        double wait = stops.stream()
                .filter(p -> p.distanceM() == stopAtM)
                .mapToDouble(Route.Point::waitS)
                .findFirst()
                .orElse(0);
        var heat = board.train().heat();
        double away = heat.caseToAirWPerK(board.road().headWindMps(), 0);
        double warm = y[TW];
        double casing = y[TC];
        standing = true;
        for (; nextSampleS <= t + wait; nextSampleS += everyS) {
            cool(y, heat.cooledC(warm, casing, board.airC(), away, nextSampleS - t));
            sample(nextSampleS, y);
            thin();
        }
        standing = false;
        cool(y, heat.cooledC(warm, casing, board.airC(), away, wait));
        return t + wait;
    }

    private static void cool(double[] y, double[] cooledC) {
        y[TW] = cooledC[0];
        y[TC] = cooledC[1];
    }

    private void happened(double t, double[] y, Event.Kind kind, Governs what) {
        if (events.size() < MOST_EVENTS || kind.last()) {
            events.add(new Event(t, y[X], kind, what));
        }
    }

    private void sample(double t, double[] y) {
        double sine = profile.sine(y[X]);
        operating(y, sine);
        var belting = board.belting();
        double te = pulls.see(t, y[X], now);
        columns.add(Channel.TIME, t);
        columns.add(Channel.DISTANCE, y[X]);
        columns.add(Channel.ELEVATION, profile.elevationM(y[X]));
        columns.add(Channel.GRADE, 100 * sine / Math.sqrt(1 - sine * sine));
        columns.add(Channel.SPEED, 3.6 * y[V]);
        columns.add(Channel.WISH, 3.6 * allowed[0]);
        columns.add(Channel.MOTOR_CURRENT, now.currentA);
        columns.add(Channel.PHASE_CURRENT, now.currentA * belting.statedPerDirect());
        columns.add(Channel.BATTERY_CURRENT, now.packA);
        columns.add(Channel.VOLTAGE, now.packV);
        columns.add(Channel.CHARGE, 100 * y[Q]);
        columns.add(Channel.WINDING, y[TW]);
        columns.add(Channel.CASE, y[TC]);
        columns.add(Channel.EFFECTIVE_TENSION, te);
        columns.add(Channel.TIGHT_SIDE, belting.startN() + Math.abs(te) / 2);
        columns.add(Channel.SLACK_SIDE, belting.startN() - Math.abs(te) / 2);
        columns.add(Channel.GOVERNS, now.governs.ordinal());
    }

    /// Keeps every second row and doubles the time between two, once there are too many.
    private void thin() {
        if (columns.rows() >= 2 * MOST_SAMPLES) {
            columns.halve();
            everyS *= 2;
        }
    }

    private Ride result(double t, double[] y) {
        double motion = 0.5 * board.road().inertialKg() * y[V] * y[V];
        double height = board.road().slopeN(1) * (profile.elevationM(y[X]) - profile.elevationM(0));
        var by = new EnumMap<Governs, Double>(Governs.class);
        for (var g : Governs.values()) {
            if (governed[g.ordinal()] > 0) {
                by.put(g, governed[g.ordinal()]);
            }
        }
        var energy = new Energy(
                y[CELLS],
                y[PACK],
                y[COPPER],
                y[IRON],
                y[BELT],
                y[ROLLING],
                y[AIR],
                y[BEARING],
                height,
                motion,
                haltJ,
                y[THROUGH]);
        return new Ride(
                kit,
                profile.route(),
                columns.values(),
                events,
                energy,
                by,
                t,
                y[X],
                hottestC,
                y[Q],
                (y[CELLS] - y[PACK]) / 3600,
                pulls.greatest(),
                steps);
    }

    /// After each step: samples on their beat, moments where another limit begins to decide, the hottest winding.
    private final class Steps implements ODEStepHandler {
        @Override
        public void handleStep(ODEStateInterpolator step) {
            if (cancelled.getAsBoolean()) {
                throw new GivenUp();
            }
            double from = step.getPreviousState().getTime();
            double to = step.getCurrentState().getTime();
            if (++steps > MOST_STEPS) {
                throw new TooManySteps(step.getCurrentState());
            }
            while (nextSampleS <= to) {
                if (nextSampleS >= from) {
                    sample(nextSampleS, step.getInterpolatedState(nextSampleS).getPrimaryState());
                    thin();
                }
                nextSampleS += everyS;
            }
            var end = step.getCurrentState().getPrimaryState();
            var then = governsAt(end);
            pulls.see(to, end[X], now);
            double since = from;
            while (then != governs) {
                if (to - since <= LOCATED_S) {
                    governs = then;
                    break;
                }
                double at = changed(step, since, to);
                governed[governs.ordinal()] += at - since;
                var y = step.getInterpolatedState(at).getPrimaryState();
                if (governs != Governs.WISH) {
                    happened(at, y, Event.Kind.LEFT, governs);
                }
                governs = governsAt(y);
                pulls.see(at, y[X], now);
                if (governs != Governs.WISH) {
                    happened(at, y, Event.Kind.MET, governs);
                }
                since = at;
            }
            governed[governs.ordinal()] += to - since;
            hottestC = Math.max(hottestC, end[TW]);
        }

        /// {@return first moment found after which something else governs, to a microsecond}
        private double changed(ODEStateInterpolator step, double since, double to) {
            double before = since;
            double after = to;
            while (after - before > LOCATED_S) {
                double middle = (before + after) / 2;
                if (governsAt(step.getInterpolatedState(middle).getPrimaryState()) == governs) {
                    before = middle;
                } else {
                    after = middle;
                }
            }
            return after;
        }
    }
}
