package org.fumewarden.audit;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fumewarden.audit.Audit.Outcome;
import org.fumewarden.codes.Hidden;
import org.fumewarden.model.Count;

/** What can be proved of a whole chain: its order, every signature, every review, and each piece of advice replayed. */
public final class ChainAudit {
    /** After how many replays somebody who waits is told. */
    private static final int TOLD_EACH = 20;

    private final Path folder;
    private final Chain chain;
    private final RulesAtHand rules;
    private final List<String> lines = new ArrayList<>();
    private boolean good = true;

    public ChainAudit(Path folder, RulesAtHand rules) {
        this.folder = folder;
        this.chain = new Chain(folder);
        this.rules = rules;
    }

    /**
     * Checks all that was asked for. Nothing more is looked at in a chain that is broken.
     *
     * @param expect a hash that was noted elsewhere
     * @param witness a list of last hashes from another place
     * @param replay false to leave the replays out, which is then said
     * @param progress told how far the replays are
     */
    public Outcome run(
            Instant now,
            Optional<String> expect,
            Optional<Witness> witness,
            boolean replay,
            Consumer<String> progress) {
        Optional<String> broken = chain.firstBrokenLink();
        if (broken.isPresent()) {
            return new Outcome(List.of("BROKEN at " + broken.get() + "."), false);
        }
        List<KeptAdvice> entries = chain.entries();
        String last = entries.get(entries.size() - 1).hash();
        lines.add("Unbroken: " + Count.of(entries.size(), "entry")
                + (entries.size() == 1 ? "" : ", each follows the one before") + ". Last hash " + last
                + ": note it elsewhere, since a cut-off end leaves no trace here.");
        chain.firstFromTheFuture(now).ifPresent(this::fault);
        signatures();
        if (expect.isEmpty() && witness.isEmpty()) {
            lines.add("Not borne out from another place: "
                    + (rules.key().isPresent() ? "who holds the key" : "who can write this folder")
                    + " can write every entry anew. Give a witness or a hash that was noted.");
        }
        expect.ifPresent(hash -> expect(hash, entries));
        witness.ifPresent(w -> witness(w, entries));
        reviews(entries);
        List<KeptAdvice> advice =
                entries.stream().filter(e -> e.review().isEmpty()).toList();
        if (replay) {
            replay(advice, progress);
        } else {
            lines.add(
                    "Not replayed: whether the rules give this advice was not checked. Leave --no-replay out to check it.");
        }
        return new Outcome(List.copyOf(lines), good);
    }

    private void fault(String line) {
        lines.add(line);
        good = false;
    }

    private void signatures() {
        rules.key()
                .ifPresentOrElse(
                        key -> chain.firstUnsigned(key)
                                .ifPresentOrElse(
                                        u -> fault("NOT SIGNED by this key: " + u + "."),
                                        () -> lines.add("Signed: the signature of every entry fits the key "
                                                + Signatures.fingerprint(key) + ".")),
                        () -> lines.add("No signature was checked: no key was given, and a hash names no author."));
    }

    private void expect(String hash, List<KeptAdvice> entries) {
        entries.stream()
                .filter(e -> e.hash().equals(hash))
                .findFirst()
                .ifPresentOrElse(
                        e -> lines.add("Expected: entry " + e.sequence() + " has the hash that was noted."),
                        () -> fault(
                                "MISSING: no entry has the hash that was noted. The end was cut off, or the chain was written anew."));
    }

    private void witness(Witness witness, List<KeptAdvice> entries) {
        Optional<String> against = witness.against(entries, rules.key().orElseThrow());
        if (against.isPresent()) {
            fault("THE WITNESS SPEAKS AGAINST IT: " + against.get() + ".");
            return;
        }
        List<String> unseen = witness.unseen(entries);
        lines.add("Witnessed: every entry that the witness saw is still there."
                + (unseen.isEmpty()
                        ? ""
                        : " It has no line for " + (unseen.size() == 1 ? "entry " : "entries ")
                                + String.join(", ", unseen) + ": only a later line bears out what stands before it."));
    }

    private void reviews(List<KeptAdvice> entries) {
        for (KeptAdvice entry : entries) {
            Reviewed.of(entry, entries, rules.key()).stream()
                    .filter(r -> !r.good())
                    .forEach(r -> fault(Hidden.shown(r.says())));
        }
    }

    private void replay(List<KeptAdvice> advice, Consumer<String> progress) {
        int same = 0;
        for (int i = 0; i < advice.size(); i++) {
            if (i > 0 && i % TOLD_EACH == 0) {
                progress.accept("replayed " + i + " of " + advice.size());
            }
            Outcome outcome = new Audit(advice.get(i), rules).replayed();
            if (outcome.good()) {
                same++;
            } else {
                good = false;
                String place = "Entry " + advice.get(i).sequence() + ": ";
                outcome.lines().forEach(line -> lines.add(place + line));
            }
        }
        lines.add("Replayed: " + same + " of " + advice.size() + " pieces of advice in " + folder.getFileName()
                + " are what the rules that decided give again.");
    }
}
