package org.fumewarden.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.DrillText;
import org.fumewarden.task.TaskTree;
import org.fumewarden.whatif.Bench;
import org.fumewarden.whatif.Drill;
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
            "A training round: shows tasks, asks for factor, class, filter and two checks, marks and explains.",
            "Answers are read from standard input, one a line; nothing is kept unless --score names a file."
        },
        footer = {"", "Example:", "  fumewarden drill scenarios/drills"})
final class DrillCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FILE|FOLDER",
            description = "A task file, or a folder of them, taken in the order of their names.")
    private Path place;

    @Option(
            names = "--score",
            paramLabel = "FILE",
            description = "Writes the score sheet as CSV; it holds no name unless --trainee gives one.")
    private Path score;

    @Option(names = "--trainee", paramLabel = "NAME", description = "Name on the score sheet.")
    private String trainee = "";

    @Option(names = "--force", description = "Replaces what is there already under the same name.")
    private boolean force;

    @Mixin
    private TaskOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (score != null) {
            scoreFile().admit();
        }
        PrintWriter out = spec.commandLine().getOut();
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        List<DrillText.Scored> sheet = new ArrayList<>();
        for (Path file : files()) {
            Bench bench = options.bench(file);
            Advice advice = bench.advise();
            String story = TaskTree.top(TaskTree.read(file), "because").orElse("");
            out.print(DrillText.task(
                    advice, story, bench.advisor(bench.code()).base().book().vocabulary()));
            Drill drill = new Drill(advice);
            List<String> answers = new ArrayList<>();
            for (Drill.Part part : Drill.Part.values()) {
                out.print(part.ask() + ": ");
                out.flush();
                answers.add(line(in));
            }
            out.println();
            List<Drill.Mark> marks = drill.mark(answers);
            out.print(DrillText.marks(marks));
            marks.forEach(m -> sheet.add(new DrillText.Scored(advice.title(), m)));
        }
        out.print(DrillText.total(sheet));
        out.println(Advice.CLOSING);
        out.flush();
        if (score != null) {
            scoreFile().write(DrillText.csv(trainee, sheet).getBytes(StandardCharsets.UTF_8));
        }
        return ExitCodes.COMPLETE;
    }

    private static String line(BufferedReader in) {
        try {
            String line = in.readLine();
            return line == null ? "" : line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    private OutputFile scoreFile() {
        return new OutputFile("--score", score, force).sparing(files().toArray(Path[]::new));
    }
}
