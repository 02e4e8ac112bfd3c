package org.fumewarden.training;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Reason;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;

/** Where a sentence stands, for a room under one code: its own clause where there is one, and a foreign document by the name of its country. */
final class ClauseCitations {
    private final String code;
    private final Words words;
    private final Speech speech;

    ClauseCitations(String code, Words words) {
        this.code = code;
        this.words = words;
        this.speech = Speech.of(words, Map.of());
    }

    /**
     * The place as a room hears it.
     *
     * @param cited key of a document and a clause behind it; several clauses are parted by a semicolon
     */
    String of(String cited) {
        if (cited.isEmpty()) {
            return "";
        }
        String source = cited.split(" ")[0];
        String clause = cited.substring(source.length()).strip();
        if (source.equals("practice")) {
            return words.say("ui.training.clause.practice");
        }
        List<String> own = Arrays.stream(clause.split("; "))
                .filter(c -> country("clauses", c).equals(code))
                .toList();
        String country = country("sources", source);
        if (foreign(country) && !own.isEmpty()) {
            return speech.cited(String.join("; ", own));
        }
        String kept = Arrays.stream(clause.split("; "))
                .filter(c -> Set.of("", country.isEmpty() ? code : country).contains(country("clauses", c)))
                .collect(Collectors.joining("; "));
        String place = named(source, speech.cited(kept));
        return foreign(country) ? words.say("ui.training.clause.foreign." + country, place) : place;
    }

    /** A clause that names its document needs no key of it before it. */
    private static String named(String source, String clause) {
        boolean names = !country("clauses", clause).isEmpty();
        return !names ? (source + " " + clause).strip() : clause.startsWith("19") ? "29 CFR " + clause : clause;
    }

    /** True when nothing of the place is of this code or of no country. */
    boolean foreign(Reason reason) {
        return foreign(country("sources", reason.source()))
                && Arrays.stream(reason.clause().split("; "))
                        .noneMatch(c -> country("clauses", c).equals(code));
    }

    private boolean foreign(String country) {
        return !country.isEmpty() && !country.equals(code);
    }

    private static String country(String column, String text) {
        return WordTable.rows("countries").stream()
                .filter(r -> r.words(column).stream().anyMatch(text::startsWith))
                .findFirst()
                .map(r -> r.text("code"))
                .orElse("");
    }
}
