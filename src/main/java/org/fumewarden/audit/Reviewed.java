package org.fumewarden.audit;

import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.codes.InputException;
import org.fumewarden.report.AdviceReader;

/**
 * A review in its entry, judged again as if it were written now.
 *
 * @param review what counts: a disagreement when it calls itself stricter and is not
 * @param signature how its signature stands, in words
 * @param faults what is wrong with it, in words
 */
public record Reviewed(KeptAdvice entry, Review review, String signature, List<String> faults) {
    private static final int SHOWN = 12;

    /** The reviews of a piece of advice among the entries of its chain. */
    public static List<Reviewed> of(KeptAdvice kept, List<KeptAdvice> chain, Optional<PublicKey> key) {
        return chain.stream()
                .filter(e ->
                        e.review().map(Review::of).filter(kept.hash()::equals).isPresent())
                .map(e -> judged(e, kept, key))
                .toList();
    }

    private static Reviewed judged(KeptAdvice entry, KeptAdvice kept, Optional<PublicKey> key) {
        Review review = entry.review().orElseThrow();
        List<String> faults = new ArrayList<>();
        Optional<String> form = entry.oddity();
        form.ifPresent(faults::add);
        String signature = signature(entry, kept, key, faults);
        if (review.verdict() == Review.Verdict.STRICTER) {
            Optional<String> not = notStricter(review, kept);
            not.ifPresent(n -> faults.add("it calls itself stricter than the advice and is not: " + n));
            review = not.isPresent() ? review.asDisagreement() : review;
        }
        return new Reviewed(entry, review, signature, List.copyOf(faults));
    }

    private static Optional<String> notStricter(Review review, KeptAdvice kept) {
        try {
            Advice advice = AdviceReader.read(kept.file());
            return review.notStricter(advice);
        } catch (InputException e) {
            return Optional.of("its advice cannot be read");
        }
    }

    private static String signature(KeptAdvice entry, KeptAdvice kept, Optional<PublicKey> key, List<String> faults) {
        if (key.isPresent()) {
            Optional<String> fault = Signatures.fault(entry.file(), key.get());
            fault.ifPresent(f -> faults.add("it is NOT SIGNED by this key: " + f));
            return fault.isEmpty() ? "signed, the signature fits the key" : "not signed by this key";
        }
        boolean there = java.nio.file.Files.exists(Signatures.beside(entry.file()));
        if (!there && java.nio.file.Files.exists(Signatures.beside(kept.file()))) {
            faults.add("it is NOT SIGNED, and the advice is");
        }
        return there ? "signed, and no key was given to check it" : "not signed";
    }

    public boolean good() {
        return faults.isEmpty();
    }

    /** True for a decision that heads the report. */
    public boolean heads() {
        return good() && review.verdict() == Review.Verdict.STRICTER;
    }

    /** Date, entry, hash and signature, what is wrong, and what was said. */
    public String says() {
        return "Review in entry " + entry.sequence() + ", kept at "
                + entry.keptAt().map(String::valueOf).orElse("no time stated") + ", hash "
                + entry.hash().substring(0, Math.min(SHOWN, entry.hash().length())) + ", " + signature + ". "
                + (good() ? "" : "IT DOES NOT COUNT AS IT STANDS: " + String.join("; ", faults) + ". ") + review.says();
    }
}
