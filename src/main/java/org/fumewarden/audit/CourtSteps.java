package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Document;
import org.fumewarden.report.html.Markup;

/** The steps of kept advice, one after the other, each with its document, its clause and what it rests on. */
final class CourtSteps {
    /** The document that the rules are themselves: what they define, and what is common practice. */
    private static final String OWN = "fumewarden";

    private final JsonNode advice;
    private final CodeBook book;
    private final NotFound notFound;
    private final Markup out;
    private final Set<String> toCompare = new HashSet<>();
    private int leftOut;

    CourtSteps(JsonNode advice, CodeBook book, Markup out) {
        this.advice = advice;
        this.book = book;
        this.notFound = new NotFound(book.vocabulary());
        this.out = out;
        advice.path("compare-before-signing")
                .forEach(c -> toCompare.add(c.path("row").asText()));
    }

    void write() {
        out.words(
                "p",
                "",
                "Each step is one application of one rule. It names the document and the clause that order it, how well that clause"
                        + " is known to those who keep the rules, and what it rests on.");
        out.element("ol", () -> {
            for (JsonNode step : advice.path("trail").path("steps")) {
                out.element("li", () -> step(step));
            }
        });
        if (leftOut > 0) {
            out.words(
                    "p",
                    "cite",
                    "Left out: " + leftOut
                            + " times a step looked for an exception that this task does not touch, and did not find"
                            + " it. The kept file names each.");
        }
    }

    private void step(JsonNode step) {
        out.words("strong", "", step.path("says").asText());
        if (step.has("overridden-by")) {
            out.words(
                    "p",
                    "",
                    "This was lifted by rule " + step.path("overridden-by").asText() + ".");
        }
        out.words("p", "cite", "Rule " + step.path("rule").asText() + ". " + cited(step) + ".");
        List<String> rests = new ArrayList<>();
        for (JsonNode premise : step.path("premises")) {
            Optional<String> said = premise(premise);
            said.map(s -> s.replaceFirst("\\.$", "")).ifPresent(rests::add);
            leftOut += said.isEmpty() ? 1 : 0;
        }
        if (!rests.isEmpty()) {
            out.words("p", "cite", "It rests on: " + String.join("; ", rests) + ".");
        }
    }

    private Optional<String> premise(JsonNode premise) {
        String words = premise.path("words").asText();
        String address = premise.path("address").asText();
        return switch (premise.path("kind").asText()) {
            case "input" ->
                Optional.of(
                        words.endsWith(": not known")
                                ? "asked and not answered: " + words.replaceFirst(": not known$", "")
                                : "told: " + words);
            case "row" ->
                Optional.of("table row " + address + ": " + words + " (" + cited(premise)
                        + (toCompare.contains(address) ? "; compare it before signing, see above" : "") + ")");
            case "absent" -> notFound.says(address, words);
            default -> Optional.of("step " + address.replaceFirst("^s", ""));
        };
    }

    /** Document, clause, edition and how well they are known. */
    private String cited(JsonNode cited) {
        String source = cited.path("source").asText();
        String clause = cited.path("clause").asText();
        String known = known(cited.path("confidence").asText());
        if (source.equals(OWN)) {
            return "Fixed by these rules themselves: " + clause + ", edition "
                    + cited.path("edition").asText() + "; " + known;
        }
        Document document = book.documents().get(source);
        return (document == null ? source : document.title()) + ", " + clause + ", edition: "
                + cited.path("edition").asText() + "; " + known;
    }

    private static String known(String confidence) {
        return switch (confidence) {
            case "read" -> "read in the document";
            case "cross-checked" -> "found in two independent places";
            case "derived" -> "worked out from documents that were read";
            case "practice" -> "common practice or a definition of these rules, no outside document";
            default -> "from memory, not compared with the document";
        };
    }
}
