package org.fumewarden.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.exposure.NumericsSelfCheck;
import org.fumewarden.report.ExposureSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.plot.SamplePlot;
import org.fumewarden.task.Task;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows the arithmetic of exposure behind the advice. */
@Command(
        name = "exposure",
        mixinStandardHelpOptions = true,
        description = {
            "Calculates the exposure of a task from samples, periods of a shift or published figures.",
            "It shows every statistic by name, the test of compliance that the code uses, the fit, the share above the limit, and a plot."
        },
        footer = {
            "",
            "Examples:",
            "  fumewarden exposure scenarios/tours/stainless-brackets.yaml --svg plots",
            "  fumewarden exposure --numerics"
        },
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:every exposure was calculated",
            "1:a fault of the program, or an error of the numerics above what is promised",
            "2:wrong input; the message says where",
            "3:at least one level is still open"
        })
final class ExposureCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "0..1", description = "Task file, YAML or JSON.")
    private Path file;

    @Option(names = "--svg", paramLabel = "FOLDER", description = "Also writes each sample plot there as SVG.")
    private Path folder;

    @Option(
            names = "--screen",
            description = "Estimates what was not measured from published exposures, room and extraction; for screening"
                    + " only.")
    private boolean screen;

    @Option(
            names = "--numerics",
            description = "Measures the error of our own numerics against stored reference values.")
    private boolean numerics;

    @Option(names = "--force", description = "Replaces what is there already under the same name.")
    private boolean force;

    @Mixin
    private LanguageOption language;

    @Mixin
    private TaskOptions options;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (file == null && !numerics) {
            throw new InputException(
                    new Problem("exposure", 0, "", "was given no task file.", "name one, or ask for --numerics."));
        }
        int exit = ExitCodes.COMPLETE;
        if (file != null) {
            exit = sheet();
        }
        if (numerics) {
            spec.commandLine().getOut().print(NumericsSelfCheck.text());
            boolean kept = NumericsSelfCheck.measure().stream().allMatch(NumericsSelfCheck.Line::kept);
            exit = kept ? exit : ExitCodes.FAULT;
        }
        spec.commandLine().getOut().flush();
        return exit;
    }

    private int sheet() {
        Words words = language.words();
        Bench bench = options.bench(file);
        Advisor advisor = bench.advisor(bench.code());
        CodeBook book = advisor.base().book();
        Task task = bench.task(bench.code(), Map.of());
        Advice advice = advisor.advise(task);
        List<Assessment> assessed = advisor.assess(task);
        ExposureSheet sheet = new ExposureSheet(
                task, advice, assessed, new ExposureTables(advisor.base().rowsOn(task.on())), book.vocabulary());
        spec.commandLine().getOut().print(options.banner(words, book));
        spec.commandLine().getOut().print(sheet.text(screen, language.speech(bench)));
        if (folder != null) {
            save(sheet.plots());
        }
        boolean open = assessed.stream().anyMatch(a -> a.exposure().isEmpty());
        return open ? ExitCodes.NOT_SETTLED : ExitCodes.COMPLETE;
    }

    private void save(Map<String, SamplePlot> plots) {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, SamplePlot> plot : plots.entrySet()) {
                Path target = folder.resolve("exposure-" + plot.getKey() + ".svg");
                new OutputFile("--svg", target, force)
                        .sparing(file)
                        .write(plot.getValue().svg().getBytes(StandardCharsets.UTF_8));
                spec.commandLine().getErr().println("Wrote " + target);
            }
        } catch (IOException e) {
            throw new InputException(new Problem(
                    folder.toString(), 0, "", "cannot be written to.", "name a folder that may be written."));
        }
    }
}
