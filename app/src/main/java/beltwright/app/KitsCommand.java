package beltwright.app;

import beltwright.dossier.Dossier;
import beltwright.dossier.Dossiers;
import beltwright.workshop.Shelf;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "kits",
        description = "List the kits of the workshop and how each stands.",
        footer = {"", "Example:", "  ./beltwright kits --json"})
final class KitsCommand extends WorkshopCommand {
    @Option(names = "--no-estimates", description = "treat every estimated number as unknown")
    boolean noEstimates;

    KitsCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var shelf = readWorkshop().shelf();
        var dossiers = dossiers(noEstimates ? shelf.withoutEstimates() : shelf);
        if (json) {
            say(AnswerJson.kits(dossiers));
        } else if (dossiers.isEmpty()) {
            say("No kit yet: import a folder that holds one.");
        } else {
            say(table(dossiers));
        }
        return Exit.NOTHING_FAILS;
    }

    static List<Dossier> dossiers(Shelf shelf) {
        return shelf.drafts().keySet().stream()
                .map(id -> Dossiers.of(shelf.kit(id)))
                .toList();
    }

    private List<String> table(List<Dossier> dossiers) {
        int ids = Typesetting.widest(dossiers.stream().map(d -> d.kit().id()).toList());
        int names = Typesetting.widest(
                dossiers.stream().map(d -> d.kit().draft().name()).toList());
        return dossiers.stream()
                .flatMap(d -> {
                    var head = Typesetting.padded(d.kit().id(), ids) + "  "
                            + Typesetting.padded(d.kit().draft().name(), names) + "  ";
                    return Typesetting.hanging(head, LadderText.counts(d), desk.columns()).stream();
                })
                .toList();
    }
}
