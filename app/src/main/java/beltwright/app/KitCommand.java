package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.quantity.Refusal;
import beltwright.workshop.Edit;
import beltwright.workshop.Shelf;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// A command about one kit, as it is kept or as a draft with some fields set otherwise.
abstract class KitCommand extends WorkshopCommand {
    @Parameters(paramLabel = "KIT", description = "the kit's id, as './beltwright kits' lists it")
    String kit = "";

    @Option(
            names = "--set",
            paramLabel = "DOCUMENT.FIELD=VALUE",
            description = "try a value, as it would stand in the document's file; can be repeated; nothing is saved")
    List<String> set = new ArrayList<>();

    @Option(names = "--no-estimates", description = "treat every estimated number as unknown")
    boolean noEstimates;

    KitCommand(Desk desk) {
        super(desk);
    }

    /// {@return the shelf without the edits of `--set`}
    Shelf shelf() {
        var shelf = readWorkshop().shelf();
        return noEstimates ? shelf.withoutEstimates() : shelf;
    }

    /// {@return the shelf with the edits of `--set`}
    Shelf edited(Shelf shelf) {
        try {
            return shelf.with(set.stream().map(Edit::parse).toList());
        } catch (Refusal r) {
            throw new Refusal("--set " + r.where(), r.wrong(), r.allowed(), r.mend());
        }
    }

    /// {@return the dossier of the kit as asked}
    Dossier dossier() {
        return Dossiers.of(edited(shelf()).kit(kit));
    }
}
