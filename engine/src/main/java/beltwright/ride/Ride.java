package beltwright.ride;

import beltwright.power.Governs;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// One ride of a kit over a route, computed.
///
/// @param samples channels by time, all of the same length; what governs as its place in `Governs`
/// @param governed seconds that each limit decided
/// @param pulls how hard a belt is pulled at most
/// @param steps steps that the integration took
public record Ride(
        String kit,
        Route route,
        Map<Channel, double[]> samples,
        List<Event> events,
        Energy energy,
        Map<Governs, Double> governed,
        double timeS,
        double distanceM,
        double hottestC,
        double chargeLeft,
        double usedWh,
        BeltPulls pulls,
        int steps) {
    public Ride {
        samples = Collections.unmodifiableMap(new EnumMap<>(samples));
        events = List.copyOf(events);
        governed = Collections.unmodifiableMap(new EnumMap<>(governed));
    }

    /// {@return readings of one channel; not to be written to}
    public double[] of(Channel channel) {
        return java.util.Objects.requireNonNull(samples.get(channel));
    }

    public int rows() {
        return of(Channel.TIME).length;
    }

    public boolean arrived() {
        return events.getLast().kind() == Event.Kind.ARRIVED;
    }

    /// A stretch over which one limit governed.
    public record Span(Governs governs, double fromS, double toS, double fromM, double toM) {}

    /// {@return the stretches over which a limit, and not the rider's wish, governed}
    public List<Span> spans() {
        var spans = new ArrayList<Span>();
        Event met = null;
        for (var event : events) {
            if (event.kind() == Event.Kind.MET) {
                met = event;
            } else if (met != null
                    && (event.kind() == Event.Kind.LEFT || event.kind().last())) {
                spans.add(new Span(met.governs(), met.timeS(), event.timeS(), met.distanceM(), event.distanceM()));
                met = null;
            }
        }
        return spans;
    }

    /// {@return how it ended, where and when, and what governed there}
    public String ending() {
        var last = events.getLast();
        var when = " after " + Numbers.clock(last.timeS()) + " min";
        if (arrived()) {
            return "arrives" + when;
        }
        return "does not arrive: " + last.words() + " at " + Numbers.fixed(last.distanceM(), 0) + " m of "
                + Numbers.fixed(route.lengthM(), 0) + when
                + (last.governs() == Governs.WISH ? "" : "; what governs there: " + last.governs());
    }

    /// {@return what would bring it further; empty where it arrives}
    public String remedy() {
        var last = events.getLast();
        return switch (last.kind()) {
            case EMPTY -> "start with more charge, wish for less speed, or choose a larger pack";
            case DISCONNECTED ->
                "set less current (limits to set), and do not start a descent with a full pack; then nothing brakes but"
                        + " the foot";
            case TOO_LONG -> "wish for more speed, or cut the route";
            case ROLLS_BACK, STALLS ->
                switch (last.governs()) {
                    case HEAT -> "climb it slower or with a pause, or choose a larger ratio or a larger motor";
                    case GRIP -> "weight on the driven axle, softer treads, or a road less steep";
                    case LOW_VOLTAGE -> "start with more charge, or choose a pack that sags less";
                    case BATTERY_CURRENT, PACK_CURRENT ->
                        "a pack or controller that gives more, a larger ratio, or a road less steep";
                    default -> "a larger ratio, more phase current where every part stands it, or a road less steep";
                };
            default -> "";
        };
    }

    public double whPerKm() {
        return usedWh / (distanceM / 1000);
    }

    public double meanKmh() {
        return distanceM / timeS * 3.6;
    }
}
