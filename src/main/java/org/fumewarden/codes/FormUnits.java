package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.model.Agent;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Limit;
import org.fumewarden.model.PublishedExposure;
import org.fumewarden.model.PublishedHigh;
import org.fumewarden.model.Row;
import org.fumewarden.model.Unit;

/** Finds levels of a dust or fume in parts per million: they are a fault of the table, not of the task that is held against them. */
final class FormUnits {
    private FormUnits() {}

    static List<Problem> wrong(List<TableFile> tables) {
        Set<String> particles = tables.stream()
                .flatMap(table -> table.rows().stream())
                .map(DatedRow::row)
                .filter(row -> row instanceof Agent agent
                        && agent.form().equals("particle")
                        && agent.molarMass().isEmpty())
                .map(row -> ((Agent) row).id())
                .collect(Collectors.toSet());
        List<Problem> problems = new ArrayList<>();
        for (TableFile table : tables) {
            for (DatedRow dated : table.rows()) {
                String agent = inParts(dated.row());
                if (particles.contains(agent)) {
                    problems.add(new Problem(
                            table.file(),
                            dated.line(),
                            "unit",
                            "is ppm, but " + agent + " is a dust or fume.",
                            "write mg/m3 and the number in that unit."));
                }
            }
        }
        return problems;
    }

    /** The agent of a level in parts per million; empty for any other row. */
    private static String inParts(Row row) {
        if (row instanceof Limit limit && limit.unit() == Unit.PPM) {
            return limit.agent();
        }
        if (row instanceof Benchmark benchmark && benchmark.unit() == Unit.PPM) {
            return benchmark.agent();
        }
        if (row instanceof DangerLevel danger && danger.unit() == Unit.PPM) {
            return danger.agent();
        }
        if (row instanceof PublishedExposure published && published.unit() == Unit.PPM) {
            return published.agent();
        }
        return row instanceof PublishedHigh high && high.unit() == Unit.PPM ? high.agent() : "";
    }
}
