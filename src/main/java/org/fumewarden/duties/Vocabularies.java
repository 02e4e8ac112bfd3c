package org.fumewarden.duties;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Figure;
import org.fumewarden.model.Member;

/** The facts on which duties hang, and the values they may have. */
public final class Vocabularies {
    private static final String TABLE = "shared/tables/duty-facts.yaml";
    private static final String CIRCUMSTANCES = "shared/tables/circumstances.yaml";
    private static final String PREFIX = "duty-";
    private static final String AGENTS = "duty-agent-";
    /** A class of agents: whoever writes an agent means that agent. */
    private static final String SENSITISERS = "duty-agent-asthmagen";

    private static final Set<String> FLAG = Set.of("true", "false");
    private static final Map<String, String> SAID = Map.of("yes", "true", "no", "false");

    private final Map<String, List<String>> facts;
    /** The agents of task files with the word of the duties for each. */
    private final Map<String, String> agents;

    private Vocabularies(Map<String, List<String>> facts, Map<String, String> agents) {
        this.facts = facts;
        this.agents = agents;
    }

    /** The vocabulary of the shipped rules on a day; it is shared by all codes. */
    public static Vocabularies shipped(LocalDate day) {
        return of(RuleFolder.shipped(), day);
    }

    /** The same of other rules. */
    public static Vocabularies of(RuleFolder folder, LocalDate day) {
        Map<String, List<String>> facts = new TreeMap<>();
        CodeBook.table(folder, TABLE).rows().stream()
                .filter(row -> row.inForce(day))
                .map(row -> ((Figure) row.row()).cells())
                .forEach(cells -> facts.computeIfAbsent(
                                cells.get("set").substring(PREFIX.length()), k -> new ArrayList<>())
                        .add(cells.get("item")));
        Map<String, String> agents = new TreeMap<>();
        CodeBook.table(folder, CIRCUMSTANCES).rows().stream()
                .filter(row -> row.inForce(day))
                .map(row -> ((Member) row.row()))
                .filter(m -> m.set().startsWith(AGENTS) && !m.set().equals(SENSITISERS))
                .forEach(m -> agents.put(m.item(), m.set().substring(AGENTS.length())));
        return new Vocabularies(facts, agents);
    }

    public Map<String, List<String>> facts() {
        return facts;
    }

    /** The facts among the values, checked; they are taken out of the map. */
    public Map<String, List<String>> take(String place, Map<String, String> values) {
        Map<String, List<String>> taken = new LinkedHashMap<>();
        for (String fact : facts.keySet()) {
            String value = values.remove(fact);
            if (value != null && !value.isBlank()) {
                taken.put(
                        fact,
                        Arrays.stream(value.split(","))
                                .map(String::strip)
                                .map(w -> meant(fact, w))
                                .distinct()
                                .toList());
            }
        }
        taken.forEach((fact, words) -> words.forEach(word -> check(place, fact, word)));
        return taken;
    }

    /** The value of a fact as the tables write it: people say yes and no, and name agents as task files do. */
    private String meant(String fact, String word) {
        if (fact.equals("agent")) {
            return agents.getOrDefault(word, word);
        }
        return FLAG.equals(Set.copyOf(facts.get(fact))) ? SAID.getOrDefault(word.toLowerCase(Locale.ROOT), word) : word;
    }

    /** Two agents may look alike and be two agents: only a slip of the pen is guessed at. */
    private String remedy(String fact, String word) {
        List<String> known = facts.get(fact);
        if (FLAG.equals(Set.copyOf(known))) {
            return "write yes or no.";
        }
        return fact.equals("agent")
                ? Nearest.slip(word, known)
                        .orElseGet(() -> "write one of: " + String.join(", ", known)
                                + ", or an agent of task files such as " + String.join(", ", agents.keySet()) + ".")
                : Nearest.remedy(word, known);
    }

    private void check(String place, String fact, String word) {
        if (!word.equals("unknown") && !facts.get(fact).contains(word)) {
            throw new InputException(new Problem(
                    place, 0, fact, "cannot be \"" + Located.shown(word) + "\".", remedy(fact, word), Fault.CHOICE));
        }
    }
}
