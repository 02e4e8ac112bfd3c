package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Hidden;
import org.fumewarden.report.AdviceTree;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.QrCode;

/** Kept advice for somebody who reads no code: the task as told, the answer, each step with its clause, and what proves it. */
public final class CourtReport {
    private final KeptAdvice kept;
    private final JsonNode advice;
    private final List<Reviewed> reviews;
    private final List<String> proofs;
    private final CodeBook book;
    private final boolean ownRules;
    private final Markup out = new Markup();

    private CourtReport(KeptAdvice kept, List<Reviewed> reviews, List<String> proofs, RulesAtHand rules) {
        this.kept = kept;
        this.advice = shown(AdviceTree.opened(kept.advice()));
        this.reviews = reviews;
        this.proofs = proofs;
        this.book = rules.book(kept);
        this.ownRules = rules.ownRevision(kept.code()).equals(kept.revision());
    }

    /**
     * Writes the report as a page that refers to nothing outside itself.
     *
     * @param reviews what persons said of this advice
     * @param proofs what the audit found
     * @param rules say names, questions and titles of documents
     */
    public static String write(KeptAdvice kept, List<Reviewed> reviews, List<String> proofs, RulesAtHand rules) {
        return new CourtReport(kept, reviews, proofs, rules).page();
    }

    /** The words of a file whose author is unknown: what is not seen or moves the text is shown by its number. */
    private static JsonNode shown(JsonNode node) {
        if (node.isTextual()) {
            return TextNode.valueOf(Hidden.shown(node.asText().replaceAll("\\s*[\\n\\t]\\s*", " ")));
        }
        if (node.isArray()) {
            ArrayNode items = JsonNodeFactory.instance.arrayNode();
            node.forEach(item -> items.add(shown(item)));
            return items;
        }
        if (node.isObject()) {
            ObjectNode parts = JsonNodeFactory.instance.objectNode();
            node.fields().forEachRemaining(f -> parts.set(Hidden.shown(f.getKey()), shown(f.getValue())));
            return parts;
        }
        return node;
    }

    private String page() {
        String title = "Advice as it was kept: " + advice.path("title").asText();
        out.own("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"/><title>");
        out.text(title);
        out.own(
                "</title><style>@page{size:A4;margin:17mm 16mm;@bottom-right{content:counter(page) \" / \" counter(pages);"
                        + "font-size:8pt;font-family:\"DejaVu Sans\",sans-serif}}body{font:10pt/1.4 \"DejaVu Sans\",Verdana,sans-serif;"
                        + "max-width:54em;margin:0 auto}h2{border-top:2px solid #000000;padding-top:.4em;font-size:1.1em}"
                        + "li{margin-bottom:.5em}.cite{font-size:.85em}table{border-collapse:collapse;width:100%}"
                        + "th,td{text-align:left;vertical-align:top;border-bottom:1px solid #888888;padding:.2em .6em .2em 0}"
                        + ".hash{font-family:\"DejaVu Sans Mono\",monospace;font-size:.8em;overflow-wrap:anywhere;word-wrap:break-word}"
                        + "</style></head><body>\n");
        out.words("h1", "", title);
        out.section("answer", "The answer", this::answer);
        out.section("proof", "What proves this", this::proof);
        out.section("told", "The task as it was told", this::told);
        out.section("compare", "Compare before signing", this::compare);
        out.section("steps", "Step by step", () -> new CourtSteps(advice, book, out).write());
        out.words("p", "", Advice.CLOSING);
        out.own("</body></html>\n");
        return out.toString();
    }

    private void answer() {
        reviews.stream()
                .filter(Reviewed::heads)
                .forEach(r -> out.element(
                        "p", () -> out.words("strong", "", r.review().says())));
        out.words(
                "p",
                "",
                "Status: " + spaced(advice.path("status").asText()) + ". Date of the rules: "
                        + advice.path("on").asText() + ". Code: "
                        + advice.path("codes").path(0).path("name").asText() + ".");
        if (!ownRules) {
            out.element(
                    "p",
                    () -> out.words("strong", "", "These are not the rules of this program: see what proves this."));
        }
        JsonNode factor = advice.path("required-factor");
        out.words(
                "p",
                "",
                factor.path("open").asBoolean()
                        ? "Minimum required protection factor: open, at least "
                                + factor.path("value").asText() + " so far."
                        : "Minimum required protection factor: "
                                + factor.path("value").asText() + ".");
        for (JsonNode respirator : advice.path("respirators")) {
            if (respirator.path("verdict").asText().equals("recommended")) {
                out.words(
                        "p",
                        "",
                        "The advice of the program: wear "
                                + respirator.path("name").asText() + ", assigned protection factor "
                                + respirator.path("factor").asText() + ", filter "
                                + respirator.path("filter").asText() + ".");
            }
        }
        for (String part : List.of("stops", "conflicts")) {
            sentences(advice.path(part));
        }
        for (JsonNode question : advice.path("questions")) {
            out.words("p", "", "Open: " + question.path("ask").asText());
        }
        reviews.forEach(r -> out.words("p", "", r.says()));
    }

    private void sentences(JsonNode reasons) {
        reasons.forEach(r -> out.words("p", "", r.path("says").asText()));
    }

    private static String spaced(String id) {
        return id.replace('-', ' ');
    }

    /** The task as it stands in its file, line by line. */
    private void told() {
        out.element(
                "table", () -> new ToldInWords(book.vocabulary(), book.card().name())
                        .rows(shown(kept.told()))
                        .forEach(row -> out.element("tr", () -> {
                            out.rowHead(row.getKey());
                            out.words("td", "", row.getValue());
                        })));
    }

    /** The values behind the answer that nobody compared with their text, and those on which documents differ. */
    private void compare() {
        JsonNode values = advice.path("compare-before-signing");
        if (values.isEmpty()) {
            out.words(
                    "p",
                    "",
                    "Every value that decides this answer was checked against the printed law, and no document differs.");
            return;
        }
        out.words(
                "p",
                "",
                values.size() + (values.size() == 1 ? " value" : " values") + " behind the answer "
                        + (values.size() == 1 ? "was" : "were")
                        + " not compared with the text, or documents differ about it. Compare before you sign or rely on it.");
        out.element(
                "ul",
                () -> values.forEach(v -> out.words(
                        "li",
                        "",
                        v.path("value").asText() + " (" + v.path("document").asText() + ", "
                                + v.path("place").asText() + "; row "
                                + v.path("row").asText() + "). "
                                + v.path("matters").asText())));
    }

    private void proof() {
        proofs.forEach(p -> out.words("p", "", p));
        out.element("table", () -> {
            fact("Entry", String.valueOf(kept.sequence()));
            fact("Kept at", kept.keptAt().map(String::valueOf).orElse("not stated"));
            fact("Program, as the entry says", kept.program().isEmpty() ? "not stated" : Hidden.shown(kept.program()));
            kept.foreignRules()
                    .ifPresent(f -> fact("Rules", "not the rules of the program, folder " + Hidden.quoted(f)));
            kept.signedBy().ifPresent(k -> fact("Key that signs it, as the entry says", Hidden.shown(k)));
            fact("Revision of the rules", Hidden.shown(kept.revision()));
            fact("Hash of this entry", Hidden.shown(kept.hash()));
            fact("Hash of the entry before", Hidden.shown(kept.previous()));
        });
        out.own(QrCode.svg(Hidden.shown(kept.hash() + " " + kept.revision())));
        out.words(
                "p",
                "cite",
                "The code holds the hash of this entry and the revision of its rules. Compare them with the kept"
                        + " file: what is printed here can be altered, the file cannot without a trace.");
    }

    private void fact(String name, String value) {
        out.element("tr", () -> {
            out.rowHead(name);
            out.words("td", "hash", value);
        });
    }
}
