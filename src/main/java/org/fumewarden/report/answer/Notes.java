package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.advice.Reason;
import org.fumewarden.codes.Document;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Sign;

/** Where sentences stand, as numbers; a place that orders several things has one number. */
final class Notes {
    private static final String UNSTATED = "see docs/sources.yaml";

    private final Map<String, Document> documents;
    private final Map<String, Set<String>> rules = new LinkedHashMap<>();
    private final List<String> places = new ArrayList<>();

    /**
     * Notes without any yet.
     *
     * @param documents that may be cited, by id
     */
    Notes(Map<String, Document> documents) {
        this.documents = documents;
    }

    /** The number of the place behind a sentence. */
    String of(Reason reason) {
        String edition = reason.edition().isEmpty() || reason.edition().equals(UNSTATED) ? "" : ", " + reason.edition();
        return of(title(reason.source()) + ", " + reason.clause() + edition, reason.rule());
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

    /** The title of a document, or else its id. */
    String title(String source) {
        return documents.containsKey(source) ? documents.get(source).title() : source;
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
