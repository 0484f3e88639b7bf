package beltwright.app.geometry;

import beltwright.app.DemoKits;
import beltwright.kit.Kit;
import beltwright.quantity.Dimension;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/// Demo kits with some sizes moved and some parts exchanged, so that more than half of them fail something.
final class ChangedKits {
    private static final long SPREAD = 0x9E3779B97F4A7C15L; // neighbouring seeds begin alike
    private static final Provenance ANY = new Provenance(Source.MEASURED, "");
    private static final List<String> KITS =
            List.of("market-hill-single", "steep-street", "quarry-road-load", "harbour-mile", "orchard-lane");

    /// Parts for seats that they fit in kind; whether they fit in size is what is asked.
    private static final List<String[]> SWAPS = List.of(
            new String[] {"left wheel", "wheel-90", "wheel-97", "wheel-125", "wheel-90-recess"},
            new String[] {"left belt", "belt-265-15", "belt-275-15", "belt-300-15", "belt-350-20"},
            new String[] {"left drive pulley", "pulley-14", "pulley-15", "pulley-16", "pulley-18-wide"},
            new String[] {"left motor", "motor-54", "motor-63", "motor-63-long"},
            new String[] {"left inner speed ring", "ring-8-13", "ring-8-11", "ring-8-1"});

    /// Sizes on which a geometric verdict turns at once: these are also moved a long way.
    private static final Set<String> DECISIVE = Set.of(
            "canDiameterMm",
            "canLengthMm",
            "shaftLengthMm",
            "threadDepthMm",
            "boltCircleMm",
            "bodyWidthMm",
            "bodyReachMm",
            "sectionHeightMm",
            "sectionDepthMm",
            "plateRadiusMm",
            "clampLengthMm",
            "openingMm",
            "outsideMm",
            "lugLengthMm",
            "openingDepthMm",
            "bearingSeatDepthMm",
            "depthMm",
            "radiusMm",
            "reachMm",
            "idlerAlongMm",
            "idlerAsideMm",
            "reachDiameterMm",
            "standoffMm",
            "flangeDiameterMm",
            "boreDiameterMm",
            "slotMinMm",
            "slotMaxMm",
            "kerbMm",
            "crestDeg",
            "aboveAxleDeg",
            "plateInsetMm",
            "pulleyStandoffMm",
            "wornDiameterMm",
            "diameterMm",
            "widthMm",
            "lengthMm",
            "rimStandoffMm",
            "fullLeanDeg",
            "axleDropMm");

    /// A kit and what was changed in it, so that a failure can be typed again.
    record Changed(String of, List<Edit> edits, Kit kit) {
        boolean swapped() {
            return edits.stream().anyMatch(e -> e.path().startsWith("seats."));
        }

        @Override
        public String toString() {
            return of + " " + edits;
        }
    }

    private ChangedKits() {}

    static Changed seeded(long seed) {
        var random = new Random(seed * SPREAD);
        var of = KITS.get((int) (seed % KITS.size()));
        var edits = new ArrayList<Edit>();
        if (random.nextInt(4) == 0) {
            var swap = SWAPS.get(random.nextInt(SWAPS.size()));
            add(edits, new Edit(of, "seats." + swap[0], swap[1 + random.nextInt(swap.length - 1)]));
        }
        var fields = fields(of, edits);
        int count = 1 + random.nextInt(4);
        while (count-- > 0) {
            var field = fields.get(random.nextInt(fields.size()));
            moved(field, random, 0.3 + 0.06 * Math.abs(field.nominal())).ifPresent(e -> add(edits, e));
        }
        var decisive = fields.stream()
                .filter(f -> DECISIVE.contains(f.at().path().replaceAll(".*\\.", "")))
                .toList();
        if (random.nextInt(3) > 0) {
            var field = decisive.get(random.nextInt(decisive.size()));
            double most = field.at().unit().equals("°") ? 30 : 2 + 0.5 * Math.abs(field.nominal());
            moved(field, random, most).ifPresent(e -> add(edits, e));
        }
        if (random.nextInt(5) == 0) {
            var counted = counts(of, edits).get(random.nextInt(3));
            int by = random.nextInt(15) - 7;
            add(edits, new Edit(counted.document(), counted.at().path(), "" + (int) (counted.nominal() + by)));
        }
        if (random.nextInt(20) == 0) {
            var mount = DemoKits.SHELF.kit(of).drives().getFirst().mount().id();
            add(edits, new Edit(mount, "slots", "" + (2 + random.nextInt(5))));
        }
        return new Changed(of, edits, DemoKits.SHELF.with(edits).kit(of));
    }

    private static void add(List<Edit> edits, Edit edit) {
        edits.add(edit);
        try {
            DemoKits.SHELF.with(edits);
        } catch (Refusal outOfRange) {
            edits.removeLast();
        }
    }

    private record Field(String document, Editable at, double nominal) {}

    /// {@return every length and angle of the kit and its parts}
    private static List<Field> fields(String of, List<Edit> edits) {
        var shelf = DemoKits.SHELF.with(edits);
        var documents = new TreeSet<>(shelf.kit(of).parts().keySet());
        documents.add(of);
        var fields = new ArrayList<Field>();
        for (var document : documents) {
            for (var field : shelf.editable(document)) {
                if (!field.source().isEmpty()
                        && (field.unit().equals("mm") || field.unit().equals("°"))) {
                    parsed(field)
                            .filter(Dimension::known)
                            .ifPresent(d -> fields.add(new Field(document, field, d.nominal())));
                }
            }
        }
        return fields;
    }

    /// {@return teeth of belt and pulleys}
    private static List<Field> counts(String of, List<Edit> edits) {
        var shelf = DemoKits.SHELF.with(edits);
        var drive = shelf.kit(of).drives().getFirst();
        return List.of(
                new Field(
                        drive.belt().id(),
                        field(shelf, drive.belt().id(), "teeth"),
                        drive.belt().teeth()),
                new Field(
                        drive.drivePulley().id(),
                        field(shelf, drive.drivePulley().id(), "rim.teeth"),
                        drive.drivePulley().rim().teeth()),
                new Field(
                        drive.wheelPulley().id(),
                        field(shelf, drive.wheelPulley().id(), "rim.teeth"),
                        drive.wheelPulley().rim().teeth()));
    }

    private static Editable field(Shelf shelf, String document, String path) {
        return shelf.editable(document).stream()
                .filter(f -> f.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Dimension> parsed(Editable field) {
        try {
            return Optional.of(DimensionText.parse(field.path(), field.text(), ANY));
        } catch (Refusal notADimension) {
            return Optional.empty();
        }
    }

    /// {@return the dimension moved by so many mm or degrees, more or less, its limits as wide as before}
    private static Optional<Edit> moved(Field field, Random random, double by) {
        return parsed(field.at()).map(d -> {
            var text = Numbers.significant(d.nominal() + Math.clamp(random.nextGaussian(), -2, 2) * by, 7)
                    .replace('−', '-');
            return new Edit(
                    field.document(),
                    field.at().path(),
                    d.toleranced()
                            ? text + " +" + Numbers.significant(d.upper() - d.nominal(), 6) + "/-"
                                    + Numbers.significant(d.nominal() - d.lower(), 6)
                            : text);
        });
    }
}
