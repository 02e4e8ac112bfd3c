package org.fumewarden.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.fumewarden.batch.Batch;
import org.fumewarden.batch.Batch.Tally;
import org.fumewarden.batch.Entries;
import org.fumewarden.batch.LineAdvisor;
import org.fumewarden.batch.Outcome;
import org.fumewarden.batch.Outcome.Fate;
import org.fumewarden.batch.ResultFiles;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Count;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.BriefJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Advises on many tasks at once. */
@Command(
        name = "batch",
        mixinStandardHelpOptions = true,
        description = {
            "Advises on many tasks, from a file of lines or a folder of task files.",
            "A line of the file is one task as JSON. One line of JSON for each task, in the same order, comes out. The advice says whether it is complete.",
            "A line with \"do-not-use-this-unit\" is about a unit in hand that must not be used, however complete the advice is."
        },
        footer = {"", "Example:", "  fumewarden batch scenarios/tours --out advice.jsonl"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:every task has advice; the status of each is in its line",
            "1:a fault of the program, on the whole or on some task",
            "2:wrong input; some tasks were rejected, and the rejects say why"
        })
final class BatchCommand implements Callable<Integer> {
    private static final long PROGRESS_NANOS = 250_000_000L;

    @Parameters(paramLabel = "INPUT", description = "File of lines, each a task as JSON, or folder of task files.")
    private Path input;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Writes the advice there; to standard output when not given.")
    private Path out;

    @Option(
            names = "--rejects",
            paramLabel = "FILE",
            description = "Writes tasks that cannot be read there, with line and reason; beside --out when not given.")
    private Path rejects;

    @Option(
            names = "--brief",
            description = "Writes the answer and the rules behind it alone, no sentences and no trail.")
    private boolean brief;

    @Option(names = "--resume", description = "Continues a run that was interrupted. It needs --out.")
    private boolean resume;

    @Option(
            names = "--force",
            description = "Replaces result files that are there already, but never the input or a register.")
    private boolean force;

    @Option(names = "--code", paramLabel = "ID", description = "Code that decides, whatever a task says.")
    private String code;

    @Option(names = "--on", paramLabel = "DATE", description = "Day whose rules apply, such as 2026-03-02.")
    private LocalDate on;

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules, which are compiled first.")
    private Path rules;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Number of tasks decided at once; one for each core when not given.")
    private Integer threads;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException, InterruptedException {
        int cores = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (cores < 1) {
            throw wrong("--threads", "is " + cores + ", which decides nothing.", "--threads 2.");
        }
        if (force && resume) {
            throw wrong("--force", "begins anew and --resume goes on.", "give one of the two.");
        }
        if (out == null && (resume || rejects != null)) {
            throw wrong(resume ? "--resume" : "--rejects", "needs a file of advice.", "add --out advice.jsonl.");
        }
        TaskOptions.warn(rules, spec.commandLine().getErr());
        LineAdvisor worker = new LineAdvisor(
                id -> TaskOptions.advisor(rules, id),
                Optional.ofNullable(code),
                Optional.ofNullable(on),
                brief ? BriefJson::write : AdviceJson::writeUntried);
        Tally tally = out == null ? toStreams(worker, cores) : toFiles(worker, cores);
        if (tally.of(Fate.FAULT) > 0) {
            return ExitCodes.FAULT;
        }
        return tally.of(Fate.REJECTED) > 0 ? ExitCodes.BAD_INPUT : ExitCodes.COMPLETE;
    }

    private Tally toFiles(LineAdvisor worker, int cores) throws IOException, InterruptedException {
        Path refused = rejects == null ? out.resolveSibling(out.getFileName() + ".rejects") : rejects;
        admit("--out", out, refused);
        admit("--rejects", refused, out);
        if (resume) {
            return resumed(refused, worker, cores);
        }
        try (Entries entries = Entries.open(input);
                ResultFiles files = ResultFiles.begin(out, refused)) {
            return reported(new Batch(worker, cores).run(entries, files, progress()), refused);
        }
    }

    private Tally resumed(Path refused, LineAdvisor worker, int cores) throws IOException, InterruptedException {
        Map<Fate, Long> before = new EnumMap<>(Fate.class);
        Tally added = ResultFiles.resume(
                out,
                refused,
                input,
                worker,
                (advised, rejected, stale) -> {
                    before.put(Fate.ADVISED, advised);
                    before.put(Fate.REJECTED, rejected);
                    tell(advised, rejected, stale);
                },
                (entries, files) -> new Batch(worker, cores).run(entries, files, progress()));
        added.counts().forEach((fate, count) -> before.merge(fate, count, Long::sum));
        return reported(new Tally(before), refused);
    }

    private void tell(long advised, long rejected, long stale) {
        PrintWriter err = spec.commandLine().getErr();
        if (stale > 0) {
            err.println(Count.of(stale, "line") + (stale == 1 ? " was" : " were") + " changed since the last run, in "
                    + input + " or in " + out + ". Their tasks are decided anew, and both files are written again.");
        } else if (advised + rejected > 0) {
            err.println("Going on after " + Count.of(advised + rejected, "task") + ".");
        }
    }

    private Tally reported(Tally tally, Path refused) {
        report(tally, " See " + refused + ".");
        return tally;
    }

    /** Results take the place of nothing but their own beginning. */
    private void admit(String option, Path result, Path other) {
        new OutputFile(option, result, force || resume)
                .sparing(input, other)
                .orElse("add --resume to go on with it, name another, or add --force to begin anew in its place.")
                .admit();
        String name = result.getFileName().toString();
        boolean asTask = name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
        Path folder = result.toAbsolutePath().normalize().getParent();
        if (asTask && folder.equals(input.toAbsolutePath().normalize())) {
            throw wrong(option, "lies among the tasks and would be read as one.", "name it .jsonl, or another folder.");
        }
    }

    private Tally toStreams(LineAdvisor worker, int cores) throws IOException, InterruptedException {
        try (Entries entries = Entries.open(input)) {
            Tally tally = new Batch(worker, cores).run(entries, this::print, seen -> {});
            report(tally, "");
            return tally;
        }
    }

    private void print(Outcome outcome) throws IOException {
        PrintWriter to = outcome.advised()
                ? spec.commandLine().getOut()
                : spec.commandLine().getErr();
        to.print(outcome.json() + "\n");
        if (to.checkError()) {
            throw new IOException("the reader of the output has gone");
        }
    }

    private void report(Tally tally, String where) {
        long refused = tally.all() - tally.of(Fate.ADVISED);
        spec.commandLine()
                .getErr()
                .println("Advised on " + Count.of(tally.of(Fate.ADVISED), "task") + ", rejected " + refused + "."
                        + (refused > 0 ? where : ""));
    }

    /** A line that counts up on a terminal, and nothing elsewhere. The launcher knows whether it is one. */
    private static Consumer<Tally> progress() {
        if (!Boolean.parseBoolean(System.getProperty("fumewarden.terminal", "" + (System.console() != null)))) {
            return tally -> {};
        }
        PrintStream terminal = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        long began = System.nanoTime();
        long[] shown = {began};
        return tally -> {
            long now = System.nanoTime();
            if (now - shown[0] >= PROGRESS_NANOS) {
                shown[0] = now;
                long rate = Math.round(tally.all() * 1e9 / (now - began));
                terminal.print("\r" + Count.of(tally.all(), "task") + ", " + rate + " a second, "
                        + (tally.all() - tally.of(Fate.ADVISED)) + " rejected \r");
            }
        };
    }

    private static InputException wrong(String option, String message, String maybe) {
        return new InputException(new Problem(option, 0, "", message, maybe));
    }
}
