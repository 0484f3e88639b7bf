package beltwright.app;

import beltwright.quantity.Refusal;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

@CommandLine.Command(
        name = "beltwright",
        version = "Beltwright " + Main.VERSION,
        synopsisHeading = "",
        customSynopsis = "beltwright COMMAND [options]",
        description = {
            "",
            "For a workshop that designs, sells and supports bolt-on belt-drive kits for electric boards: whether a kit goes "
                    + "together, with the working; drawings to scale; an assembly guide reconciled with the box.",
            ""
        },
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading =
                "%nExit codes of check, draw, guide, change, mend, spread, tension and weakest; of ride, where 1 means that it does not "
                        + "arrive, and of power and calibrate, without 1; the other commands end with 0, 2 or 70:%n",
        exitCodeList = {
            "0:nothing fails",
            "1:something fails",
            "2:bad input, said on standard error",
            "3:nothing fails, but a number is missing that decides",
            "70:internal error"
        },
        footer = {
            "",
            "Examples:",
            "  ./beltwright demo",
            "  ./beltwright kits",
            "  ./beltwright check steep-street",
            "  ./beltwright change steep-street --set mount-hill.plateThicknessMm=10",
            "  ./beltwright power steep-street --brakes",
            "  ./beltwright ride steep-street --route mill-hill",
            "  ./beltwright calibrate steep-street --log river-coast --find rolling,drag",
            "",
            "Margins are advice for a competent builder, never a certificate."
        })
public final class Main implements Callable<Integer> {
    static final String VERSION = "0.1.0";
    private static final String DEBUG_VARIABLE = "BELTWRIGHT_DEBUG";
    private static final int WIDEST_HELP = 100;

    private final Desk desk;

    @Option(
            names = "--help",
            usageHelp = true,
            description = "show this page; './beltwright COMMAND --help' shows more")
    boolean help;

    @Option(names = "--version", versionHelp = true, description = "show the version")
    boolean version;

    @Spec
    CommandSpec spec = CommandSpec.create();

    private Main(Desk desk) {
        this.desk = desk;
    }

    public static void main(String[] args) {
        System.exit(run(Desk.here(), args));
    }

    /// {@return the exit code of one command}
    static int run(Desk desk, String... args) {
        var line = line(desk);
        try {
            return line.execute(args);
        } catch (Error e) {
            return failed(desk, e);
        } finally {
            desk.out().flush();
            desk.err().flush();
        }
    }

    /// {@return everything that can be typed}
    static CommandLine line(Desk desk) {
        return new CommandLine(new Main(desk))
                .addSubcommand(new DemoCommand(desk))
                .addSubcommand(new KitsCommand(desk))
                .addSubcommand(new CheckCommand(desk))
                .addSubcommand(new ChangeCommand(desk))
                .addSubcommand(new MendCommand(desk))
                .addSubcommand(new SpreadCommand(desk))
                .addSubcommand(new PairsCommand(desk))
                .addSubcommand(new SlotsCommand(desk))
                .addSubcommand(new TensionCommand(desk))
                .addSubcommand(new WeakestCommand(desk))
                .addSubcommand(new PowerCommand(desk))
                .addSubcommand(new RideCommand(desk))
                .addSubcommand(new CalibrateCommand(desk))
                .addSubcommand(new DrawCommand(desk))
                .addSubcommand(new GuideCommand(desk))
                .addSubcommand(new ImportCommand(desk))
                .addSubcommand(new ExportCommand(desk))
                .addSubcommand(new ServeCommand(desk))
                .setOut(desk.out())
                .setErr(desk.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setUsageHelpWidth(Math.clamp(desk.columns(), 55, WIDEST_HELP))
                .setParameterExceptionHandler((e, ignored) -> mistyped(desk, e))
                .setExecutionExceptionHandler((e, ignored, parsed) -> failed(desk, e));
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(desk.out());
        return Exit.NOTHING_FAILS;
    }

    private static int mistyped(Desk desk, ParameterException e) {
        var at = e.getCommandLine();
        var page = "./beltwright " + (at.getParent() == null ? "" : at.getCommandName() + " ") + "--help";
        desk.err().println(Said.of(refusal(e, "see " + page)));
        return Exit.BAD_INPUT;
    }

    private static Refusal refusal(ParameterException e, String mend) {
        var at = e.getCommandLine();
        var command = at.getCommandName();
        var spec = at.getCommandSpec();
        var wrong = lowerFirst(String.valueOf(e.getMessage()));
        if (at.getParent() == null) {
            var commands = String.join(", ", at.getSubcommands().keySet());
            return e instanceof UnmatchedArgumentException unmatched
                    ? new Refusal(
                            command, "'" + unmatched.getUnmatched().getFirst() + "' is not a command", commands, mend)
                    : new Refusal(command, wrong, commands, mend);
        }
        if (e.getArgSpec() instanceof OptionSpec option) {
            return e.getValue() == null
                    ? new Refusal(option.longestName(), "needs a value", meaning(option), mend)
                    : new Refusal(
                            option.longestName(),
                            "'" + e.getValue() + "' cannot be read",
                            "a whole number, " + meaning(option),
                            mend);
        }
        if (e instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            var all = missing.getMissing();
            return all.getFirst() instanceof OptionSpec option && all.size() == 1
                    ? new Refusal(option.longestName(), "is missing", meaning(option), mend)
                    : new Refusal(
                            command,
                            "needs " + all.stream().map(ArgSpec::paramLabel).collect(Collectors.joining(" and ")),
                            all.stream().map(Main::meaning).collect(Collectors.joining("; ")),
                            mend);
        }
        var options = spec.options().stream().map(OptionSpec::longestName).collect(Collectors.joining(", "));
        if (e instanceof UnmatchedArgumentException unmatched) {
            var first = unmatched.getUnmatched().getFirst();
            var takes = spec.positionalParameters().stream()
                    .map(ArgSpec::paramLabel)
                    .collect(Collectors.joining(" "));
            return first.startsWith("-")
                    ? new Refusal(command, "'" + first + "' is not an option of this command", options, mend)
                    : new Refusal(
                            command,
                            "'" + first + "' is one too many",
                            takes.isEmpty() ? "no name, only options: " + options : takes + ", and options: " + options,
                            mend);
        }
        return new Refusal(command, wrong, options, mend);
    }

    private static String meaning(ArgSpec arg) {
        return String.join(" ", arg.description());
    }

    private static int failed(Desk desk, Throwable e) {
        if (e instanceof Refusal refusal) {
            desk.err().println(Said.of(refusal));
            return Exit.BAD_INPUT;
        }
        desk.err()
                .println(Said.oneLine("internal error: " + e + "; this is a fault of Beltwright " + VERSION
                        + ", your data is as it was; please report this line, and what you typed, to its authors ("
                        + DEBUG_VARIABLE + "=1 adds where it happened)"));
        if ("1".equals(desk.environment().get(DEBUG_VARIABLE))) {
            e.printStackTrace(desk.err());
        }
        return Exit.INTERNAL_ERROR;
    }

    private static String lowerFirst(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
