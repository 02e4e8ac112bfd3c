package org.fumewarden.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.Review;
import org.fumewarden.audit.Signatures;
import org.fumewarden.audit.Witness;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
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
                "Keeps what a person says of kept advice, in the same chain: agreed, disagreed, or decided stricter. A decision that is milder than the advice is kept as a disagreement; the advice stands.",
        footer = {
            "",
            "Example:",
            "  fumewarden review kept/00000001.kept.json --verdict agreed --reason \"seen on site\" --by \"R. Tarn\" --capacity \"safety officer\""
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

    @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "Why.")
    private String reason;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who.")
    private String by;

    @Option(
            names = "--capacity",
            required = true,
            paramLabel = "TEXT",
            description = "As what, such as safety officer.")
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
        if (!kept.intact() || kept.review().isPresent()) {
            throw wrong(
                    file.toString(),
                    kept.intact() ? "is a review itself." : "is damaged: its bytes do not match its hash.",
                    "name an entry of advice that audit finds intact.");
        }
        if (witness != null && key == null) {
            throw wrong("--witness", "is a signed list, and no key was given to sign with.", "add --sign-with PEM.");
        }
        Advice advice = AdviceReader.read(file);
        Review said = new Review(
                kept.hash(),
                verdict(),
                deviceClass,
                Optional.ofNullable(factor),
                filled("--reason", reason),
                filled("--by", by),
                filled("--capacity", capacity));
        if (!deviceClass.isEmpty()
                && advice.respirators().stream().noneMatch(r -> r.deviceClass().equals(deviceClass))) {
            throw wrong(
                    "--class", "\"" + deviceClass + "\" is no class of this advice.", "take an id from the advice.");
        }
        if (said.verdict() == Review.Verdict.STRICTER && deviceClass.isEmpty()) {
            throw wrong("--verdict", "is stricter, and no class is named.", "add --class ID, and --factor.");
        }
        Optional<PrivateKey> secret = Optional.ofNullable(key).map(Signatures::secret);
        Review review = said.against(advice);
        Path entry = new Keeper(file.toAbsolutePath().getParent()).keep(review, Instant.now(), secret);
        if (witness != null) {
            new Witness(witness).saw(KeptAdvice.read(entry), secret.orElseThrow());
        }
        boolean taken = review.verdict() == said.verdict();
        spec.commandLine().getOut().println(review.says());
        if (!taken) {
            spec.commandLine()
                    .getOut()
                    .println(
                            "This is not stricter than the advice, so it is kept as a disagreement and the advice stands.");
        }
        spec.commandLine().getOut().println(Advice.CLOSING);
        spec.commandLine().getErr().println("Kept as " + entry);
        return taken ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    private Review.Verdict verdict() {
        return Review.Verdict.named(verdict)
                .orElseThrow(() ->
                        wrong("--verdict", "\"" + verdict + "\" is no verdict.", "agreed, disagreed or stricter."));
    }

    private static String filled(String option, String text) {
        if (text.isBlank()) {
            throw wrong(option, "is empty.", "say it in words.");
        }
        return text.strip();
    }

    private static InputException wrong(String field, String message, String maybe) {
        return new InputException(new Problem(field, 0, "", message, maybe));
    }
}
