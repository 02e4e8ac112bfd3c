package org.fumewarden.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.Confidence;

/** Writes sentences of rules with the rule, clause and edition behind them, and the mark of what was not verified. */
public final class Citations {
    private static final int MANY = 3;
    private static final String UNSTATED = "not stated";

    private final Markup out;
    private final Words words;
    private final UnaryOperator<String> names;

    /**
     * Writes into a sheet.
     *
     * @param names what people read for the subject of a sentence
     */
    public Citations(Markup out, Words words, UnaryOperator<String> names) {
        this.out = out;
        this.words = words;
        this.names = names;
    }

    /** A list of sentences; sentences of one rule that repeat themselves are said once, the other subjects after it. */
    public void list(List<Reason> reasons) {
        Map<String, List<Reason>> byRule = new LinkedHashMap<>();
        reasons.forEach(
                r -> byRule.computeIfAbsent(r.rule(), k -> new ArrayList<>()).add(r));
        out.element("ul", "sentences", () -> byRule.values().forEach(same -> {
            if (same.size() < MANY) {
                same.forEach(r -> out.element("li", () -> sentence(r)));
                return;
            }
            out.element("li", () -> {
                sentence(same.get(0));
                String others = same.stream()
                        .skip(1)
                        .map(r -> names.apply(r.subject()))
                        .distinct()
                        .collect(Collectors.joining(", "));
                out.words("p", "likewise", words.say("sheet.likewise", others));
            });
        }));
    }

    /** One sentence and what it rests on. */
    public void sentence(Reason reason) {
        says(reason.says());
        out.element("p", "cite", () -> {
            out.words("span", "rule", reason.rule());
            out.text(" ").words("span", "clause", reason.source() + ", " + reason.clause());
            if (!reason.edition().isEmpty() && !reason.edition().equals(UNSTATED)) {
                out.text(" ").words("span", "edition", reason.edition());
            }
            mark(reason.confidence());
        });
    }

    /** A sentence in the language of the rule base. */
    public void says(String sentence) {
        out.own(words.ofRuleBase() ? "<p class=\"says\">" : "<p class=\"says\" lang=\"en\">");
        out.text(sentence).own("</p>\n");
    }

    /** The mark of a value or clause that nobody compared with its text: a sign and a word, not a colour. */
    public void mark(Confidence confidence) {
        if (confidence.unverified()) {
            out.text(" ").words("strong", "unverified", "\u25B3 " + words.say("sheet.unverified"));
        }
    }

    /** What bars, and with it every class it bars: short enough to read, and no reason is left out. */
    public void barred(List<Respirator> respirators) {
        Map<String, Reason> reasons = new LinkedHashMap<>();
        Map<String, List<String>> classes = new LinkedHashMap<>();
        for (Respirator respirator : respirators) {
            for (Reason reason : respirator.reasons()) {
                String key = reason.rule() + " " + reason.says();
                reasons.putIfAbsent(key, reason);
                classes.computeIfAbsent(key, k -> new ArrayList<>()).add(respirator.deviceClass());
            }
        }
        out.element(
                "ul",
                "sentences",
                () -> reasons.forEach((key, reason) -> out.element("li", () -> {
                    sentence(reason);
                    out.words("p", "bars", words.say("sheet.bars", String.join(", ", classes.get(key))));
                })));
    }
}
