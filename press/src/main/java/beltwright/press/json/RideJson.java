package beltwright.press.json;

import beltwright.check.CardPull;
import beltwright.power.Governs;
import beltwright.press.table.Ridden;
import beltwright.quantity.Numbers;
import beltwright.quantity.Range;
import beltwright.ride.BeltPulls;
import beltwright.ride.Channel;
import beltwright.ride.Energy;
import beltwright.ride.LimitSheet;
import beltwright.ride.PowerSheet;
import beltwright.ride.Ride;
import beltwright.ride.Steady;
import beltwright.ride.WhatIsLeft;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/// Power sheets and rides for scripts and charts, and the channels of a ride as comma-separated values.
public final class RideJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private RideJson() {}

    /// {@return everything that a kit does at steady speed}
    public static ObjectNode of(PowerSheet sheet) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("kit", sheet.kit().id());
        words(json.putArray("needs"), sheet.needs());
        words(json.putArray("estimates"), sheet.estimates());
        words(json.putArray("notes"), sheet.notes());
        var answers = json.putArray("answers");
        for (var a : sheet.answers()) {
            var one = answers.addObject();
            one.put("key", a.key()).put("name", a.name());
            range(one, a.value());
            one.put("unit", a.unit()).put("under", a.under()).put("governs", a.governs());
            one.put("how", a.how());
        }
        pushes(json.putArray("curve"), sheet.curve());
        var loads = json.putArray("loads");
        for (var load : sheet.loads()) {
            var one = loads.addObject();
            DossierJson.number(one, "gradePercent", load.gradePercent());
            var pushes = one.putArray("pushN");
            load.pushN().forEach(n -> add(pushes, n));
        }
        var stops = json.putArray("stops");
        for (var row : sheet.stops()) {
            var one = stops.addObject();
            one.set("usual", of(row.usual()));
            one.set("packFull", of(row.packFull()));
            one.set("leaningBack", of(row.leaningBack()));
        }
        var braking = json.putArray("braking");
        for (var curve : sheet.braking()) {
            var one = braking.addObject();
            DossierJson.number(one, "charge", curve.charge());
            pushes(one.putArray("points"), curve.points());
        }
        var left = json.putArray("left");
        sheet.left().forEach(row -> left.add(of(row)));
        json.set("limits", limits(sheet.limits()));
        words(
                json.putArray("benchTests"),
                sheet.limits().isEmpty() ? List.of() : LimitSheet.benchTests(sheet.limits()));
        return json;
    }

    /// {@return the limit sheet alone}
    public static ArrayNode limits(List<LimitSheet.Row> rows) {
        var limits = MAPPER.createArrayNode();
        for (var row : rows) {
            var one = limits.addObject();
            one.put("key", row.key()).put("name", row.name());
            DossierJson.number(one, "value", row.value());
            one.put("unit", row.unit());
            DossierJson.number(one, "stated", row.stated());
            one.put("reason", row.reason()).put("protects", row.protects());
        }
        return limits;
    }

    private static ObjectNode of(WhatIsLeft.Row row) {
        var one = MAPPER.createObjectNode();
        one.put("what", row.what());
        DossierJson.number(one, "slowMps2", row.slow());
        DossierJson.number(one, "cruiseMps2", row.cruise());
        one.set("stop", of(row.stop()));
        one.set("leaningBack", of(row.leaningBack()));
        one.put("governs", row.governs().toString()).put("note", row.note());
        return one;
    }

    private static ObjectNode of(Steady.Stop stop) {
        var one = MAPPER.createObjectNode();
        DossierJson.number(one, "speedMps", stop.speedMps());
        DossierJson.number(one, "wayM", stop.wayM());
        DossierJson.number(one, "timeS", stop.timeS());
        DossierJson.number(one, "reactionM", stop.reactionM());
        DossierJson.number(one, "wholeM", stop.wholeM());
        one.put("governs", stop.governs().toString());
        return one;
    }

    private static void pushes(ArrayNode into, List<Steady.Push> points) {
        for (var p : points) {
            var one = into.addObject();
            DossierJson.number(one, "speedMps", p.speedMps());
            DossierJson.number(one, "pushN", p.pushN());
            DossierJson.number(one, "motorA", p.motorA());
            DossierJson.number(one, "packA", p.packA());
            one.put("governs", p.governs().toString());
        }
    }

    private static void range(ObjectNode json, Range range) {
        DossierJson.number(json, "value", range.nominal());
        DossierJson.number(json, "low", range.low());
        DossierJson.number(json, "high", range.high());
    }

    private static void words(ArrayNode into, List<String> words) {
        words.forEach(into::add);
    }

    private static void add(ArrayNode into, double value) {
        if (Double.isFinite(value)) {
            into.add(value);
        } else {
            into.addNull();
        }
    }

    /// {@return one ride with all its channels, its belt pulls beside those that the tension card is made for}
    public static ObjectNode of(Ridden one) {
        var json = of(one.ride());
        var card = CardPull.of(one.kit());
        DossierJson.number(json.withObject("/belt/driving"), "cardN", card.drivingN());
        DossierJson.number(json.withObject("/belt/braking"), "cardN", card.brakingN());
        return json;
    }

    private static void pull(ObjectNode json, BeltPulls.Pull pull) {
        DossierJson.number(json, "effectiveN", pull.effectiveN());
        DossierJson.number(json, "timeS", pull.timeS());
        DossierJson.number(json, "distanceM", pull.distanceM());
        json.put("governs", pull.governs().toString());
    }

    /// {@return one ride with all its channels}
    public static ObjectNode of(Ride ride) {
        var json = MAPPER.createObjectNode();
        json.put("schema", 1);
        json.put("kit", ride.kit());
        json.put("route", ride.route().id());
        json.put("arrived", ride.arrived());
        json.put("ending", ride.ending()).put("remedy", ride.remedy());
        DossierJson.number(json, "timeS", ride.timeS());
        DossierJson.number(json, "distanceM", ride.distanceM());
        DossierJson.number(json, "meanKmh", ride.meanKmh());
        DossierJson.number(json, "usedWh", ride.usedWh());
        DossierJson.number(json, "whPerKm", ride.whPerKm());
        DossierJson.number(json, "chargeLeft", ride.chargeLeft());
        DossierJson.number(json, "hottestC", ride.hottestC());
        var belt = json.putObject("belt");
        pull(belt.putObject("driving"), ride.pulls().driving());
        pull(belt.putObject("braking"), ride.pulls().braking());
        var governed = json.putArray("governed");
        ride.governed().forEach((what, seconds) -> {
            var one = governed.addObject();
            one.put("what", what.toString());
            DossierJson.number(one, "seconds", seconds);
        });
        var events = json.putArray("events");
        for (var event : ride.events()) {
            var one = events.addObject();
            DossierJson.number(one, "timeS", event.timeS());
            DossierJson.number(one, "distanceM", event.distanceM());
            one.put("kind", event.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            one.put("words", event.words());
        }
        var spans = json.putArray("spans");
        for (var span : ride.spans()) {
            var one = spans.addObject();
            one.put("what", span.governs().toString());
            DossierJson.number(one, "fromS", span.fromS());
            DossierJson.number(one, "toS", span.toS());
            DossierJson.number(one, "fromM", span.fromM());
            DossierJson.number(one, "toM", span.toM());
        }
        json.set("energy", of(ride.energy()));
        var channels = json.putArray("channels");
        for (var channel : Channel.values()) {
            var one = channels.addObject();
            one.put("name", channel.toString()).put("symbol", channel.symbol()).put("unit", channel.unit());
            var values = one.putArray("values");
            for (double v : ride.of(channel)) {
                if (channel == Channel.GOVERNS) {
                    values.add(governs(v));
                } else {
                    add(values, rounded(v, channel.decimals() + 2));
                }
            }
        }
        return json;
    }

    private static double rounded(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }

    private static String governs(double place) {
        return Governs.values()[(int) place].toString();
    }

    private static ObjectNode of(Energy e) {
        var json = MAPPER.createObjectNode();
        DossierJson.number(json, "cellsJ", e.cellsJ());
        DossierJson.number(json, "packJ", e.packJ());
        DossierJson.number(json, "copperJ", e.copperJ());
        DossierJson.number(json, "ironJ", e.ironJ());
        DossierJson.number(json, "beltJ", e.beltJ());
        DossierJson.number(json, "rollingJ", e.rollingJ());
        DossierJson.number(json, "airJ", e.airJ());
        DossierJson.number(json, "bearingJ", e.bearingJ());
        DossierJson.number(json, "heightJ", e.heightJ());
        DossierJson.number(json, "motionJ", e.motionJ());
        DossierJson.number(json, "haltJ", e.haltJ());
        DossierJson.number(json, "throughJ", e.throughJ());
        DossierJson.number(json, "openShare", e.openShare());
        return json;
    }

    /// {@return the channels of a ride, a line a sample, headed by name and unit}
    public static String csv(Ride ride) {
        var text = new StringBuilder();
        for (var channel : Channel.values()) {
            text.append(channel == Channel.TIME ? "" : ",")
                    .append('"')
                    .append(channel)
                    .append(channel.unit().isEmpty() ? "" : " (" + channel.unit() + ")")
                    .append('"');
        }
        text.append('\n');
        for (int i = 0; i < ride.rows(); i++) {
            for (var channel : Channel.values()) {
                double v = ride.of(channel)[i];
                text.append(channel == Channel.TIME ? "" : ",")
                        .append(
                                channel == Channel.GOVERNS
                                        ? '"' + governs(v) + '"'
                                        : Numbers.fixed(v, channel.decimals()).replace('−', '-'));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
