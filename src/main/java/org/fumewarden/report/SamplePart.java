package org.fumewarden.report;

import java.util.List;
import java.util.Locale;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.exposure.Statistic;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.plot.SamplePlot;

/** What the samples say, in the HTML sheet: the required factor by each statistic, and the sample plots. */
final class SamplePart {
    private final Markup out;
    private final Words words;

    SamplePart(Markup out, Words words) {
        this.out = out;
        this.words = words;
    }

    /**
     * One sampled agent.
     *
     * @param rests the statistic that the level rests on, in words
     * @param lines level and required factor by each statistic
     */
    record Sampled(SamplePlot plot, String rests, List<ByStatistic> lines) {}

    /** Writes the section: the table of the governing need when only advice is at hand, one for each agent otherwise. */
    void write(RequiredFactor factor, List<Sampled> samples) {
        if (factor.byStatistic().isEmpty() && samples.isEmpty()) {
            return;
        }
        out.section("samples", words.say("sheet.samples"), () -> {
            if (samples.isEmpty()) {
                table(factor.statistic(), factor.byStatistic());
            }
            samples.forEach(s -> {
                out.words("h3", "", s.plot().title());
                table(s.rests(), s.lines());
                plot(s.plot());
            });
        });
    }

    private void table(String rests, List<ByStatistic> lines) {
        String[] heads = {
            words.say("column.statistic"), words.say("column.level"), words.say("column.needed"),
        };
        out.words("p", "", words.say("sheet.samples.rests", rests));
        out.table(
                "statistics",
                heads,
                () -> lines.forEach(line -> out.element("tr", () -> {
                    out.rowHead(name(line) + (governs(line, rests) ? " \u25C0 " + words.say("sheet.governs") : ""));
                    out.words("td", "number", Page.number(line.level().doubleValue()));
                    out.words("td", "number", line.factor().toPlainString());
                })));
    }

    private String name(ByStatistic line) {
        for (Statistic statistic : Statistic.values()) {
            if (statistic.words().equals(line.statistic())) {
                return words.sayOr(
                        "statistic." + statistic.name().toLowerCase(Locale.ROOT).replace('_', '-'), line.statistic());
            }
        }
        return line.statistic();
    }

    /** The governing statistic stands first in the words of the factor, before the number of samples. */
    private static boolean governs(ByStatistic line, String rests) {
        String highest = Statistic.HIGHEST_SAMPLE.words();
        return rests.startsWith(line.statistic() + ",")
                || line.statistic().equals(highest) && rests.startsWith("highest of ");
    }

    private void plot(SamplePlot plot) {
        out.element("figure", "plot", () -> {
            out.own(plot.svg());
            out.own(words.ofRuleBase() ? "<figcaption>" : "<figcaption lang=\"en\">");
            out.text(plot.title() + ". " + plot.description()).own("</figcaption>\n");
        });
    }
}
