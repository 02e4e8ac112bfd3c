package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.Hidden;
import org.fumewarden.report.AdviceTree;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.QrCode;

/** Kept advice for somebody who reads no code: the task as told, the answer, each step with its clause, and what proves it. */
public final class CourtReport {
    /** Names of a scenario that tell nothing of the task. */
    private static final Set<String> OF_SCENARIOS = Set.of("expect", "because", "extends", "change");

    private final KeptAdvice kept;
    private final JsonNode advice;
    private final List<Reviewed> reviews;
    private final List<String> proofs;
    private final Markup out = new Markup();

    private CourtReport(KeptAdvice kept, List<Reviewed> reviews, List<String> proofs) {
        this.kept = kept;
        this.advice = shown(AdviceTree.opened(kept.advice()));
        this.reviews = reviews;
        this.proofs = proofs;
    }

    /**
     * Writes the report as a page that refers to nothing outside itself.
     *
     * @param reviews what persons said of this advice
     * @param proofs what the audit found
     */
    public static String write(KeptAdvice kept, List<Reviewed> reviews, List<String> proofs) {
        return new CourtReport(kept, reviews, proofs).page();
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
        out.section("told", "The task as it was told", () -> told("", shown(kept.told())));
        out.section("steps", "Step by step", this::steps);
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

    /** The task as it stands in its file, line by line. */
    private void told(String path, JsonNode node) {
        out.element("table", () -> rows(path, node)
                .forEach(row -> out.element("tr", () -> {
                    out.rowHead(row.getKey());
                    out.words("td", "", row.getValue());
                })));
    }

    private static List<Map.Entry<String, String>> rows(String path, JsonNode node) {
        List<Map.Entry<String, String>> rows = new ArrayList<>();
        if (node.isObject()) {
            node.fields().forEachRemaining(f -> {
                if (!path.isEmpty() || !OF_SCENARIOS.contains(f.getKey())) {
                    rows.addAll(rows(path.isEmpty() ? f.getKey() : path + ", " + f.getKey(), f.getValue()));
                }
            });
        } else if (node.isArray() && node.size() > 0 && node.get(0).isObject()) {
            for (int i = 0; i < node.size(); i++) {
                rows.addAll(rows(path + " " + (i + 1), node.get(i)));
            }
        } else if (node.isArray()) {
            List<String> all = new ArrayList<>();
            node.forEach(n -> all.add(n.asText()));
            rows.add(Map.entry(spaced(path), String.join("; ", all)));
        } else {
            String text = node.asText();
            rows.add(Map.entry(spaced(path), text.equals("true") ? "yes" : text.equals("false") ? "no" : text));
        }
        return rows;
    }

    private static String spaced(String id) {
        return id.replace('-', ' ');
    }

    private void steps() {
        out.words(
                "p",
                "",
                "Each step is one application of one rule. It names the document and the clause that order it, how well that clause"
                        + " is known to the makers of the rules, and what it rests on.");
        out.element("ol", () -> {
            for (JsonNode step : advice.path("trail").path("steps")) {
                out.element("li", () -> step(step));
            }
        });
    }

    private void step(JsonNode step) {
        out.words("strong", "", step.path("says").asText());
        if (step.has("overridden-by")) {
            out.words(
                    "p",
                    "",
                    "This was lifted by rule " + step.path("overridden-by").asText() + ".");
        }
        out.words("p", "cite", "Rule " + step.path("rule").asText() + ". " + cited(step));
        StringBuilder rests = new StringBuilder();
        step.path("premises").forEach(p -> rests.append(rests.isEmpty() ? "It rests on: " : "; ")
                .append(premise(p)));
        if (!rests.isEmpty()) {
            out.words("p", "cite", rests.append('.').toString());
        }
    }

    private static String premise(JsonNode premise) {
        String words = premise.path("words").asText();
        return switch (premise.path("kind").asText()) {
            case "input" -> "told: " + words;
            case "row" ->
                "table row " + premise.path("address").asText() + ": " + words + " ("
                        + premise.path("source").asText() + ", "
                        + premise.path("clause").asText() + ", "
                        + premise.path("edition").asText() + ", "
                        + known(premise.path("confidence").asText()) + ")";
            case "absent" -> "looked for and not there: " + words;
            default -> "step " + premise.path("address").asText().replaceFirst("^s", "");
        };
    }

    private static String cited(JsonNode cited) {
        return "Document " + cited.path("source").asText() + ", edition "
                + cited.path("edition").asText() + ", clause: "
                + cited.path("clause").asText() + ". Known: "
                + known(cited.path("confidence").asText()) + ".";
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
