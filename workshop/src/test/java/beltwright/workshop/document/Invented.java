package beltwright.workshop.document;

import beltwright.kit.Joint;
import beltwright.kit.KitDraft;
import beltwright.kit.Placement;
import beltwright.kit.Role;
import beltwright.kit.SeatName;
import beltwright.kit.Side;
import beltwright.kit.Task;
import beltwright.part.Kinds;
import beltwright.part.Label;
import beltwright.part.Part;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Provenance;
import beltwright.quantity.Source;
import beltwright.ride.Log;
import beltwright.ride.Route;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/// Invented documents from a seed: every kind of part, any text that a person could type.
public final class Invented {
    private static final List<String> NOTES = List.of(
            "",
            "plain",
            "with: colon",
            "# no comment",
            "- no list",
            "'quoted' and \"quoted\"",
            "two\nlines",
            " spaced ",
            "back\\slash, comma",
            "{brace",
            "ends with:",
            "müller ×2 ±",
            "null",
            "\t tab",
            "🛹 board",
            "a\u2028b",
            "=1+1",
            "@sum; a\tb",
            "-3",
            "'+quoted",
            "1e3");

    private final Random random;

    public Invented(long seed) {
        random = new Random(seed);
    }

    Document document() {
        return switch (random.nextInt(6)) {
            case 0 -> new Document.OfKit(kit());
            case 1 -> new Document.OfMeasurement(measurement());
            case 2 -> new Document.OfRoute(route());
            case 3 -> new Document.OfLog(log());
            default -> new Document.OfPart(part(Kinds.values()[random.nextInt(Kinds.values().length)]));
        };
    }

    public Part part(Kinds kind) {
        var id = id();
        var label = made(Label.class, id, Map.of("id", id));
        return (Part) made(kind.type(), id, Map.of("label", label));
    }

    KitDraft kit() {
        var id = id();
        var seats = new TreeMap<SeatName, KitDraft.Filling>();
        for (var role : Role.values()) {
            var side = role.extent() == Role.Extent.KIT ? null : one(Side.values());
            seats.put(
                    new SeatName(side, role), new KitDraft.Filling(id(), 1 + random.nextInt(9), random.nextBoolean()));
        }
        var names = new ArrayList<>(seats.keySet());
        var joints = new TreeMap<String, Joint>();
        for (int i = 0; i < 4; i++) {
            var name = "joint " + text() + i;
            var with = random.nextBoolean() ? List.of(names.get(i)) : List.<SeatName>of();
            joints.put(name, new Joint(name, one(Joint.Way.values()), names.subList(i + 1, i + 3), with));
        }
        var placements = new TreeMap<Side, Placement>();
        for (var side : Side.values()) {
            placements.put(side, (Placement) made(Placement.class, id + ".placements." + side, Map.of()));
        }
        var task = (Task) made(Task.class, id + ".task", Map.of());
        return new KitDraft(id, text(), random.nextBoolean(), note(), seats, joints, placements, task);
    }

    Measurement measurement() {
        var of = id();
        var with = text();
        var when = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(300));
        var values = new TreeMap<String, Dimension>();
        for (var path : List.of("diameterMm", "rim.faceWidthMm", "massKg")) {
            values.put(path, dimension(of + "." + path, 20, 60, Measurement.provenance(with, when)));
        }
        return new Measurement(id(), of, text(), with, when, values);
    }

    public Route route() {
        var points = new ArrayList<Route.Point>();
        double distance = 0;
        for (int i = 2 + random.nextInt(20); i > 0; i--) {
            double speed = random.nextInt(3) == 0 ? Double.NaN : random.nextInt(3) * 12.5;
            double wait = speed == 0 && random.nextBoolean() ? random.nextInt(60) : 0;
            points.add(new Route.Point(distance, number(Route.LOWEST_M, Route.HIGHEST_M), speed, wait));
            distance += Math.max(Math.scalb(1.0, -20), number(0, Route.LONGEST_M / 20));
        }
        var source = new Provenance(one(Source.values()), note()).words();
        return new Route(id(), text(), random.nextBoolean(), note(), source, points);
    }

    public Log log() {
        int rows = 3 + random.nextInt(20);
        var readings = new TreeMap<Log.Reading, List<Double>>();
        for (var reading : Log.Reading.values()) {
            if (reading == Log.Reading.TIME || random.nextBoolean()) {
                var values = new ArrayList<Double>();
                for (int i = 0; i < rows; i++) {
                    double even = reading.least() + (reading.most() - reading.least()) * i / rows;
                    values.add(reading == Log.Reading.TIME ? even : number(reading.least(), reading.most()));
                }
                readings.put(reading, values);
            }
        }
        var when = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(300));
        return new Log(id(), id(), text(), text(), when, one(Log.Belts.values()), readings);
    }

    /// A number of any length, at times tiny, and at times the minus nought that arithmetic can give.
    private double number(double least, double most) {
        double any = least + random.nextDouble() * (most - least);
        return switch (random.nextInt(5)) {
            case 0 -> Math.rint(any);
            case 1 -> Math.rint(any * 1000) / 1000;
            case 2 -> least > 0 ? least : -0.0;
            case 3 -> least > 0 ? most : any * 1e-30;
            default -> any;
        };
    }

    private Object made(Class<?> type, String of, Map<String, ?> given) {
        var form = RecordForm.of(type);
        var values = new ArrayList<>();
        for (var component : type.getRecordComponents()) {
            var name = component.getName();
            var field = FieldForm.of(component);
            if (given.containsKey(name)) {
                values.add(given.get(name));
            } else if (field.nested()) {
                values.add(made(field.type(), of + "." + name, Map.of()));
            } else {
                values.add(value(field, of + "." + name));
            }
        }
        return form.make(values);
    }

    private Object value(FieldForm field, String of) {
        if (field.dimension()) {
            var provenance = new Provenance(one(Source.values()), note());
            var from = random.nextBoolean() ? provenance : SHEET;
            double least = field.name().equals("outsideMm") ? 30.5 : field.min(); // wider than any bore
            for (var d = dimension(of, least, field.max(), from); ; d = dimension(of, least, field.max(), from)) {
                if (Bounds.limits("", field, d).isEmpty()) {
                    return d;
                }
            }
        }
        if (field.type() == int.class) {
            return (int) field.min() + random.nextInt((int) (field.max() - field.min()) + 1);
        }
        if (field.type() == boolean.class) {
            return random.nextBoolean();
        }
        return field.type().isEnum() ? one(field.type().getEnumConstants()) : field.optionalText() ? note() : text();
    }

    private static final Provenance SHEET = new Provenance(Source.DATA_SHEET, "invented maker's sheet of 2026");

    private Dimension dimension(String of, double min, double max, Provenance provenance) {
        double value = min + random.nextDouble() * (max - min);
        var number = String.format(Locale.ROOT, "%.3f", Math.clamp(value, min, max));
        double rounded = Double.parseDouble(number);
        var typed = switch (random.nextInt(6)) {
            case 0 -> "unknown";
            case 1 -> number + " ±0.2";
            case 2 -> number + " +0.1/-0.3";
            case 3 -> number + "  ±5 %";
            case 4 -> rounded > 1 && rounded < 100 && of.endsWith("Mm") ? number + " h7" : number.replace('.', ',');
            default -> number;
        };
        return DimensionText.parse(of, typed, provenance);
    }

    private String id() {
        return "thing-" + random.nextInt(100_000);
    }

    private String note() {
        return one(NOTES.toArray(String[]::new));
    }

    private String text() {
        var text = note();
        return text.isBlank() ? "filled" : text;
    }

    private <T> T one(T[] choices) {
        return choices[random.nextInt(choices.length)];
    }
}
