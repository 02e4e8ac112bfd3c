package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.Suitability;
import org.fumewarden.codes.Hidden;
import org.fumewarden.model.Keyed;

/**
 * What a person said of kept advice.
 *
 * @param of hash of the entry that was reviewed
 * @param deviceClass class that the person decided on; empty when they decided on none
 * @param by who
 * @param capacity as what, such as a competent person of the yard
 */
public record Review(
        String of,
        Verdict verdict,
        String deviceClass,
        Optional<BigDecimal> factor,
        String reason,
        String by,
        String capacity) {
    private static final Set<String> NAMES = Set.of("of", "verdict", "class", "factor", "reason", "by", "capacity");
    private static final Set<String> NOBODY =
            Set.of("nobody", "none", "no one", "no-one", "unknown", "anonymous", "anybody", "n/a", "tbd", "nil");
    private static final int LONGEST = 2_000;

    /** How the words begin that say a decision is as strict as the advice. */
    private static final String SAME = "it is as strict as the advice: ";

    /** What a review comes to. */
    public enum Verdict implements Keyed {
        AGREED,
        DISAGREED,
        STRICTER
    }

    /** Why a decision is not stricter than the advice, in words; empty when it is. */
    public Optional<String> notStricter(Advice advice) {
        Optional<Respirator> found = advice.respirators().stream()
                .filter(r -> r.deviceClass().equals(deviceClass))
                .findFirst();
        if (found.isEmpty()) {
            return Optional.of("the advice does not speak of the class \"" + deviceClass + "\"");
        }
        Respirator chosen = found.get();
        BigDecimal required = advice.requiredFactor().value();
        BigDecimal advised =
                recommended(advice).flatMap(Respirator::factor).orElse(required).max(required);
        BigDecimal worn = chosen.factor().orElse(BigDecimal.ZERO);
        BigDecimal decided = factor.orElse(worn);
        if (advice.status() == Status.DO_NOT_ENTER || !advice.stops().isEmpty()) {
            return Optional.of("the advice is not to begin, and no respirator is stricter than that");
        }
        if (advice.requiredFactor().open()) {
            return Optional.of("the required factor is still open, so nothing can be called stricter");
        }
        if (!chosen.verdict().offered()) {
            return Optional.of("the advice holds " + chosen.name() + " for "
                    + chosen.verdict().key());
        }
        if (worn.compareTo(decided) < 0) {
            return Optional.of(chosen.name() + " reaches only a factor of " + plain(worn));
        }
        if (decided.compareTo(advised) < 0) {
            return Optional.of(
                    "a factor of " + plain(decided) + " is lower than the " + plain(advised) + " of the advice");
        }
        return worn.compareTo(advised) > 0
                ? Optional.empty()
                : Optional.of(SAME + chosen.name() + " protects no better than what is advised already, factor "
                        + plain(worn));
    }

    /** True when what is decided is not milder either: it is the advice over again. */
    public static boolean same(String notStricter) {
        return notStricter.startsWith(SAME);
    }

    /** The review as a disagreement, whatever it calls itself. */
    public Review asDisagreement() {
        return new Review(of, Verdict.DISAGREED, deviceClass, factor, reason, by, capacity);
    }

    private static Optional<Respirator> recommended(Advice advice) {
        return advice.respirators().stream()
                .filter(r -> r.verdict() == Suitability.RECOMMENDED)
                .findFirst();
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** The review in one sentence, with the words of the person in quotes. */
    public String says() {
        String who = Hidden.quoted(by) + " (" + Hidden.quoted(capacity) + ")";
        String choice = (deviceClass.isEmpty() ? "" : ": class " + Hidden.shown(deviceClass))
                + factor.map(f -> (deviceClass.isEmpty() ? ": " : ", ") + "factor " + plain(f))
                        .orElse("");
        String why = " Reason given: " + Hidden.quoted(reason);
        return switch (verdict) {
            case AGREED -> "Agreed by " + who + "." + why;
            case DISAGREED -> "Disagreed by " + who + choice + ". The advice stands." + why;
            case STRICTER -> "Decided stricter by " + who + choice + "." + why;
        };
    }

    /** What is wrong with the words of a review that somebody writes or wrote, in words; empty when it can be kept. */
    public static Optional<String> fault(JsonNode node) {
        Set<String> names = new TreeSet<>();
        node.fieldNames().forEachRemaining(names::add);
        names.removeAll(NAMES);
        if (!node.isObject() || !names.isEmpty()) {
            return Optional.of("it is a review with parts that no review has");
        }
        for (String name : List.of("by", "capacity", "reason")) {
            Optional<String> wrong = wording(node.path(name).asText());
            if (wrong.isPresent()) {
                return Optional.of("it is a review, and its \"" + name + "\" " + wrong.get());
            }
        }
        if (Keyed.find(Verdict.class, node.path("verdict").asText()).isEmpty()) {
            return Optional.of("it is a review whose verdict is none of agreed, disagreed and stricter");
        }
        if (node.has("factor") && !factorMeant(node.path("factor").asText())) {
            return Optional.of("it is a review whose factor is no protection factor");
        }
        return Optional.empty();
    }

    /** What is wrong with a name, a capacity or a reason, in words that follow it. */
    public static Optional<String> wording(String text) {
        Optional<String> hidden = Hidden.first(text);
        if (hidden.isPresent()) {
            return Optional.of("holds a character that is not seen or moves the text, " + hidden.get());
        }
        if (text.codePoints().filter(Character::isLetter).count() < 2
                || NOBODY.contains(text.strip().toLowerCase(Locale.ROOT))) {
            return Optional.of("names nothing");
        }
        return text.length() > LONGEST ? Optional.of("has more than " + LONGEST + " characters") : Optional.empty();
    }

    /** True for a number that can be a protection factor: from 1 to 100000, with at most two decimals. */
    public static boolean factorMeant(String text) {
        return text.matches("[1-9][0-9]{0,4}(\\.[0-9]{1,2})?|100000");
    }

    static Review of(JsonNode node) {
        String factor = node.path("factor").asText();
        return new Review(
                node.path("of").asText(),
                Keyed.find(Verdict.class, node.path("verdict").asText()).orElse(Verdict.DISAGREED),
                node.path("class").asText(),
                factorMeant(factor) ? Optional.of(new BigDecimal(factor)) : Optional.empty(),
                node.path("reason").asText(),
                node.path("by").asText(),
                node.path("capacity").asText());
    }

    ObjectNode node() {
        ObjectNode node = KeptAdvice.empty();
        node.put("of", of);
        node.put("verdict", verdict.key());
        if (!deviceClass.isEmpty()) {
            node.put("class", deviceClass);
        }
        factor.ifPresent(f -> node.put("factor", f.toPlainString()));
        node.put("reason", reason);
        node.put("by", by);
        node.put("capacity", capacity);
        return node;
    }
}
