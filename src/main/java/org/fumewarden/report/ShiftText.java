package org.fumewarden.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.endurance.ChangeTime;
import org.fumewarden.endurance.FilterCadence;
import org.fumewarden.endurance.ShadeAdvice;
import org.fumewarden.endurance.ShiftPlan;
import org.fumewarden.endurance.TimeBound;
import org.fumewarden.model.Reckoned;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.Refused;
import org.fumewarden.report.html.Glued;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.plot.BreakthroughPlot;
import org.fumewarden.report.plot.EndurancePlot;
import org.fumewarden.shift.GasLife;
import org.fumewarden.shift.ShiftSheet;

/** The shift with the unit in use as plain text, whether it lasts first. */
public final class ShiftText {
    private static final int WIDTH = 88;
    private static final Pattern KEY = Pattern.compile("\\b(?:task|kit|atmosphere|wearer)\\.[a-z][a-z-]*[a-z]");

    private final StringBuilder out = new StringBuilder();

    private final Speech speech;

    private final Vocabulary vocabulary;

    private ShiftText(Speech speech, Vocabulary vocabulary) {
        this.speech = speech;
        this.vocabulary = vocabulary;
    }

    /**
     * Writes the sheet.
     *
     * @param advice on the same task, whose verdict stands above everything here
     * @param vocabulary names of the places of a task file
     */
    public static String write(ShiftSheet sheet, Advice advice, Speech speech, Vocabulary vocabulary) {
        ShiftText text = new ShiftText(speech, vocabulary);
        text.line(advice.title());
        text.line(StringUtils.repeat('=', Math.min(WIDTH, advice.title().length())));
        if (advice.unit().filter(UnitInHand::barred).isPresent()) {
            text.advice(advice);
            text.line("");
            text.plan(sheet);
        } else {
            text.plan(sheet);
            text.advice(advice);
        }
        text.section("Air flow", words(sheet.air(), verdict -> verdict.says()));
        sheet.gases().forEach(text::gas);
        text.section("Dust on the filters", dust(sheet));
        text.section("Run time of the fitted pack", words(sheet.run(), run -> run.words()));
        text.section("Eyes", List.of(eyes(sheet.eyes())));
        text.section("Calculated on the safe side", sheet.remarks());
        text.plots(sheet);
        text.line("");
        text.wrap("", Advice.CLOSING);
        return text.out.toString();
    }

    private void plan(ShiftSheet sheet) {
        if (sheet.plan() instanceof Refused<ShiftPlan> refused) {
            wrap("", "NO PLAN FOR THE SHIFT: " + refused.sentence());
            return;
        }
        long preFilters =
                sheet.cadence().value().map(FilterCadence::preFiltersPerShift).orElse(0L);
        sheet.plan().value().orElseThrow().words(preFilters).forEach(words -> wrap("", words));
    }

    private void advice(Advice advice) {
        List<String> lines = new ArrayList<>();
        if (advice.status() != Status.COMPLETE) {
            lines.add("The advice on this task is "
                    + advice.status().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
                    + ": nothing here clears anyone to start. Settle it first with fumewarden advise.");
        }
        advice.unit().filter(UnitInHand::barred).ifPresent(unit -> {
            lines.add((unit.id().isEmpty() ? "This unit" : "Unit " + unit.id()) + ": do not use it"
                    + (advice.lacksOnlyCharge() ? " without more charged spare packs." : "."));
            unit.reasons().forEach(r -> lines.add(r.says()));
            if (!unit.heals().isEmpty()) {
                lines.add("Remedy: " + String.join(" ", unit.heals()));
            }
        });
        for (Respirator best : advice.with(Suitability.RECOMMENDED)) {
            lines.add(
                    "Recommended for this task: " + best.name() + ". If this is a different unit, follow the advice.");
        }
        section("Advice on this task", lines);
    }

    private void gas(GasLife gas) {
        List<String> lines = new ArrayList<>();
        Reckoning<ChangeTime> time = gas.time();
        if (time instanceof Refused<ChangeTime> refused) {
            lines.add(
                    refused.sentence().startsWith("The change time ")
                            ? refused.sentence()
                            : "No change time: " + refused.sentence());
        }
        time.value().ifPresent(found -> {
            lines.add(found.basisSentence());
            for (TimeBound other : found.others()) {
                lines.add(other.besideShorter());
            }
            found.declined().forEach(refused -> lines.add("Not used: " + refused.sentence()));
        });
        lines.addAll(gas.remarks());
        section("Gas filter for " + gas.name() + (gas.filter().isEmpty() ? "" : ", " + gas.filter()), lines);
    }

    private static List<String> dust(ShiftSheet sheet) {
        List<String> lines = new ArrayList<>(words(
                sheet.dust(),
                milligrams -> "Over the shift " + Math.round(milligrams)
                        + " mg of dust collect on the filter set, calculated from the flow of the blower."));
        lines.addAll(words(sheet.cadence(), FilterCadence::says));
        return lines.stream().distinct().toList();
    }

    private static String eyes(ShadeAdvice advice) {
        return advice instanceof ShadeAdvice.Shade shade ? shade.says() : ((ShadeAdvice.SeeStandard) advice).says();
    }

    private void plots(ShiftSheet sheet) {
        if (!sheet.curves().isEmpty() && sheet.wearHours().isPresent()) {
            line("");
            out.append(told(EndurancePlot.text(sheet.curves(), sheet.wearHours().getAsDouble())));
        }
        for (GasLife gas : sheet.gases()) {
            breakthrough(gas).ifPresent(minutes -> {
                line("");
                out.append(told(BreakthroughPlot.text(
                        gas.name(), gas.curve(), minutes, gas.allowedShare().orElseThrow())));
            });
        }
    }

    /** A drawing in characters, line by line. */
    private String told(String drawing) {
        return drawing.lines().map(line -> speech.told(line) + "\n").collect(Collectors.joining());
    }

    /** Change minutes of a gas whose breakthrough can be drawn. */
    static Optional<Double> breakthrough(GasLife gas) {
        return gas.curve().isEmpty() || gas.allowedShare().isEmpty()
                ? Optional.empty()
                : gas.time().value().map(time -> (double) time.minutes());
    }

    private static <T> List<String> words(Reckoning<T> reckoning, java.util.function.Function<T, String> say) {
        List<String> lines = new ArrayList<>();
        if (reckoning instanceof Refused<T> refused) {
            lines.add(refused.sentence());
        }
        if (reckoning instanceof Reckoned<T> reckoned) {
            lines.add(say.apply(reckoned.result()));
            lines.addAll(reckoned.remarks());
        }
        return lines;
    }

    private void section(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        line("");
        line(speech.told(heading));
        lines.forEach(each -> wrap("- ", each));
    }

    private void wrap(String start, String words) {
        String indent = StringUtils.repeat(' ', start.length());
        line(start + Glued.wrapped(named(speech.told(words)), WIDTH - start.length(), "\n" + indent));
    }

    /** A place of a task file by its name, with the key behind it. */
    private String named(String said) {
        return KEY.matcher(said)
                .replaceAll(key -> Matcher.quoteReplacement(vocabulary
                        .asked(key.group())
                        .map(q -> speech.named("untold." + q.id(), vocabulary.name(q.id())) + " (" + key.group() + ")")
                        .orElse(key.group())));
    }

    private void line(String words) {
        out.append(words).append('\n');
    }
}
