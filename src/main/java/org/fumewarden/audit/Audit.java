package org.fumewarden.audit;

import java.nio.file.Path;
import java.security.PublicKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.TaskReader;

/** What can be proved of one piece of kept advice: bytes, signature, and the same advice from the rules that decided. */
public final class Audit {
    private final KeptAdvice kept;
    private final Function<String, RuleBase> program;
    private final Optional<Path> rules;
    private final Optional<PublicKey> key;
    private final List<String> lines = new ArrayList<>();
    private boolean good = true;

    /**
     * An audit.
     *
     * @param program gives the rules of this program
     * @param rules a folder of rules that the user names
     * @param key checks signatures
     */
    public Audit(KeptAdvice kept, Function<String, RuleBase> program, Optional<Path> rules, Optional<PublicKey> key) {
        this.kept = kept;
        this.program = program;
        this.rules = rules;
        this.key = key;
    }

    /** What was found, and whether all of it is good. */
    public record Outcome(List<String> lines, boolean good) {}

    private record Source(RuleBase base, String from, boolean vouched) {}

    /** Checks all that can be checked. */
    public Outcome run() {
        say(
                kept.intact(),
                "Intact: the bytes match the hash " + kept.hash()
                        + ". A hash names no author: trust it where a signature or a note in another place bears it out.",
                "DAMAGED: the bytes do not match the hash.");
        if (key.isPresent()) {
            Optional<String> fault = Signatures.fault(kept.file(), key.get());
            say(
                    fault.isEmpty(),
                    "Signed: the signature fits the key.",
                    "NOT SIGNED by this key: " + fault.orElse("") + ".");
        }
        if (kept.review().isPresent()) {
            lines.add(kept.review().get().says());
            lines.add("A review is not replayed: audit the advice that it speaks of.");
        } else {
            replay();
        }
        return new Outcome(List.copyOf(lines), good);
    }

    private void say(boolean holds, String yes, String no) {
        lines.add(holds ? yes : no);
        good &= holds;
    }

    private void replay() {
        Optional<Source> source;
        String now;
        try {
            source = source();
            if (source.isEmpty()) {
                return;
            }
            now = AdviceJson.write(advise(source.get().base()));
        } catch (InputException e) {
            say(false, "", "CANNOT BE REPLAYED: " + e.getMessage());
            return;
        }
        lines.add("Rules: " + source.get().from() + ".");
        Replay replay = new Replay(kept.advice(), now);
        String revision = "revision " + kept.revision();
        if (replay.same()) {
            say(
                    source.get().vouched(),
                    "Replayed: the same advice, byte for byte, on " + revision + ".",
                    "Replays on unvouched rules: the same advice, but no signature vouches for these rules. This proves nothing.");
        } else if (replay.sameInOldForm()) {
            say(
                    source.get().vouched(),
                    "Replayed: the same answer from the same steps, in the old form of advice, on " + revision + ".",
                    "Replays on unvouched rules: no signature vouches for these rules. This proves nothing.");
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

    /** The rules to replay on; says so when there are none. */
    private Optional<Source> source() {
        RuleBase own = program.apply(kept.code());
        boolean ownRevision = own.book().revision().equals(kept.revision());
        if (rules.isPresent()) {
            RuleBase named = RuleBase.compiled(RuleFolder.at(rules.get()), kept.code());
            boolean vouched = named.book().revision().equals(own.book().revision());
            return Optional.of(new Source(named, "the folder " + rules.get(), vouched));
        }
        if (ownRevision) {
            return Optional.of(new Source(own, "those of this program", true));
        }
        Path chain = kept.file().toAbsolutePath().getParent();
        if (!KeptRules.there(chain, kept.revision())) {
            say(
                    false,
                    "",
                    "CANNOT BE REPLAYED HERE: this program has revision "
                            + own.book().revision() + ", the advice names " + kept.revision()
                            + ", and no rules of that name lie beside it.");
            return Optional.empty();
        }
        Path archive = KeptRules.of(chain, kept.revision());
        Optional<String> fault = key.isPresent()
                ? Signatures.fault(archive, key.get())
                : Optional.of("no key was given to check their signature");
        // Whoever vouches for them: what is beyond the language of rules is refused before anything of it runs.
        RuleBase base = RuleBase.compiled(KeptRules.read(archive, kept.code(), kept.revision()), kept.code());
        return Optional.of(new Source(
                base,
                fault.map(f -> "kept beside the advice; " + f).orElse("kept beside the advice, signed with this key"),
                fault.isEmpty()));
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
            throw new InputException(new org.fumewarden.codes.Problem(
                    kept.file().toString(), 0, "on", "is no date.", "take the file from a copy."));
        }
    }
}
