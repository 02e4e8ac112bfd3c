package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.advice.Reason;
import org.fumewarden.codes.Document;
import org.fumewarden.model.Citation;
import org.fumewarden.model.RowRef;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/** Where sentences stand, as numbers; a place that orders several things has one number. */
final class Notes {
    private static final String UNSTATED = "see docs/sources.yaml";
    private static final String PRACTICE = "practice";
    static final String DEFINITIONS = "fumewarden";
    private static final Set<String> OURS = Set.of(PRACTICE, DEFINITIONS);

    private final Map<String, Document> documents;
    private final Spoken spoken;
    private final Map<String, Set<String>> rules = new LinkedHashMap<>();
    private final List<String> places = new ArrayList<>();

    /**
     * Notes without any yet.
     *
     * @param documents that may be cited, by id
     */
    Notes(Map<String, Document> documents, Spoken spoken) {
        this.documents = documents;
        this.spoken = spoken;
    }

    /** The number of the place behind a sentence. */
    String of(Reason reason) {
        boolean stated =
                !reason.edition().isEmpty() && !reason.edition().equals(UNSTATED) && !OURS.contains(reason.source());
        String edition = stated ? ", " + spoken.speech().cited(reason.edition()) : "";
        return of(place(reason.source(), reason.clause()) + edition, reason.rule());
    }

    /** The number of the place where a value stands. */
    String of(RowRef row) {
        Citation cited = row.citation();
        String place = place(cited.source(), cited.clause());
        String whole = OURS.contains(cited.source()) || cited.edition().isEmpty()
                ? place
                : place + ", " + spoken.speech().cited(cited.edition());
        return of(
                row.beside().isEmpty() ? whole : spoken.say("notes.beside", whole, String.join(" / ", row.beside())),
                row.table());
    }

    /**
     * The number of a place.
     *
     * @param rule what cites it
     */
    String of(String place, String rule) {
        rules.computeIfAbsent(place, p -> {
                    places.add(p);
                    return new TreeSet<>();
                })
                .add(rule);
        return String.valueOf(places.indexOf(place) + 1);
    }

    /**
     * A place in words: the title of its document and the clause. What rests on no document says so.
     *
     * @param source id or title of the document
     */
    String place(String source, String clause) {
        if (source.equals(PRACTICE)) {
            return spoken.speech().cited(StringUtils.capitalize(clause));
        }
        String place = StringUtils.removeEnd(spoken.speech().cited(clause), ".");
        if (source.equals(DEFINITIONS)) {
            return spoken.say("notes.definition", place);
        }
        String title = documents.containsKey(source) ? documents.get(source).title() : source;
        return spoken.speech().cited(title) + (place.isEmpty() || place.equals(Citation.NO_PLACE) ? "" : ", " + place);
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            String place = places.get(i);
            lines.add(
                    new Line.Says(Sign.NONE, (i + 1) + ".", place + " (" + String.join(", ", rules.get(place)) + ")"));
        }
        return lines;
    }
}
