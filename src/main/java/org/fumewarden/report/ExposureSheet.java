package org.fumewarden.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.assessment.Assessment;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.assessment.RoomEstimate;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.exposure.Appraisal;
import org.fumewarden.exposure.Prior;
import org.fumewarden.exposure.ShiftAdjustment;
import org.fumewarden.model.Account;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.Input;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Reckoning;
import org.fumewarden.model.SampleNote;
import org.fumewarden.model.Unit;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.plot.SamplePlot;
import org.fumewarden.task.Reading;
import org.fumewarden.task.Task;

/** The arithmetic of exposure behind the advice on one task. */
public final class ExposureSheet {
    private static final double USUAL_SHIFT = 480;
    private static final double USUAL_WEEK = 2400;
    private static final double MINUTES = 60;
    private static final String FUME = "welding-fume";

    private final Task task;
    private final Advice advice;
    private final List<Assessment> assessed;
    private final ExposureTables figures;
    private final LimitsUsed limits;
    private final Vocabulary vocabulary;

    public ExposureSheet(
            Task task, Advice advice, List<Assessment> assessed, ExposureTables figures, Vocabulary vocabulary) {
        this.task = task;
        this.advice = advice;
        this.assessed = List.copyOf(assessed);
        this.figures = figures;
        this.limits = new LimitsUsed(advice, figures);
        this.vocabulary = vocabulary;
    }

    /** What the sheet of advice shows of the samples of a task, in its order; none without a limit to draw. */
    static List<SamplePart.Sampled> sampled(Bench bench, Advice advice) {
        Task task = bench.task(bench.code(), Map.of());
        Advisor advisor = bench.advisor(bench.code());
        CodeBook book = advisor.base().book();
        List<Assessment> assessed = advisor.assess(task);
        ExposureSheet sheet =
                new ExposureSheet(task, advice, assessed, new ExposureTables(book.rows(task.on())), book.vocabulary());
        return assessed.stream()
                .flatMap(a -> sheet.samples(a).flatMap(s -> s.sampled(a)).stream())
                .toList();
    }

    /** The sheet as plain text. */
    public String text(boolean screen, Speech speech) {
        Page page = new Page(speech);
        page.title(speech.say("Exposure: {0}", advice.title()));
        page.line(advice.codeUsed().name() + " (" + advice.code() + "), rules in force on " + advice.on());
        if (assessed.isEmpty()) {
            page.paragraph("The file gives no samples, no periods of a shift and no estimate, so there is nothing to"
                    + " calculate. Add samples to an exposure: samples: [0.004 mg/m3, 0.007 mg/m3].");
        }
        assessed.forEach(a -> section(page, a));
        if (screen) {
            screened().forEach(agent -> screening(page, agent));
        }
        WearSection.write(page, advice);
        longShift(page);
        page.line("");
        page.paragraph(Advice.CLOSING);
        return page.text();
    }

    private void screening(Page page, String agent) {
        RoomEstimate.Result estimate = RoomEstimate.of(task, figures, agent);
        ScreeningSection.write(
                page, vocabulary.name(agent), estimate, limits.of(agent, Averaging.TWA, estimate.unit()));
    }

    private void section(Page page, Assessment assessment) {
        Reading reading = assessment.reading();
        if (reading instanceof Reading.RoomModel) {
            screening(page, reading.agent());
            return;
        }
        page.head(title(reading));
        if (reading instanceof Reading.Shift shift) {
            new ShiftSection(shift, limits).write(page, assessment);
        } else {
            samples(assessment).ifPresent(s -> s.write(page, assessment));
        }
        for (Input input : assessment.inputs()) {
            if (input instanceof SampleNote note) {
                page.paragraph("- " + note.sentence());
            }
        }
    }

    private String title(Reading reading) {
        return vocabulary.name(reading.agent()) + ", " + reading.averaging().words();
    }

    private Optional<SampleSection> samples(Assessment assessment) {
        if (!(assessment.reading() instanceof Reading.Samples group)) {
            return Optional.empty();
        }
        OptionalDouble limit = limits.of(assessment, group.unit());
        Optional<Prior> prior = RoomEstimate.prior(group, task, figures);
        return Appraisal.of(
                        group.samples(),
                        new Appraisal.Question(
                                limit.orElse(Double.MAX_VALUE),
                                OptionalDouble.empty(),
                                group.desired(),
                                group.nonDetects(),
                                prior))
                .value()
                .map(appraisal -> new SampleSection(group, appraisal, limit, title(group), prior, test()));
    }

    /** The test of compliance that the code uses on samples. */
    private Optional<String> test() {
        return vocabulary.catalogues().getOrDefault("exposure-tests", Map.of()).values().stream()
                .findFirst();
    }

    /** The sample plots, by the name of agent and averaging time. */
    public Map<String, SamplePlot> plots() {
        Map<String, SamplePlot> plots = new LinkedHashMap<>();
        for (Assessment assessment : assessed) {
            samples(assessment)
                    .flatMap(SampleSection::plot)
                    .ifPresent(p -> plots.put(
                            assessment.reading().agent() + "-"
                                    + assessment.reading().averaging().key(),
                            p));
        }
        return plots;
    }

    /** The fume, when nothing is known of it, and every agent whose 8 h average is open. */
    private Set<String> screened() {
        Set<String> agents = new LinkedHashSet<>();
        if (advice.inputs().stream()
                .noneMatch(i -> i instanceof Exposure x && x.agent().equals(FUME))) {
            agents.add(FUME);
        }
        advice.accounts().stream()
                .map(AccountLine::account)
                .filter(Account::open)
                .map(Account::agent)
                .filter(agent -> figures.all(Limit.class)
                        .anyMatch(l ->
                                l.agent().equals(agent) && l.averaging() == Averaging.TWA && l.unit() == Unit.MG_M3))
                .forEach(agents::add);
        assessed.stream()
                .filter(a -> a.reading() instanceof Reading.RoomModel)
                .forEach(a -> agents.remove(a.reading().agent()));
        return agents;
    }

    private void longShift(Page page) {
        double shift = WearSection.amount(advice, "shift").orElse(0);
        OptionalDouble week = WearSection.amount(advice, "week");
        if (shift <= USUAL_SHIFT && week.orElse(0) <= USUAL_WEEK) {
            return;
        }
        page.head(longer(shift, week));
        page.paragraph("Limits are set for 8 hours a day and 40 a week. These adjustments are advisory unless the code"
                + " orders one; they never raise a limit. The advice used the limits shown with it.");
        List<String> done = new ArrayList<>();
        figures.all(Limit.class)
                .filter(l -> l.averaging() == Averaging.TWA && exposed(l.agent()))
                .forEach(l -> {
                    String line = adjusted(l, Math.max(shift, USUAL_SHIFT) / MINUTES, week);
                    if (!done.contains(line)) {
                        done.add(line);
                        page.paragraph(line);
                    }
                });
    }

    private static String longer(double shift, OptionalDouble week) {
        String weeks = week.isPresent() ? Page.number(week.getAsDouble() / MINUTES) + " h a week" : "";
        return shift > USUAL_SHIFT
                ? "A shift of " + Page.number(shift / MINUTES) + " h" + (weeks.isEmpty() ? "" : ", " + weeks)
                : "Work of " + weeks;
    }

    private boolean exposed(String agent) {
        return advice.inputs().stream()
                .anyMatch(i -> i instanceof Exposure x && x.agent().equals(agent) && x.averaging() == Averaging.TWA);
    }

    private String adjusted(Limit limit, double hours, OptionalDouble week) {
        double plain = limit.value().doubleValue();
        Reckoning<Double> dose = ShiftAdjustment.equalDose(plain, hours);
        Reckoning<Double> daily = ShiftAdjustment.daily(hours).map(f -> plain * f);
        Reckoning<Double> stricter = ShiftAdjustment.stricter(hours, week.orElse(USUAL_WEEK) / MINUTES)
                .map(f -> plain * f);
        String unit = " " + limit.unit().symbol();
        return "- " + vocabulary.name(limit.agent()) + ": limit " + Page.number(plain) + unit
                + "; for the same daily dose "
                + dose.value().map(v -> Page.atMost(v) + unit).orElse(dose.sentence()) + "; with time to recover "
                + daily.value().map(v -> Page.atMost(v) + unit).orElse(daily.sentence())
                + (week.isEmpty()
                        ? ""
                        : "; with the week counted too "
                                + stricter.value()
                                        .map(v -> Page.atMost(v) + unit)
                                        .orElse(stricter.sentence()));
    }
}
