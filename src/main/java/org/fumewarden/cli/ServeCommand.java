package org.fumewarden.cli;

import java.io.IOException;
import java.net.BindException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.fumewarden.check.MissingFiles;
import org.fumewarden.check.Placeholders;
import org.fumewarden.codes.Affirmations;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.web.Library;
import org.fumewarden.web.WebServer;
import org.fumewarden.web.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the local page. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Opens the page on this machine alone, without account or network.",
            "The server keeps nothing but the record, and that only when a store is named.",
            "It runs until it is interrupted."
        },
        footer = {"", "Example:", "  fumewarden serve --port 8460 --store fumewarden.db"})
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8460",
            description = "Port of the loopback address, 0 for any free one; ${DEFAULT-VALUE} when not given.")
    private int port;

    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description = "Folder of edited rules, which are compiled at the start.")
    private Path rules;

    @Option(
            names = "--longest",
            paramLabel = "SECONDS",
            defaultValue = "30",
            description = "Work on one request is stopped after this time; ${DEFAULT-VALUE} when not given.")
    private int longest;

    @Option(
            names = "--store",
            paramLabel = "FILE",
            description =
                    "Register and log: opens the place Upkeep, and advice takes from it what it says of the unit, the"
                            + " mask and the wearer of a task. Without it that place stays closed.")
    private Path store;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (port < 0 || port > HIGHEST_PORT || longest < 1) {
            throw new InputException(new Problem(
                    "--port",
                    0,
                    "",
                    "cannot be " + port + ", nor --longest " + longest + ".",
                    "--port 8460 --longest 30."));
        }
        TaskOptions.warn(rules, spec.commandLine().getErr());
        Library library = rules == null ? Library.shipped(LocalDate::now) : edited();
        Optional<Workshop> workshop =
                Optional.ofNullable(store).map(file -> Workshop.at(file, Clock.systemDefaultZone()));
        library.warm();
        try (WebServer server = WebServer.start(port, library, workshop, Duration.ofSeconds(longest))) {
            spec.commandLine().getErr().println("Open this link in a browser on this machine:");
            spec.commandLine().getErr().println("  " + server.address());
            spec.commandLine()
                    .getErr()
                    .println("It is new at each start, and nothing answers without it. Keep it to yourself.");
            spec.commandLine().getErr().println("End it with Ctrl-C.");
            spec.commandLine().getErr().flush();
            new CountDownLatch(1).await();
        } catch (BindException e) {
            throw new InputException(
                    new Problem("--port", 0, "", port + " is taken by another program.", "--port 0 for any free one."));
        }
        return ExitCodes.COMPLETE;
    }

    /** The rules of a folder, each code filled in: nobody gets advice from what a scaffold left. */
    private Library edited() {
        RuleFolder folder = RuleFolder.at(rules);
        Affirmations.refuseToCome(folder, LocalDate.now());
        folder.codes().forEach(code -> {
            Placeholders.refuse(folder, code);
            MissingFiles.refuse(folder, code);
        });
        return Library.edited(rules, LocalDate::now);
    }
}
