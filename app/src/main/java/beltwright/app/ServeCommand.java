package beltwright.app;

import picocli.CommandLine;
import picocli.CommandLine.Option;

@CommandLine.Command(
        name = "serve",
        description = {
            "Serve the bench to a browser on this machine, and to no other, until Ctrl-C.",
            "It has drawings and margin ladder of a kit, and what an edit moves; parts to enter; what goes with what."
                    + " A file named with --workshop that is not there yet is made, empty."
        },
        footer = {"", "Example:", "  ./beltwright serve --port " + Serving.PORT})
final class ServeCommand extends WorkshopCommand {
    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = Serving.PORT,
            description = "0 takes any free one (default: ${DEFAULT-VALUE})")
    int port;

    ServeCommand(Desk desk) {
        super(desk);
    }

    @Override
    public Integer call() {
        Serving.checkPort(port);
        return Serving.serve(workshopToServe(), port, address -> {
            if (json) {
                say(AnswerJson.serving(address));
            } else {
                say("The bench is at " + address + " (Ctrl-C stops it)");
            }
        });
    }
}
