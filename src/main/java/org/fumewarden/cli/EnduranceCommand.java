package org.fumewarden.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.ShiftPlots;
import org.fumewarden.report.ShiftText;
import org.fumewarden.report.TaskPlots;
import org.fumewarden.report.html.Words;
import org.fumewarden.shift.ShiftSheet;
import org.fumewarden.task.Task;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reckons whether filters, air flow and battery of the unit in use last the shift. */
@Command(
        name = "endurance",
        mixinStandardHelpOptions = true,
        description =
                "Calculates one shift with the unit in use: when each gas filter is changed and on what basis, the"
                        + " dust on the filters, the air flow against the breath, and whether the battery lasts.",
        footer = {"", "Example:", "  fumewarden endurance scenarios/tours/shift-that-lasts.yaml --svg plots"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:the shift lasts and the advice is complete",
            "1:a fault of the program",
            "2:wrong input; the message says where",
            "3:the shift does not last, something was refused, or the advice is not settled"
        })
final class EnduranceCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON, with the unit in use under kit.")
    private Path file;

    @Option(names = "--svg", paramLabel = "FOLDER", description = "Writes the plots there.")
    private Path folder;

    @Option(names = "--force", description = "Replaces what is there already under the same name.")
    private boolean force;

    @Mixin
    private RegisterOption register;

    @Mixin
    private TaskOptions options;

    @Mixin
    private LanguageOption language;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Words words = language.words();
        Bench bench = register.with(options.bench(file), spec.commandLine().getErr());
        Advisor advisor = bench.advisor(bench.code());
        Task task = bench.task(bench.code(), Map.of());
        Advice advice = advisor.advise(task);
        ShiftSheet sheet = TaskPlots.sheet(bench, advice);
        spec.commandLine().getOut().print(options.banner(words, advisor.base().book()));
        spec.commandLine()
                .getOut()
                .print(ShiftText.write(
                        sheet,
                        words.ofRuleBase() ? advice : language.speaking(bench).advise(),
                        language.speech(bench),
                        advisor.base().book().vocabulary()));
        spec.commandLine().getOut().flush();
        if (folder != null) {
            draw(sheet);
        }
        boolean usable = advice.unit().filter(UnitInHand::barred).isEmpty();
        return sheet.settled() && usable && !register.damaged() && advice.status() == Status.COMPLETE
                ? ExitCodes.COMPLETE
                : ExitCodes.NOT_SETTLED;
    }

    private void draw(ShiftSheet sheet) {
        Map<String, String> plots = ShiftPlots.svg(sheet);
        if (plots.isEmpty()) {
            spec.commandLine().getErr().println("No plot: neither an own curve nor a modelled breakthrough is there.");
        }
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> plot : plots.entrySet()) {
                Path written = folder.resolve(plot.getKey());
                new OutputFile("--svg", written, force)
                        .sparing(file)
                        .write(plot.getValue().getBytes(StandardCharsets.UTF_8));
                spec.commandLine().getErr().println("Wrote " + written);
            }
        } catch (IOException e) {
            throw new InputException(new Problem(
                    folder.toString(),
                    0,
                    "--svg",
                    "cannot be written to (" + e.getMessage() + ").",
                    "another folder."));
        }
    }
}
