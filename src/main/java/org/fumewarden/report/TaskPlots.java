package org.fumewarden.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.model.Demand;
import org.fumewarden.model.Row;
import org.fumewarden.shift.ShiftReckoner;
import org.fumewarden.shift.ShiftSheet;
import org.fumewarden.shift.ShiftTables;
import org.fumewarden.task.Task;

/** Every plot that a task has the data for: its samples, and the unit in use over the shift. */
public final class TaskPlots {
    private TaskPlots() {}

    /**
     * One plot.
     *
     * @param id unique among the plots of the task
     * @param title what is drawn; empty when the drawing says it itself
     * @param rests the statistic that the level rests on; empty when there are no samples
     * @param lines level and required factor by each statistic of the samples
     * @param svg with a title and a description inside
     * @param words the drawing in words; empty when only the drawing has them
     */
    public record Drawn(String id, String title, String rests, List<ByStatistic> lines, String svg, String words) {
        public Drawn {
            lines = List.copyOf(lines);
        }
    }

    /** The plots of a task; the unit in use is reckoned only when the task describes it. */
    public static List<Drawn> of(Bench bench) {
        Advice advice = bench.advise();
        List<Drawn> drawn = new ArrayList<>();
        for (SamplePart.Sampled sampled : ExposureSheet.sampled(bench, advice)) {
            drawn.add(new Drawn(
                    "samples-" + drawn.size(),
                    sampled.plot().title(),
                    sampled.rests(),
                    sampled.lines(),
                    sampled.plot().svg(),
                    sampled.plot().description()));
        }
        if (bench.tree(Map.of()).entries().containsKey("kit")) {
            shift(bench, advice).forEach((id, svg) -> drawn.add(new Drawn(id, "", "", List.of(), svg, "")));
        }
        return List.copyOf(drawn);
    }

    private static Map<String, String> shift(Bench bench, Advice advice) {
        return ShiftPlots.svg(sheet(bench, advice));
    }

    /** The shift with the unit in use, as the advice on its task has the gases. */
    public static ShiftSheet sheet(Bench bench, Advice advice) {
        Advisor advisor = bench.advisor(bench.code());
        Task task = bench.task(bench.code(), Map.of());
        Set<String> demanded = advice.trail().all(Demand.class).stream()
                .filter(demand -> demand.form().equals("gas"))
                .map(Demand::agent)
                .collect(Collectors.toSet());
        List<Row> rows = advisor.base().rowsOn(task.on());
        return new ShiftReckoner(task, rows, ShiftTables.of(rows), demanded).reckon();
    }
}
