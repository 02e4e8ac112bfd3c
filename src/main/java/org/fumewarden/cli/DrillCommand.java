package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.fumewarden.training.Handout;
import org.fumewarden.training.Round;
import org.fumewarden.training.Scores;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A training round. */
@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = {
            "The training room: asks five questions about each task, marks the answers by their meaning and names the mistake.",
            "Tasks come from files, or are made to order with --topic.",
            "Answer with a number or in your own words; \"?\" gives a hint, \"-\" skips, \".\" stops.",
            "Nothing is kept unless a file is named for it."
        },
        footer = {
            "",
            "Examples:",
            "  fumewarden drill scenarios/drills",
            "  fumewarden drill --code gb --topic gas --difficulty 2 --seed 7",
            "  fumewarden drill --code gb --before-use powered-mask"
        })
final class DrillCommand implements Callable<Integer> {
    @Mixin
    private LanguageOption language;

    @Option(
            names = "--progress",
            paramLabel = "FILE",
            description = "Keeps the answers there after each question; the same command takes the round up again.")
    private Path progress;

    @Option(
            names = "--score",
            paramLabel = "FILE",
            description = "Writes the score sheet as CSV; it holds no name unless --trainee gives one.")
    private Path score;

    @Option(names = "--trainee", paramLabel = "NAME", description = "Name on the score sheet.")
    private String trainee = "";

    @Option(
            names = "--handout",
            paramLabel = "FILE",
            description =
                    "Writes the tasks and, behind them, the answers with reasons, as .html, .pdf or text; asks nothing.")
    private Path handout;

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "Writes a certificate of attendance with the topics, as .html, .pdf or text; asks nothing.")
    private Path certificate;

    @Option(names = "--force", description = "Replaces what is there already under the same name.")
    private boolean force;

    @Mixin
    private DrillTasks tasks;

    @Spec
    private CommandSpec spec;

    /** Replaced in tests. */
    Supplier<LocalDate> today = LocalDate::now;

    @Override
    public Integer call() {
        Words words = language.words();
        if (score != null) {
            file("--score", score).admit();
        }
        List<Round> rounds = tasks.rounds(words, today, spec.commandLine().getErr());
        if (handout != null || certificate != null) {
            if (handout != null) {
                write("--handout", handout, Handout.of(rounds, words));
            }
            if (certificate != null) {
                write(
                        "--certificate",
                        certificate,
                        Handout.certificate(rounds, words, today.get().toString()));
            }
            return tasks.skippedFiles() ? ExitCodes.BAD_INPUT : ExitCodes.COMPLETE;
        }
        ask(rounds, words);
        return tasks.skippedFiles() ? ExitCodes.BAD_INPUT : ExitCodes.COMPLETE;
    }

    private void ask(List<Round> rounds, Words words) {
        PrintWriter out = spec.commandLine().getOut();
        Scores scores = new Scores();
        DrillProgress kept = new DrillProgress(progress, rounds);
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        try {
            new DrillConsole(in, out, words, kept).run(rounds, scores);
            int asked = rounds.stream().mapToInt(r -> r.items().size()).sum();
            out.println();
            out.println(words.say(
                    "ui.training.console.total", scores.right(), scores.all().size(), asked));
            out.println(words.say("closing"));
            out.flush();
        } finally {
            if (score != null) {
                file("--score", score).write(scores.csv(trainee).getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private void write(String option, Path target, Sheet sheet) {
        String name = target.toString();
        byte[] bytes = name.endsWith(".pdf")
                ? PdfSheet.write(HtmlForm.write(sheet))
                : (name.endsWith(".html") ? HtmlForm.write(sheet) : TextForm.write(sheet))
                        .getBytes(StandardCharsets.UTF_8);
        file(option, target).write(bytes);
    }

    private OutputFile file(String option, Path target) {
        return new OutputFile(option, target, force).sparing(tasks.files().toArray(Path[]::new));
    }
}
