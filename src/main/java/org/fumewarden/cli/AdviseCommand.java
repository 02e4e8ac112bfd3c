package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.Signatures;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.TextSheet;
import org.fumewarden.whatif.Bench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Advises on a described task. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description =
                "Advises on a described task: what to wear, what is barred and why, what is owed, what is still open.",
        footer = {"", "Example:", "  fumewarden advise scenarios/tours/stainless-brackets.yaml"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:the advice is complete",
            "1:a fault of the program",
            "2:wrong input; the message says where",
            "3:incomplete, in conflict, or do not enter"
        })
final class AdviseCommand implements Callable<Integer> {
    /** How the sheet is written. */
    enum Format {
        text,
        json
    }

    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON.")
    private Path file;

    @Option(names = "--format", description = "${COMPLETION-CANDIDATES}; text when not given.", defaultValue = "text")
    private Format format;

    @Option(
            names = "--keep",
            paramLabel = "FOLDER",
            description = "Keeps the advice there, chained to what was kept before.")
    private Path keep;

    @Option(
            names = "--sign-with",
            paramLabel = "PEM",
            description = "Signs what is kept with this Ed25519 private key.")
    private Path key;

    @Mixin
    private TaskOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Bench bench = options.bench(file);
        Advice advice = bench.advise();
        String sheet = format == Format.json
                ? AdviceJson.write(advice)
                : TextSheet.write(
                        advice, bench.advisor(bench.code()).base().book().vocabulary());
        if (keep != null) {
            Path kept = new Keeper(keep).keep(bench.tree(Map.of()).plain(), AdviceJson.write(advice), Instant.now());
            if (key != null) {
                Signatures.sign(kept, key);
            }
            spec.commandLine().getErr().println("Kept as " + kept);
        }
        spec.commandLine().getOut().print(sheet);
        spec.commandLine().getOut().flush();
        return advice.status() == Status.COMPLETE ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }
}
