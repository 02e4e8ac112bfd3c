package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.fumewarden.training.Handout;
import org.fumewarden.training.HandsOn;
import org.fumewarden.training.Round;
import org.fumewarden.training.RoundMaker;
import org.fumewarden.training.Scores;
import org.fumewarden.training.Topic;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A training round. */
@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = {
            "The training room: asks five questions about each task, marks the answers by their meaning and names the mistake.",
            "Tasks come from files, or are made to order with --topic. Answer with a number or in your own words; \"?\" gives a hint,",
            "\"-\" skips, \".\" stops. Nothing is kept unless a file is named for it."
        },
        footer = {
            "",
            "Example:",
            "  fumewarden drill scenarios/drills",
            "  fumewarden drill --code gb --topic gas --difficulty 2 --seed 7",
            "  fumewarden drill --code gb --before-use"
        })
final class DrillCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE|FOLDER",
            description = "A task file, or a folder of them, taken in the order of their names.")
    private Path place;

    @Option(
            names = "--topic",
            split = ",",
            paramLabel = "TOPIC",
            description =
                    "Makes tasks to order: particle, gas, confined-space, oxygen, lead, stainless, fit, upkeep, alarms.")
    private List<String> topics = List.of();

    @Option(names = "--difficulty", paramLabel = "1-3", description = "How hard tasks to order are; 1 when not given.")
    private int difficulty = RoundMaker.EASIEST;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "The same number makes the same round; the day decides when not given.")
    private Long seed;

    @Option(names = "--before-use", description = "Practises the checks before use, with faults thrown in.")
    private boolean beforeUse;

    @Option(
            names = "--language",
            paramLabel = "TAG",
            description = "Language of the room: en or de; en when not given.",
            defaultValue = "en")
    private String language;

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
    private TaskOptions options;

    @Spec
    private CommandSpec spec;

    /** Replaced in tests. */
    Supplier<LocalDate> today = LocalDate::now;

    private boolean skippedFiles;

    @Override
    public Integer call() {
        Words words = Words.in(language);
        if (score != null) {
            file("--score", score).admit();
        }
        List<Round> rounds = rounds(words);
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
            return skippedFiles ? ExitCodes.BAD_INPUT : ExitCodes.COMPLETE;
        }
        ask(rounds, words);
        return skippedFiles ? ExitCodes.BAD_INPUT : ExitCodes.COMPLETE;
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

    private List<Round> rounds(Words words) {
        long number = seed != null ? seed : today.get().toEpochDay();
        RoundMaker maker = new RoundMaker(options::advisor, words);
        List<Round> rounds = new ArrayList<>();
        if (place != null) {
            files().forEach(f -> ofFile(maker, f, number, rounds));
        }
        List<Topic> wanted = topics.stream().map(DrillCommand::topic).toList();
        if (difficulty < RoundMaker.EASIEST || difficulty > RoundMaker.HARDEST) {
            throw wrong("--difficulty", "cannot be " + difficulty + ".", "use 1, 2 or 3.");
        }
        wanted.forEach(t -> rounds.add(maker.made(code(), options.on().orElseGet(today), t, difficulty, number)));
        if (beforeUse) {
            rounds.add(HandsOn.round(options.advisor(code()).base().book(), words, number));
        }
        if (rounds.isEmpty() && !skippedFiles) {
            throw wrong("drill", "has no task.", "name a file or a folder, or add --code gb --topic gas.");
        }
        if (seed == null && !wanted.isEmpty()) {
            spec.commandLine().getErr().println("--seed " + number);
        }
        return rounds;
    }

    /** A file that is wrong is named and left out; the round goes on without it. */
    private void ofFile(RoundMaker maker, Path file, long number, List<Round> into) {
        try {
            into.add(maker.of(file, options::bench, number));
        } catch (InputException e) {
            skippedFiles = true;
            spec.commandLine().getErr().println(e.getMessage());
        }
    }

    private static Topic topic(String key) {
        return Topic.of(key)
                .orElseThrow(() -> wrong("--topic", "cannot be \"" + key + "\".", Nearest.remedy(key, Topic.keys())));
    }

    private String code() {
        return options.code()
                .orElseThrow(() ->
                        wrong("--code", "is not given.", "add --code with one of those that fumewarden codes lists."));
    }

    private static InputException wrong(String option, String message, String maybe) {
        return new InputException(new Problem("the command line", 0, option, message, maybe));
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
        return new OutputFile(option, target, force)
                .sparing(place == null ? new Path[0] : files().toArray(Path[]::new));
    }

    private List<Path> files() {
        if (!Files.isDirectory(place)) {
            return List.of(place);
        }
        try (Stream<Path> found = Files.list(place)) {
            List<Path> files = found.filter(
                            p -> p.toString().endsWith(".yaml") || p.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            if (files.isEmpty()) {
                throw new InputException(
                        new Problem(place.toString(), 0, "", "holds no task files.", "scenarios/drills."));
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
