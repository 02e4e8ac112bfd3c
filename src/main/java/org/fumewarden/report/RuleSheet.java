package org.fumewarden.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.check.Catalogue;
import org.fumewarden.engine.Phase;
import org.fumewarden.engine.RuleCard;
import org.fumewarden.engine.RuleInWords;
import org.fumewarden.model.Confidence;

/** The catalogue of rules for people. */
public final class RuleSheet {
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+\\.)?(\\w+)}");
    private static final int FIRST_YEAR = 1901;
    private static final int LAST_YEAR = 9998;

    private RuleSheet() {}

    /** One line a rule. */
    public static String list(Catalogue catalogue) {
        return catalogue.cards().values().stream()
                .map(c -> c.id() + " " + c.title() + " [" + cited(c) + "]\n")
                .collect(Collectors.joining());
    }

    /** One rule in words: when, unless, then, by which clause, the rows it reads, what lifts it, and where it is shown. */
    public static String one(RuleCard card, Catalogue catalogue, Optional<Catalogue.Use> use) {
        RuleInWords words = catalogue.inWords().get(card.id());
        StringBuilder sheet = new StringBuilder();
        sheet.append(card.id()).append(' ').append(card.title()).append('\n');
        block(sheet, "When", words.when());
        block(sheet, "Unless", words.unless());
        sheet.append("  Then: ").append(then(card)).append('\n');
        sheet.append("  Clause: ").append(cited(card)).append('\n');
        sheet.append("  Edition: ").append(card.citation().edition()).append('\n');
        sheet.append("  Phase: ")
                .append(card.phase().key())
                .append(" of ")
                .append(card.code())
                .append('\n');
        sheet.append("  In force: ").append(inForce(card)).append('\n');
        card.overrides().ifPresent(id -> sheet.append("  Lifts: ").append(id).append('\n'));
        block(sheet, "Lifted by", liftedBy(card, catalogue));
        use.ifPresentOrElse(
                u -> {
                    block(sheet, "Reads", List.copyOf(u.rows()));
                    block(sheet, "Shown in", List.copyOf(u.scenarios()));
                },
                () -> sheet.append("  Rows read and scenarios: not shown, for no folder of scenarios is here."
                        + " Name one with --scenarios.\n"));
        return sheet.toString();
    }

    /** The sentence of a rule; what differs from task to task stands in brackets. */
    private static String then(RuleCard card) {
        return PLACE.matcher(card.says())
                .replaceAll(m ->
                        "(" + m.group(2).replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT) + ")");
    }

    private static String inForce(RuleCard card) {
        boolean always = card.from().getYear() < FIRST_YEAR;
        boolean open = card.until().getYear() > LAST_YEAR;
        if (always && open) {
            return "always";
        }
        return (always ? "" : "from " + card.from())
                + (always || open ? "" : " ")
                + (open ? "" : "until " + card.until());
    }

    private static List<String> liftedBy(RuleCard card, Catalogue catalogue) {
        return catalogue.cards().values().stream()
                .filter(c -> c.overrides().filter(card.id()::equals).isPresent())
                .map(c -> c.id() + " " + c.title())
                .toList();
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
        page.append("A shared rule may be cited by the clause of a code instead.\n"
                + "What differs from task to task stands in brackets.\n");
        for (String folder : catalogue.folders()) {
            page.append("\n## ").append(folder).append("\n");
            for (Phase phase : Phase.values()) {
                List<RuleCard> cards = catalogue.cards().values().stream()
                        .filter(c -> c.code().equals(folder) && c.phase() == phase)
                        .toList();
                if (!cards.isEmpty()) {
                    page.append("\n### ").append(phase.key()).append("\n");
                    cards.forEach(c -> page.append(entry(c, catalogue)));
                }
            }
        }
        return page.toString();
    }

    private static String entry(RuleCard card, Catalogue catalogue) {
        RuleInWords words = catalogue.inWords().get(card.id());
        StringBuilder entry = new StringBuilder("\n**" + card.id() + "** " + card.title() + "\n\n");
        entry.append("- When ").append(String.join("; ", words.when())).append(".\n");
        if (!words.unless().isEmpty()) {
            entry.append("- Unless ")
                    .append(String.join("; or ", words.unless()))
                    .append(".\n");
        }
        entry.append("- Then: ").append(then(card)).append('\n');
        liftedBy(card, catalogue)
                .forEach(l -> entry.append("- Lifted by ").append(l).append(".\n"));
        if (!inForce(card).equals("on every day")) {
            entry.append("- In force ").append(inForce(card)).append(".\n");
        }
        return entry.append("- By ").append(cited(card)).append(".\n").toString();
    }

    private static String cited(RuleCard card) {
        return card.citation().source() + ", " + card.citation().clause() + ", "
                + card.citation().confidence().key();
    }

    private static void block(StringBuilder sheet, String title, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        sheet.append("  ").append(title).append(" (").append(lines.size()).append("):\n");
        lines.forEach(l -> sheet.append("    ").append(l).append('\n'));
    }
}
