package org.fumewarden.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Input;
import org.fumewarden.model.Row;
import org.fumewarden.trail.Premise;

/** Puts the firings of one decision into words. */
final class DraftWriter {
    private final Sentences sentences;
    private final RowsInForce rows;

    /** Inputs and conclusions already in words: many rules rest on the same few. */
    private final Map<Fact, Premise> inputs = new IdentityHashMap<>();

    private final Map<Conclusion, String> conclusions = new HashMap<>();

    DraftWriter(Sentences sentences, RowsInForce rows) {
        this.sentences = sentences;
        this.rows = rows;
    }

    /** One draft for each firing. */
    List<Draft> drafts(Collection<Firing> firings) {
        return firings.stream().map(this::draft).toList();
    }

    private Draft draft(Firing firing) {
        RuleCard card = firing.rule().card();
        List<Premise> given = new ArrayList<>();
        Map<Conclusion, String> concluded = new LinkedHashMap<>();
        for (Fact fact : firing.premises()) {
            if (fact instanceof Conclusion conclusion) {
                concluded.put(conclusion, conclusions.computeIfAbsent(conclusion, sentences::describe));
            } else if (fact instanceof Row row) {
                given.add(rows.premise(row, sentences));
            } else {
                given.add(inputs.computeIfAbsent(fact, f -> premise((Input) f)));
            }
        }
        return new Draft(
                card,
                sentences.fill(firing.rule().sentence(), firing.conclusion(), firing.bindings()),
                rows.clause(card.id()).orElse(card.citation()),
                firing.conclusion(),
                Part.spelled(firing.conclusion()),
                List.copyOf(given),
                concluded);
    }

    private Premise premise(Input input) {
        return new Premise("input", input.path(), sentences.describe(input), Optional.empty());
    }
}
