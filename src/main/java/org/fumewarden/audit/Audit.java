package org.fumewarden.audit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.Hidden;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.TaskReader;

/** What can be proved of one piece of kept advice: bytes, signature, and the same advice from the rules that decided. */
public final class Audit {
    private final KeptAdvice kept;
    private final RulesAtHand rules;
    private final List<String> lines = new ArrayList<>();
    private boolean good = true;

    public Audit(KeptAdvice kept, RulesAtHand rules) {
        this.kept = kept;
        this.rules = rules;
    }

    /** What was found, and whether all of it is good. */
    public record Outcome(List<String> lines, boolean good) {}

    /** Checks all that can be checked. */
    public Outcome run(Instant now) {
        say(
                kept.intact(),
                "Intact: the bytes match the hash " + Hidden.shown(kept.hash())
                        + ". A hash names no author: trust it where a signature or a note in another place bears it out.",
                "DAMAGED: the bytes do not match the hash.");
        kept.oddity().ifPresent(o -> say(false, "", "NOT AS THE PROGRAM KEEPS IT: " + o + "."));
        Chain.fromTheFuture(kept, now).ifPresent(f -> say(false, "", f));
        if (rules.key().isPresent()) {
            Optional<String> fault = Signatures.fault(kept.file(), rules.key().get());
            say(
                    fault.isEmpty(),
                    "Signed: the signature fits the key "
                            + Signatures.fingerprint(rules.key().get()) + ".",
                    "NOT SIGNED by this key: " + fault.orElse("") + ".");
        } else {
            kept.signedBy()
                    .ifPresent(k -> lines.add("It says that the key " + Hidden.shown(k)
                            + " signs it. No key was given, so no signature was checked: add --public-key."));
        }
        if (kept.review().isPresent()) {
            lines.add(kept.review().get().says());
            lines.add("A review is not replayed: audit the advice that it speaks of, which judges the review too.");
        } else {
            lines.add("The entry says that " + Hidden.quoted(kept.program())
                    + " kept it. Nothing but a signature bears that out.");
            replay();
        }
        return new Outcome(List.copyOf(lines), good);
    }

    /** Replays the advice, and does nothing else. */
    public Outcome replayed() {
        replay();
        return new Outcome(List.copyOf(lines), good);
    }

    private void say(boolean holds, String yes, String no) {
        lines.add(holds ? yes : no);
        good &= holds;
    }

    private void replay() {
        Optional<RulesAtHand.Source> source;
        String now;
        try {
            source = rules.source(kept);
            if (source.isEmpty()) {
                say(
                        false,
                        "",
                        "CANNOT BE REPLAYED HERE: this program has revision " + rules.ownRevision(kept.code())
                                + ", the advice names " + Hidden.shown(kept.revision())
                                + ", and no rules of that name lie beside it.");
                return;
            }
            now = AdviceJson.writeAs(kept.advice(), advise(source.get().base()));
        } catch (InputException e) {
            say(false, "", "CANNOT BE REPLAYED: " + e.getMessage());
            return;
        }
        lines.add("Rules: " + source.get().from() + ".");
        Replay replay = new Replay(kept.advice(), now);
        if (replay.same() || replay.sameInOldForm()) {
            String how = replay.same()
                    ? "the same advice, byte for byte"
                    : "the same answer from the same steps, in the old form of advice";
            Optional<String> doubt = source.get().doubt();
            say(
                    doubt.isEmpty(),
                    "Replayed: " + how + ", on revision " + kept.revision() + ".",
                    "Replays on unvouched rules: " + how + ", but " + doubt.orElse("") + ". This proves nothing.");
        } else {
            say(
                    false,
                    "",
                    replay.sameRevision()
                            ? "NOT THE SAME, though the revision is the same."
                            : "NOT THE SAME: these rules are of another revision than the one kept.");
            replay.firstDifference().ifPresent(d -> lines.add("First difference: " + d));
            replay.changedRulesAndRows().forEach(c -> lines.add("  " + c));
        }
    }

    private Advice advise(RuleBase base) {
        return new Advisor(base)
                .advise(new TaskReader(base.book().vocabulary())
                        .read(YamlFiles.parse(kept.file().toString(), kept.task()), kept.code(), Optional.of(day())));
    }

    private LocalDate day() {
        try {
            return LocalDate.parse(kept.on());
        } catch (java.time.DateTimeException e) {
            throw new InputException(
                    new Problem(kept.file().toString(), 0, "on", "is no date.", "take the file from a copy."));
        }
    }
}
