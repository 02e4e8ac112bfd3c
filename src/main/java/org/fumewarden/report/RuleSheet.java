package org.fumewarden.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fumewarden.check.Catalogue;
import org.fumewarden.engine.Phase;
import org.fumewarden.engine.RuleCard;
import org.fumewarden.model.Confidence;

/** The catalogue of rules for people. */
public final class RuleSheet {
    private RuleSheet() {}

    /** One line a rule. */
    public static String list(Catalogue catalogue) {
        return catalogue.cards().values().stream()
                .map(c -> c.id() + " " + c.title() + " [" + cited(c) + "]\n")
                .collect(Collectors.joining());
    }

    /** One rule with its scenarios and the rows it reads. */
    public static String one(RuleCard card, Catalogue.Use use) {
        StringBuilder sheet = new StringBuilder();
        sheet.append(card.id()).append(' ').append(card.title()).append('\n');
        sheet.append("  Says: ").append(card.says()).append('\n');
        sheet.append("  Clause: ").append(cited(card)).append('\n');
        sheet.append("  Edition: ").append(card.citation().edition()).append('\n');
        sheet.append("  Phase: ")
                .append(card.phase().key())
                .append(" of ")
                .append(card.code())
                .append('\n');
        sheet.append("  In force: ")
                .append(card.from())
                .append(" until ")
                .append(card.until())
                .append('\n');
        card.overrides().ifPresent(id -> sheet.append("  Lifts: ").append(id).append('\n'));
        block(sheet, "Fires in", List.copyOf(use.scenarios()));
        block(sheet, "Reads", List.copyOf(use.rows()));
        return sheet.toString();
    }

    /** How well rules and rows are known, and each that still needs its primary text. */
    public static String confidence(Catalogue catalogue) {
        StringBuilder sheet = new StringBuilder();
        for (String folder : catalogue.folders()) {
            Map<Confidence, Integer> counts = catalogue.counts(folder);
            sheet.append(folder).append(": ");
            sheet.append(counts.entrySet().stream()
                    .map(e -> e.getKey().key() + " " + e.getValue())
                    .collect(Collectors.joining(", ")));
            sheet.append('\n');
            block(sheet, "Needs its primary text", catalogue.unverified(folder));
            List<String> affirmed = catalogue.affirmed(folder);
            if (!affirmed.isEmpty()) {
                block(sheet, "Affirmed by a reviewer", affirmed);
            }
        }
        return sheet.toString();
    }

    /** The page docs/rules.md. */
    public static String markdown(Catalogue catalogue) {
        StringBuilder page =
                new StringBuilder("# The rules\n\nGenerated; refresh it with `fumewarden rules --markdown`. ");
        page.append("A shared rule may be cited by the clause of a code instead.\n");
        for (String folder : catalogue.folders()) {
            page.append("\n## ").append(folder).append("\n");
            for (Phase phase : Phase.values()) {
                List<RuleCard> cards = catalogue.cards().values().stream()
                        .filter(c -> c.code().equals(folder) && c.phase() == phase)
                        .toList();
                if (!cards.isEmpty()) {
                    page.append("\n### ")
                            .append(phase.key())
                            .append("\n\n| Rule | States | Source and clause | Confidence |\n");
                    page.append("|---|---|---|---|\n");
                    cards.forEach(c -> page.append("| ")
                            .append(c.id())
                            .append(" | ")
                            .append(c.title().replace("|", "\\|"))
                            .append(" | ")
                            .append((c.citation().source() + ", " + c.citation().clause()).replace("|", "\\|"))
                            .append(" | ")
                            .append(c.citation().confidence().key())
                            .append(" |\n"));
                }
            }
        }
        return page.toString();
    }

    private static String cited(RuleCard card) {
        return card.citation().source() + ", " + card.citation().clause() + ", "
                + card.citation().confidence().key();
    }

    private static void block(StringBuilder sheet, String title, List<String> lines) {
        sheet.append("  ").append(title).append(" (").append(lines.size()).append("):\n");
        lines.forEach(l -> sheet.append("    ").append(l).append('\n'));
    }
}
