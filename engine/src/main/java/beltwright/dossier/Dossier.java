package beltwright.dossier;

import beltwright.assembly.Box;
import beltwright.assembly.Step;
import beltwright.assembly.Tally;
import beltwright.check.Finding;
import beltwright.check.FirstNumber;
import beltwright.kit.Kit;
import beltwright.layout.DrawnDimension;
import beltwright.layout.Layout;
import java.util.List;

/// Everything known of one kit. Web page, command, guide and drawing all render this, so they cannot disagree.
///
/// @param findings the margin ladder, weakest first
public record Dossier(
        Kit kit,
        Layout layout,
        List<Finding> findings,
        List<FirstNumber> numbers,
        List<DrawnDimension> dimensions,
        Box box,
        List<Step> steps,
        List<Tally> tallies) {
    public Dossier {
        findings = List.copyOf(findings);
        numbers = List.copyOf(numbers);
        dimensions = List.copyOf(dimensions);
        steps = List.copyOf(steps);
        tallies = List.copyOf(tallies);
    }
}
