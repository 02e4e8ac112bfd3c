package org.fumewarden.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Respirator;

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

    /** What a review comes to. */
    public enum Verdict {
        AGREED,
        DISAGREED,
        STRICTER;

        /** The word used in files. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The verdict that a word names. */
        public static Optional<Verdict> named(String key) {
            return List.of(values()).stream().filter(v -> v.key().equals(key)).findFirst();
        }
    }

    /**
     * The review as it may be kept: a decision that is not at least as strict as the advice is a disagreement, and never the
     * answer.
     */
    public Review against(Advice advice) {
        return verdict == Verdict.STRICTER && !stricter(advice)
                ? new Review(of, Verdict.DISAGREED, deviceClass, factor, reason, by, capacity)
                : this;
    }

    private boolean stricter(Advice advice) {
        Optional<Respirator> chosen = advice.respirators().stream()
                .filter(r -> r.deviceClass().equals(deviceClass))
                .findFirst();
        if (chosen.isEmpty()
                || !List.of("recommended", "suitable").contains(chosen.get().verdict())) {
            return false;
        }
        Optional<BigDecimal> recommended = advice.respirators().stream()
                .filter(r -> r.verdict().equals("recommended"))
                .findFirst()
                .flatMap(Respirator::factor);
        BigDecimal decided = factor.or(() -> chosen.get().factor()).orElse(BigDecimal.ZERO);
        BigDecimal worn = chosen.get().factor().orElse(BigDecimal.ZERO);
        BigDecimal least = recommended
                .orElse(advice.requiredFactor().value())
                .max(advice.requiredFactor().value());
        return decided.compareTo(least) >= 0
                && worn.compareTo(decided) >= 0
                && (decided.compareTo(advice.requiredFactor().value()) > 0 || worn.compareTo(least) > 0);
    }

    /** The review in one sentence. */
    public String says() {
        String who = by + " (" + capacity + ")";
        String choice = (deviceClass.isEmpty() ? "" : ": class " + deviceClass)
                + factor.map(f -> (deviceClass.isEmpty() ? ": " : ", ") + "factor " + f.toPlainString())
                        .orElse("");
        return switch (verdict) {
            case AGREED -> "Agreed by " + who + ". Reason: " + reason;
            case DISAGREED -> "Disagreed by " + who + choice + ". The advice stands. Reason: " + reason;
            case STRICTER -> "Decided stricter by " + who + choice + ". Reason: " + reason;
        };
    }

    static Review of(JsonNode node) {
        return new Review(
                node.path("of").asText(),
                Verdict.named(node.path("verdict").asText()).orElse(Verdict.DISAGREED),
                node.path("class").asText(),
                node.has("factor")
                        ? Optional.of(new BigDecimal(node.path("factor").asText()))
                        : Optional.empty(),
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
