package beltwright.app;

import beltwright.kit.Kit;
import beltwright.quantity.DimensionText;
import beltwright.quantity.Numbers;
import beltwright.quantity.Provenance;
import beltwright.quantity.Refusal;
import beltwright.quantity.Source;
import beltwright.workshop.Edit;
import beltwright.workshop.document.Editable;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

/// Edits of a kit and its parts: drawn from a seed, or one for every dimension.
public final class Edits {
    private static final Provenance ANY = new Provenance(Source.MEASURED, "");

    private Edits() {}

    /// {@return so many edits of dimensions of this kit, the same for the same seed}
    public static List<Edit> seeded(String kitId, long seed, int count) {
        var random = new Random(seed);
        var all = new ArrayList<>(everyDimension(kitId, 0.01 + random.nextDouble() * 0.1));
        var edits = new ArrayList<Edit>();
        while (edits.size() < count) {
            edits.add(all.get(random.nextInt(all.size())));
        }
        return edits;
    }

    /// {@return one edit for every known dimension of the kit, of each of its parts and of its task, moved by a share}
    public static List<Edit> everyDimension(String kitId, double share) {
        Kit kit = DemoKits.SHELF.kit(kitId);
        var documents = new TreeSet<>(kit.parts().keySet());
        documents.add(kitId);
        var edits = new ArrayList<Edit>();
        for (var document : documents) {
            for (var field : DemoKits.SHELF.editable(document)) {
                moved(document, field, share).ifPresent(edits::add);
            }
        }
        return edits;
    }

    /// {@return the field with its nominal moved and its limits kept as wide, or nothing for what is no known
    /// dimension}
    static java.util.Optional<Edit> moved(String document, Editable field, double share) {
        if (field.source().isEmpty()) {
            return java.util.Optional.empty();
        }
        try {
            var d = DimensionText.parse(document + "." + field.path(), field.text(), ANY);
            if (!d.known()) {
                return java.util.Optional.empty();
            }
            double by = Math.max(Math.abs(d.nominal()) * share, 0.03);
            for (double step : new double[] {by, -by}) {
                var edit = new Edit(
                        document,
                        field.path(),
                        text(d.nominal() + step, d.nominal() - d.lower(), d.upper() - d.nominal()));
                try {
                    DemoKits.SHELF.with(List.of(edit));
                    return java.util.Optional.of(edit);
                } catch (Refusal outOfRange) {
                    continue;
                }
            }
            throw new AssertionError(
                    "no neighbour of " + document + "." + field.path() + " = " + field.text() + " is allowed");
        } catch (Refusal notADimension) {
            return java.util.Optional.empty();
        }
    }

    private static String text(double nominal, double below, double above) {
        var number = Numbers.significant(nominal, 7).replace('−', '-');
        if (below == 0 && above == 0) {
            return number;
        }
        return number + " +" + Numbers.significant(above, 6) + "/-" + Numbers.significant(below, 6);
    }
}
