package org.fumewarden.advice;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Act;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Band;
import org.fumewarden.model.Benchmark;
import org.fumewarden.model.BreathingRate;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.Figures;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.QuantityRange;
import org.fumewarden.model.Row;
import org.fumewarden.model.Threshold;

/** What a row of a table holds, in words for a list of values to compare. */
record RowInWords(Vocabulary vocabulary) {
    /** Its name and what it holds, with a colon between them. */
    String value(Row row) {
        if (row instanceof Limit limit) {
            return level("limit", limit);
        }
        if (row instanceof Benchmark benchmark) {
            return level("benchmark", benchmark.asLimit());
        }
        if (row instanceof AssignedFactor factor) {
            return vocabulary.name(factor.deviceClass()) + ": factor " + Figures.shown(factor.factor());
        }
        if (row instanceof Threshold threshold) {
            return vocabulary.name(threshold.id()) + ": "
                    + threshold.value().stripTrailingZeros().toPlainString()
                    + (threshold.unit().equals("factor") ? "" : " " + threshold.unit());
        }
        if (row instanceof Band band) {
            return vocabulary.name(band.band()) + ": " + Figures.shown(band.value()) + " from above "
                    + Figures.shown(band.over()) + " to " + Figures.shown(band.upTo());
        }
        if (row instanceof DangerLevel danger) {
            return vocabulary.name(danger.agent()) + ": immediately dangerous at " + Figures.shown(danger.value()) + " "
                    + danger.unit().symbol() + danger.basis().after();
        }
        if (row instanceof QuantityRange range) {
            return vocabulary.name(range.of()) + ": " + Figures.shown(range.low()) + " to "
                    + Figures.shown(range.high()) + " " + range.unit();
        }
        if (row instanceof FilterMatch filter) {
            return vocabulary.name(filter.agent()) + ": filter " + filter.type()
                    + filter.highest()
                            .map(h -> ", up to " + Figures.shown(h) + " ppm")
                            .orElse("");
        }
        if (row instanceof Member member) {
            return vocabulary.name(member.item()) + ": listed among " + vocabulary.name(member.set());
        }
        if (row instanceof Emitter emitter) {
            return vocabulary.name(emitter.agent()) + ": in the fume of " + vocabulary.name(emitter.value());
        }
        if (row instanceof BreathingRate rate) {
            return "Breathing peak at the work rate " + vocabulary.name(rate.id()) + ": " + Figures.shown(rate.peak())
                    + " L/min, " + Figures.shown(rate.peakSpeech()) + " L/min while talking";
        }
        if (row instanceof Act act) {
            return "What to do: " + StringUtils.stripEnd(act.says(), ".");
        }
        if (row instanceof ClauseFor clause) {
            return "Clause of the rule " + clause.rule() + ": as this folder has it";
        }
        Optional<Map.Entry<String, String>> named = CodeBook.named(row);
        if (named.isPresent()) {
            return named.get().getValue() + ": a name of this folder";
        }
        return row instanceof Duty duty
                ? duty.what() + ": "
                        + duty.period()
                                .map(p -> "at least every "
                                        + Figures.spans(p.toString()).replaceFirst("^1 ", ""))
                                .orElse(duty.frequency().key())
                : Arrays.stream(row.ref().key().split("/"))
                                .map(vocabulary::name)
                                .collect(Collectors.joining(", ")) + ": "
                        + (row.ref().citation().isOfOrganisation() ? "as this folder has it" : "as the program has it");
    }

    private String level(String kind, Limit limit) {
        String name = vocabulary.name(limit.agent());
        String counted = name.contains(limit.fraction()) ? "" : new CountedAs(limit.fraction()).after();
        return name + ": " + kind + " of " + Figures.shown(limit.value()) + " "
                + limit.unit().symbol() + counted + ", " + limit.averaging().words();
    }
}
