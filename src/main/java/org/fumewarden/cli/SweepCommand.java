package org.fumewarden.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Numbers;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Averaging;
import org.fumewarden.report.WhatIfText;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.plot.LadderChart;
import org.fumewarden.whatif.Sweep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Varies one number and finds where the advice turns. */
@Command(
        name = "sweep",
        mixinStandardHelpOptions = true,
        description =
                "Varies one number of a task, draws which classes are suitable, and finds the values at which the advice turns.",
        footer = {
            "",
            "Example:",
            "  fumewarden sweep scenarios/tours/stainless-brackets.yaml \\",
            "    --vary exposures.manganese-respirable.twa=0.01..5mg/m3"
        })
final class SweepCommand implements Callable<Integer> {
    private static final Pattern RANGE = Pattern.compile("([^=]+)=([0-9.eE+-]+?)\\.\\.([0-9.eE+-]+)\\s*(.*)");

    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON.")
    private Path file;

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "PATH=FROM..TO UNIT",
            description = "The value that varies, from where to where.")
    private String vary;

    @Option(
            names = "--points",
            defaultValue = "60",
            paramLabel = "N",
            description = "Points of the chart, 2 to 10000; ${DEFAULT-VALUE} when not given.")
    private int points;

    @Option(names = "--svg", paramLabel = "FILE", description = "Also writes the chart as SVG.")
    private Path svg;

    @Option(names = "--force", description = "Replaces what is there already under the same name.")
    private boolean force;

    @Mixin
    private TaskOptions options;

    @Mixin
    private LanguageOption language;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (svg != null) {
            chartFile().admit();
        }
        Matcher range = RANGE.matcher(vary);
        if (!range.matches() || points < 2 || points > 10_000) {
            throw new InputException(new Problem(
                    "--vary",
                    0,
                    "",
                    "cannot be read: \"" + vary + "\", " + points + " points.",
                    "give a range, for example --vary exposures.ozone.twa=0.01..5mg/m3, and 2 to 10000 points."));
        }
        BigDecimal from = number(range.group(2));
        BigDecimal to = number(range.group(3));
        if (from.compareTo(to) >= 0) {
            throw new InputException(new Problem(
                    "--vary", 0, "", "runs from " + from + " to " + to + ".", "give the smaller number first."));
        }
        String path = range.group(1);
        String unit = range.group(4);
        Bench plain = options.bench(file);
        Bench bench = language.speaking(plain);
        Speech speech = language.speech(plain);
        WhatIfText text = new WhatIfText(speech);
        Sweep sweep = new Sweep(bench, path, unit);
        List<LadderChart.Point> ladder = sweep.points(from, to, points).stream()
                .map(p -> new LadderChart.Point(
                        p.value(),
                        Sweep.serving(p.advice()).stream().map(text::device).toList()))
                .toList();
        PrintWriter out = spec.commandLine().getOut();
        out.print(options.banner(language.words(), bench.book()));
        Vocabulary vocabulary = bench.book().vocabulary();
        String name = name(path, vocabulary, text);
        out.print(speech.spelt(LadderChart.text(name + ", " + unit + " " + text.say("(# suitable, . not)"), ladder)));
        out.println();
        out.print(text.tippingPoints(name, unit, sweep.tippingPoints(from, to, points), vocabulary::name));
        out.print(text.closing(bench.advise()));
        out.flush();
        if (svg != null) {
            chartFile()
                    .write(LadderChart.svg(language.words().say("ui.chart"), path + " " + unit, ladder, speech::spelt)
                            .getBytes(StandardCharsets.UTF_8));
        }
        return ExitCodes.COMPLETE;
    }

    /** What varies by its name; a place by number keeps its key. */
    private static String name(String path, Vocabulary vocabulary, WhatIfText text) {
        String[] steps = path.split("\\.");
        if (steps.length == 3 && vocabulary.agents().contains(steps[1])) {
            return StringUtils.capitalize(text.told(vocabulary.name(steps[1])))
                    + Arrays.stream(Averaging.values())
                            .filter(a -> a.key().equals(steps[2]))
                            .map(a -> ", " + text.told(a.words()))
                            .collect(Collectors.joining());
        }
        return vocabulary
                .asked(path)
                .map(q -> StringUtils.capitalize(text.told(vocabulary.name(q.id()))))
                .orElse(path);
    }

    private OutputFile chartFile() {
        return new OutputFile("--svg", svg, force).sparing(file);
    }

    private static BigDecimal number(String text) {
        try {
            return Numbers.decimal(text);
        } catch (NumberFormatException e) {
            throw new InputException(new Problem(
                    "--vary", 0, "", "has the number \"" + text + "\".", "write digits and a point, such as 0.05."));
        }
    }
}
