package beltwright.app;

import static beltwright.app.Typesetting.hanging;

import beltwright.check.WeakestLink;
import beltwright.kit.Kit;
import beltwright.layout.LayoutSolver;
import beltwright.press.json.WeakestJson;
import beltwright.press.table.TensionTables;
import beltwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine;

@CommandLine.Command(
        name = "weakest",
        description = {
            "Say what gives first as the torque of a motor rises, driving and braking.",
            "Every link of a drive stands on one scale, the torque at the motor, at nominal and in brackets with every number"
                    + " at its worse limit.",
            "Ends with 0, with 1 where a link gives before the worst torque that the drive sees, with 2 on bad input, with 3"
                    + " where a number is missing."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright weakest steep-street",
            "  ./beltwright weakest steep-street --json",
            "  ./beltwright weakest steep-street --set steep-street.task.gripShare=1.0"
        })
final class WeakestCommand extends KitCommand {
    WeakestCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        var asked = edited(shelf()).kit(kit);
        var chains = WeakestLink.of(asked, LayoutSolver.solve(asked));
        if (json) {
            say(WeakestJson.of(asked.id(), chains));
        } else {
            say(told(asked, chains));
        }
        if (chains.stream().anyMatch(c -> c.links().stream().anyMatch(c::early))) {
            return Exit.SOMETHING_FAILS;
        }
        return chains.stream().allMatch(c -> c.needs().isEmpty()) ? Exit.NOTHING_FAILS : Exit.CANNOT_TELL;
    }

    private List<String> told(Kit kit, List<WeakestLink.Chain> chains) {
        var parts = new ArrayList<List<String>>();
        parts.add(hanging("", "Weakest link: " + PowerText.named(kit), desk.columns()));
        var estimates = new LinkedHashSet<String>();
        for (var chain : chains) {
            var lines = new ArrayList<String>();
            lines.addAll(hanging(
                    "",
                    chain.side() + ": worst torque of the motor " + Numbers.fixed(chain.driveNm(), 1) + " N·m driving, "
                            + Numbers.fixed(chain.brakeNm(), 1) + " N·m braking",
                    desk.columns()));
            for (var braking : new boolean[] {false, true}) {
                var way = braking ? "  braking, " : "  driving, ";
                lines.addAll(hanging(way + "gives first: ", TensionTables.givesFirst(chain, braking), desk.columns()));
                lines.addAll(hanging(way + "held down: ", TensionTables.limitsFirst(chain, braking), desk.columns()));
            }
            lines.addAll(TableText.of(TensionTables.links(chain)).lines(desk.columns()));
            if (!chain.needs().isEmpty()) {
                lines.addAll(PowerText.needs(chain.needs(), desk.columns()));
            }
            parts.add(lines);
            estimates.addAll(chain.estimates());
        }
        parts.add(hanging("! ", WeakestLink.CAUTION, desk.columns()));
        parts.add(PowerText.rests(List.of(), List.copyOf(estimates), desk.columns()));
        return PowerText.joined(parts);
    }
}
