package beltwright.dossier;

import beltwright.assembly.Guide;
import beltwright.check.FirstNumbers;
import beltwright.check.Ladder;
import beltwright.check.TensionCard;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;

/// Computes everything there is to know of a kit, once.
public final class Dossiers {
    private Dossiers() {}

    public static Dossier of(Kit kit) {
        var layout = LayoutSolver.solve(kit);
        var numbers = FirstNumbers.of(kit, layout);
        var box = Guide.box(kit);
        var steps = Guide.steps(kit, TensionCard.of(kit, layout));
        return new Dossier(
                kit,
                layout,
                Ladder.findings(kit, layout),
                numbers,
                Ladder.dimensions(kit, layout),
                box,
                steps,
                Guide.tallies(box, steps));
    }
}
