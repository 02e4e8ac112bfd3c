package org.fumewarden.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Words;
import org.fumewarden.training.HandsOn;
import org.fumewarden.training.Round;
import org.fumewarden.training.RoundMaker;
import org.fumewarden.training.Topic;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Options that say which tasks a training asks about: files, tasks to order, the checks before use. */
final class DrillTasks {
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

    @Option(
            names = "--before-use",
            arity = "0..1",
            paramLabel = "DEVICE",
            fallbackValue = "powered-hood",
            description = "Practises the checks before use, with faults thrown in: powered-hood (also when no device is"
                    + " named), powered-mask or airline-hood.")
    private String beforeUse;

    @Mixin
    private TaskOptions options;

    private boolean skippedFiles;

    /** True when a file was wrong and left out. */
    boolean skippedFiles() {
        return skippedFiles;
    }

    /**
     * The rounds that were ordered.
     *
     * @param err where wrong files are named, and the seed when nobody gave one
     */
    List<Round> rounds(Words words, Supplier<LocalDate> today, PrintWriter err) {
        long number = seed != null ? seed : today.get().toEpochDay();
        RoundMaker maker = new RoundMaker(options::advisor, words);
        List<Round> rounds = new ArrayList<>();
        files().forEach(f -> ofFile(maker, f, number, rounds, err));
        List<Topic> wanted = topics.stream().map(DrillTasks::topic).toList();
        if (difficulty < RoundMaker.EASIEST || difficulty > RoundMaker.HARDEST) {
            throw wrong("--difficulty", "cannot be " + difficulty + ".", "use 1, 2 or 3.");
        }
        wanted.forEach(t -> rounds.add(maker.made(code(), options.on().orElseGet(today), t, difficulty, number)));
        if (beforeUse != null) {
            CodeBook book = options.advisor(code()).base().book();
            rounds.add(HandsOn.round(book, options.on().orElseGet(today), beforeUse, words, number));
        }
        if (rounds.isEmpty() && !skippedFiles) {
            throw wrong("drill", "has no task.", "name a file or a folder, or add --code gb --topic gas.");
        }
        if (seed == null && !wanted.isEmpty()) {
            err.println("--seed " + number);
        }
        return rounds;
    }

    /** A file that is wrong is named and left out; the round goes on without it. */
    private void ofFile(RoundMaker maker, Path file, long number, List<Round> into, PrintWriter err) {
        try {
            into.add(maker.of(file, options::bench, number));
        } catch (InputException e) {
            skippedFiles = true;
            err.println(e.getMessage());
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

    private static InputException wrong(String option, String message, String remedy) {
        return new InputException(new Problem("command line:", 0, option, message, remedy));
    }

    /** The task files, in the order of their names; none when none was named. */
    List<Path> files() {
        if (place == null) {
            return List.of();
        }
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
