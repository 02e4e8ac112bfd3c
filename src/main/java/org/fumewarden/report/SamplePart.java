package org.fumewarden.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.model.Figures;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.plot.SamplePlot;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/** What the samples say: the required factor by each statistic, and the sample plots. */
public final class SamplePart {
    private final Speech speech;
    private final Words words;
    private final List<Line> lines = new ArrayList<>();

    private SamplePart(Speech speech) {
        this.speech = speech;
        this.words = speech.words();
    }

    /**
     * One sampled agent.
     *
     * @param rests the statistic that the level rests on, in words
     * @param lines level and required factor by each statistic
     */
    record Sampled(SamplePlot plot, String rests, List<ByStatistic> lines) {}

    /** The lines about each sampled agent of a task; none without samples. */
    public static List<Line> of(Bench bench, Advice advice, Speech speech) {
        SamplePart part = new SamplePart(speech);
        ExposureSheet.sampled(bench, advice).forEach(part::agent);
        return part.lines;
    }

    private void agent(Sampled sampled) {
        lines.add(new Line.Head(speech.told(sampled.plot().title())));
        lines.add(new Line.Says(Sign.NONE, words.say("sheet.samples.rests", inWords(words, sampled.rests()))));
        lines.add(new Line.Table(
                List.of(words.say("column.statistic"), words.say("column.level"), words.say("column.needed")),
                sampled.lines().stream().map(l -> row(l, sampled.rests())).toList(),
                List.of(1, 2)));
        lines.add(new Line.Drawing(
                sampled.plot().svg(), speech.told(sampled.plot().description()), ""));
    }

    private List<String> row(ByStatistic line, String rests) {
        return List.of(
                name(words, line) + (governs(line, rests) ? " (" + words.say("sheet.governs") + ")" : ""),
                Page.number(line.level().doubleValue()),
                Figures.factor(line.factor()));
    }

    /** The name of a statistic in the language of some words. */
    public static String name(Words words, ByStatistic line) {
        for (Statistic statistic : Statistic.values()) {
            if (statistic.words().equals(line.statistic())) {
                return named(words, statistic);
            }
        }
        return line.statistic();
    }

    /** The governing statistic stands first in the words of the factor, before the number of samples. */
    public static boolean governs(ByStatistic line, String rests) {
        String highest = Statistic.HIGHEST_SAMPLE.words();
        return rests.startsWith(line.statistic() + ",")
                || line.statistic().equals(highest) && rests.startsWith("highest of ");
    }

    private static String named(Words words, Statistic statistic) {
        String key = "statistic." + statistic.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return words.sayOr(key, statistic.words());
    }

    /** A statistic with its count of samples, in the language of some words. */
    public static String inWords(Words words, String rests) {
        for (Statistic statistic : Statistic.values()) {
            String count = statistic.words() + ", ";
            if (rests.startsWith(count)) {
                String samples = rests.substring(count.length()).replaceFirst(" samples?$", "");
                return words.say("sheet.samples.count", named(words, statistic), samples);
            }
        }
        return rests;
    }
}
