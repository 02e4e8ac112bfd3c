package org.fumewarden.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.Audit;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.Review;
import org.fumewarden.audit.RulesAtHand;
import org.fumewarden.audit.Signatures;
import org.fumewarden.audit.Witness;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Keyed;
import org.fumewarden.report.AdviceReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keeps what a person says of kept advice. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description =
                "Records a reviewer's verdict on kept advice, in the same chain: agreed, disagreed, or decided stricter. A decision that is milder than the advice is kept as a disagreement; the advice stands.",
        footer = {
            "",
            "Example:",
            "  fumewarden review kept/00000001.kept.json \\",
            "    --verdict agreed --reason \"seen on site\" \\",
            "    --by \"R. Tarn\" --capacity \"safety officer\""
        },
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:kept", "2:wrong input; nothing is kept", "3:kept as a disagreement, since it is milder"})
final class ReviewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "A file that advise --keep wrote, in its folder.")
    private Path file;

    @Option(names = "--verdict", required = true, paramLabel = "WORD", description = "agreed, disagreed or stricter.")
    private String verdict;

    @Option(names = "--class", paramLabel = "ID", defaultValue = "", description = "The class decided on, such as tm3.")
    private String deviceClass;

    @Option(names = "--factor", paramLabel = "NUMBER", description = "The protection factor decided on.")
    private BigDecimal factor;

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Reason for the verdict.")
    private String reason;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Name of the reviewer.")
    private String by;

    @Option(
            names = "--capacity",
            required = true,
            paramLabel = "TEXT",
            description = "Position of the reviewer, such as safety officer.")
    private String capacity;

    @Option(names = "--sign-with", paramLabel = "PEM", description = "Signs the entry with this Ed25519 private key.")
    private Path key;

    @Option(
            names = "--witness",
            paramLabel = "FILE",
            description = "Notes the new last hash there, signed; keep it in another place. Needs --sign-with.")
    private Path witness;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        KeptAdvice kept = KeptAdvice.read(file);
        if (kept.review().isPresent()) {
            throw wrong(file.toString(), "is a review itself.", "name the entry of advice that it speaks of.");
        }
        if (witness != null && key == null) {
            throw wrong("--witness", "is a signed list, and no key was given to sign with.", "add --sign-with PEM.");
        }
        Review said = new Review(
                kept.hash(),
                verdict(),
                deviceClass,
                Optional.ofNullable(factor).map(this::factor),
                worded("--reason", reason),
                worded("--by", by),
                worded("--capacity", capacity));
        Optional<PrivateKey> secret = Optional.ofNullable(key).map(Signatures::secret);
        admit(kept, secret);
        Advice advice = AdviceReader.read(file);
        Optional<String> milder = milder(said, advice);
        Review review = milder.isPresent() ? said.asDisagreement() : said;
        Path folder = file.toAbsolutePath().getParent();
        Optional<Witness> other = Optional.ofNullable(witness).map(Witness::new);
        other.ifPresent(w -> w.admit(folder, secret.orElseThrow()));
        Path entry = new Keeper(folder).keep(review, InstantSource.system(), secret);
        other.ifPresent(w -> w.saw(KeptAdvice.read(entry), secret.orElseThrow()));
        PrintWriter out = spec.commandLine().getOut();
        out.println(review.says());
        milder.ifPresent(m -> out.println("This is not stricter than the advice: " + m
                + ". So it is kept as a disagreement and the advice stands."));
        out.println(Advice.CLOSING);
        spec.commandLine().getErr().println("Kept as " + entry);
        return milder.isEmpty() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    /** Nobody reviews what is damaged, or what the rules do not give. */
    private void admit(KeptAdvice kept, Optional<PrivateKey> secret) {
        if (!kept.intact()) {
            throw wrong(
                    file.toString(),
                    "is damaged: its bytes do not match its hash.",
                    "name an entry of advice that audit finds intact.");
        }
        RulesAtHand rules =
                new RulesAtHand(RuleBase::shipped, Optional.empty(), secret.map(Signatures::open), secret.isPresent());
        Audit.Outcome replayed = new Audit(kept, rules).replayed();
        if (!replayed.good()) {
            throw wrong(
                    file.toString(),
                    "is not what the rules give here: " + String.join(" ", replayed.lines()) + " Nothing is kept.",
                    "audit it with --rules and the folder that decided: rules may have changed or be missing here.");
        }
    }

    /** Why a decision that calls itself stricter is not; refuses what contradicts itself. */
    private Optional<String> milder(Review said, Advice advice) {
        boolean decides = !deviceClass.isEmpty() || factor != null;
        if (said.verdict() == Review.Verdict.AGREED && decides) {
            throw wrong(
                    factor != null ? "--factor" : "--class",
                    "is a decision of your own, and the verdict is agreed.",
                    "leave it out, or say disagreed or stricter.");
        }
        if (!deviceClass.isEmpty()
                && advice.respirators().stream().noneMatch(r -> r.deviceClass().equals(deviceClass))) {
            throw wrong(
                    "--class", "\"" + deviceClass + "\" is no class of this advice.", "take an id from the advice.");
        }
        if (said.verdict() != Review.Verdict.STRICTER) {
            return Optional.empty();
        }
        if (deviceClass.isEmpty()) {
            throw wrong("--verdict", "is stricter, and no class is named.", "add --class ID, and --factor.");
        }
        Optional<String> not = said.notStricter(advice);
        if (not.filter(Review::same).isPresent()) {
            throw wrong("--verdict", "is stricter, but " + not.get() + ". Nothing is kept.", "say agreed.");
        }
        return not;
    }

    private BigDecimal factor(BigDecimal given) {
        if (!Review.factorMeant(given.toString())) {
            throw wrong(
                    "--factor",
                    "is no protection factor: it must be a number from 1 to 100000.",
                    "write it in figures, such as 40.");
        }
        return given;
    }

    private Review.Verdict verdict() {
        return Keyed.find(Review.Verdict.class, verdict)
                .orElseThrow(() -> wrong(
                        "--verdict",
                        "\"" + Located.shown(verdict) + "\" is no verdict.",
                        "agreed, disagreed or stricter."));
    }

    private static String worded(String option, String text) {
        String bare = text.strip();
        Review.wording(bare).ifPresent(w -> {
            throw wrong(option, w + ".", "say it in words, in one line.");
        });
        return bare;
    }

    private static InputException wrong(String field, String message, String maybe) {
        return new InputException(new Problem(field, 0, "", message, maybe));
    }
}
