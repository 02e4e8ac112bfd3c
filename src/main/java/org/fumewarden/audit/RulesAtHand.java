package org.fumewarden.audit;

import java.nio.file.Path;
import java.security.PublicKey;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Hidden;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;

/** Where the rules for a replay come from: the program, a folder that the user names, or the archive beside the chain. */
public final class RulesAtHand {
    private final Function<String, RuleBase> program;
    private final Optional<Path> named;
    private final Optional<PublicKey> key;
    private final boolean vouched;
    private final Map<String, RuleBase> opened = new HashMap<>();
    private final Map<String, RuleFolder> archives = new HashMap<>();

    /**
     * The rules at hand.
     *
     * @param program gives the rules of this program
     * @param named a folder of rules that the user names
     * @param key checks the signature of rules beside the chain
     * @param vouched true when the user vouches for rules beside the chain that this key signed
     */
    public RulesAtHand(
            Function<String, RuleBase> program, Optional<Path> named, Optional<PublicKey> key, boolean vouched) {
        this.program = program;
        this.named = named;
        this.key = key;
        this.vouched = vouched;
    }

    /**
     * Rules for a replay.
     *
     * @param from where they come from, in words
     * @param doubt why nobody vouches for them, in words; empty when somebody does
     */
    record Source(RuleBase base, String from, Optional<String> doubt) {}

    Optional<PublicKey> key() {
        return key;
    }

    /** The revision that this program has of a code. */
    String ownRevision(String code) {
        return own(code).book().revision();
    }

    /** The book of the rules that decided, or of this program where they are not at hand. */
    CodeBook book(KeptAdvice kept) {
        try {
            return source(kept)
                    .map(Source::base)
                    .orElseGet(() -> own(kept.code()))
                    .book();
        } catch (InputException e) {
            return own(kept.code()).book();
        }
    }

    private RuleBase own(String code) {
        return opened.computeIfAbsent("own " + code, c -> program.apply(code));
    }

    /** The rules to replay a piece of advice on; empty when there are none. */
    Optional<Source> source(KeptAdvice kept) {
        String code = kept.code();
        if (named.isPresent()) {
            RuleBase base = opened.computeIfAbsent(
                    "named " + code + " " + kept.revision(), c -> RuleBase.compiled(named(named.get(), kept), code));
            boolean own = base.book().revision().equals(ownRevision(code));
            return Optional.of(new Source(
                    base,
                    "the folder " + named.get() + (own ? "" : ", not the rules of this program"),
                    own ? Optional.empty() : Optional.of("no signature vouches for these rules")));
        }
        if (ownRevision(code).equals(kept.revision())) {
            return Optional.of(new Source(own(code), "those of this program", Optional.empty()));
        }
        Path chain = kept.file().toAbsolutePath().getParent();
        return KeptRules.there(chain, kept.revision()) ? Optional.of(beside(chain, kept)) : Optional.empty();
    }

    /** A folder under the revision of the advice, where it is the same that an earlier program named so. */
    private static RuleFolder named(Path place, KeptAdvice kept) {
        RuleFolder folder = RuleFolder.at(place);
        RuleFolder before = folder.asBefore();
        return CodeBook.read(before, kept.code()).revision().equals(kept.revision()) ? before : folder;
    }

    private Source beside(Path chain, KeptAdvice kept) {
        Path archive = KeptRules.of(chain, kept.revision());
        Optional<String> unsigned = key.isPresent()
                ? Signatures.fault(archive, key.get())
                : Optional.of("no key was given to check their signature");
        // Whoever vouches for them: what is beyond the language of rules is refused before anything of it runs.
        String name = archive + " " + kept.code() + " " + kept.foreignRules();
        RuleFolder folder = archives.computeIfAbsent(name, n -> KeptRules.read(archive, kept));
        RuleBase base = opened.computeIfAbsent(name, n -> RuleBase.compiled(folder, kept.code()));
        String from = "kept beside the advice, not the rules of this program"
                + kept.foreignRules()
                        .map(f -> " nor of the one that kept it (folder " + Hidden.quoted(f) + ")")
                        .orElse("")
                + (folder.isBefore()
                        ? "; an earlier program kept them without any affirmations.yaml or typed-apart.csv beside them, so"
                                + " where the advice differs, add --rules and the folder that had those files"
                        : "")
                + "; "
                + unsigned.orElse("signed with this key");
        Optional<String> doubt = unsigned.isPresent()
                ? Optional.of("no signature vouches for these rules")
                : vouched
                        ? Optional.empty()
                        : Optional.of(
                                "they are not the rules of this program; say --vouch-for-rules when they are earlier"
                                        + " rules or rules of your own that you answer for");
        return new Source(base, from, doubt);
    }
}
