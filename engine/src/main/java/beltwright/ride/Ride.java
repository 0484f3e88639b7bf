package beltwright.ride;

import beltwright.power.Governs;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// One ride of a kit over a route, computed.
///
/// @param samples channels by time, all of the same length; what governs as its place in `Governs`
/// @param governed seconds that each limit decided
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

    public double whPerKm() {
        return usedWh / (distanceM / 1000);
    }

    public double meanKmh() {
        return distanceM / timeS * 3.6;
    }
}
