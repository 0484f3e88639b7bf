package beltwright.app;

import beltwright.app.bench.Hands;
import beltwright.check.Finding;
import beltwright.press.json.SpreadJson;
import beltwright.quantity.Refusal;
import beltwright.spread.Odds;
import beltwright.spread.Sampling;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "spread",
        description = {
            "Say how sure each finding is, by drawing the kit many times between its limits.",
            "Counts in how many of them each finding holds, how many go together first time, and which dimension matters"
                    + " most.",
            "Data sheet and standard: normal, limits at three σ; measured: normal, limits at two σ; said by a customer and"
                    + " estimate: even between the limits. Nothing is drawn outside its limits. Nothing is saved."
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright spread steep-street-light",
            "  ./beltwright spread steep-street-light --of motor-screw-reach.left",
            "  ./beltwright spread steep-street-light --kits 100000 --seed 7 --json",
            "  ./beltwright spread steep-street-light --set 'screw-m4x14.lengthMm=14 ±0.1'"
        })
final class SpreadCommand extends KitCommand {
    @Option(
            names = "--kits",
            paramLabel = "N",
            defaultValue = "" + Sampling.USUAL,
            description = "how many kits are drawn, 1 to " + Sampling.MOST + " (default: ${DEFAULT-VALUE})")
    int kits;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "the same seed draws the same kits (default: ${DEFAULT-VALUE})")
    long seed;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "threads that draw, 1 to 64; they change no digit (default: as many as processors)")
    int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--of",
            paramLabel = "FINDING",
            description = "one finding by its key in --json, such as take-up.left, with all that it rests on")
    String of = "";

    @Option(names = "--all", description = "list the findings that hold in every kit drawn, too")
    boolean all;

    SpreadCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        if (threads < 1 || threads > 64) {
            throw new Refusal("--threads", threads + " threads", "1 to 64", "ask for another number of threads");
        }
        if (kits < 1 || kits > Sampling.MOST) {
            throw new Refusal("--kits", kits + " kits", "1 to " + Sampling.MOST, "ask for another number of kits");
        }
        var asked = edited(shelf()).kit(kit);
        var spread = Sampling.of(asked, kits, seed, new Hands(threads), () -> false);
        var odds = of.isEmpty() ? spread.odds() : List.of(found(spread.odds()));
        if (json) {
            say(SpreadJson.of(spread, odds));
        } else {
            var text = new SpreadText(asked, spread, desk.columns());
            say(of.isEmpty() ? text.all(all) : text.one(odds.getFirst()));
        }
        return Exit.of(spread.odds().stream().map(Odds::finding).toList());
    }

    private Odds found(List<Odds> odds) {
        return odds.stream()
                .filter(o -> o.finding().key().equals(of))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        "--of",
                        "kit " + kit + " has no finding '" + of + "'",
                        String.join(
                                ", ",
                                odds.stream()
                                        .map(Odds::finding)
                                        .map(Finding::key)
                                        .toList()),
                        "name one of these"));
    }
}
