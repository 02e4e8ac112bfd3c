package org.fumewarden.codes;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fumewarden.model.Agent;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Row;
import org.fumewarden.model.Term;

/** Gathers the words that the tables of a code hold. */
final class BookWords {
    private BookWords() {}

    static Vocabulary of(List<TableFile> tables, Aliases aliases) {
        List<Question> questions =
                tables.stream().flatMap(t -> t.questions().stream()).toList();
        Map<String, Map<String, String>> catalogues = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        questions.forEach(q -> q.choices().forEach((id, name) -> names.put(q.id() + '.' + id, name)));
        for (TableFile table : tables) {
            for (DatedRow dated : table.rows()) {
                name(dated.row()).ifPresent(name -> names.put(name.getKey(), name.getValue()));
                if (dated.row() instanceof Term term) {
                    put(catalogues, term.catalogue(), term.id(), term.name());
                }
                if (dated.row() instanceof Agent agent) {
                    put(catalogues, "agents", agent.id(), agent.name());
                    if (agent.form().equals("particle")) {
                        put(catalogues, Vocabulary.PARTICLES, agent.id(), agent.name());
                    }
                }
                if (dated.row() instanceof DeviceClass device) {
                    put(catalogues, "equipment", device.id(), device.name());
                }
            }
        }
        return new Vocabulary(questions, catalogues, names, aliases);
    }

    /** The rows of ids that are named otherwise on other days. */
    static List<DatedRow> renamed(List<DatedRow> rows) {
        return rows.stream()
                .filter(r -> r.from().isAfter(LocalDate.EPOCH) || r.until().isBefore(CodeSummary.NEVER))
                .filter(r -> name(r.row()).isPresent())
                .collect(Collectors.groupingBy(r -> r.row().ref().address()))
                .values()
                .stream()
                .filter(same -> same.stream().map(r -> name(r.row())).distinct().count() > 1)
                .flatMap(List::stream)
                .toList();
    }

    private static void put(Map<String, Map<String, String>> catalogues, String catalogue, String id, String name) {
        catalogues.computeIfAbsent(catalogue, k -> new LinkedHashMap<>()).put(id, name);
    }

    static Optional<Map.Entry<String, String>> name(Row row) {
        return row instanceof Agent agent
                ? Optional.of(Map.entry(agent.id(), agent.name()))
                : row instanceof DeviceClass device
                        ? Optional.of(Map.entry(device.id(), device.name()))
                        : row instanceof Term term ? Optional.of(Map.entry(term.id(), term.name())) : Optional.empty();
    }
}
