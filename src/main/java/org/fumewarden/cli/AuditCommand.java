package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.Audit;
import org.fumewarden.audit.Chain;
import org.fumewarden.audit.ChainAudit;
import org.fumewarden.audit.CourtReport;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.Reviewed;
import org.fumewarden.audit.RulesAtHand;
import org.fumewarden.audit.Signatures;
import org.fumewarden.audit.Witness;
import org.fumewarden.codes.Hidden;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.PdfSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks kept advice: bytes, signatures, order of entries, and the same advice from the rules that decided. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description =
                "Checks kept advice: finds any changed byte, any missing or added entry, any wrong signature, and replays the advice on the rules that decided.",
        footer = {"", "Example:", "  fumewarden audit kept/00000001.kept.json"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:everything that was checked is in order",
            "2:wrong input",
            "3:something is damaged, differs, is unsigned, or cannot be replayed here"
        })
final class AuditCommand implements Callable<Integer> {
    /** How the report on one file is written. */
    enum Format {
        text,
        html,
        pdf
    }

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A file that advise --keep wrote.")
    private Path file;

    @Option(names = "--chain", paramLabel = "FOLDER", description = "Checks every entry of a folder of kept advice.")
    private Path chain;

    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description =
                    "Replays on the rules of this folder, which then vouch for nothing unless they are this program's.")
    private Path rules;

    @Option(
            names = "--public-key",
            paramLabel = "PEM",
            description = "Checks every signature with this key: of entries, of kept rules, of the witness.")
    private Path publicKey;

    @Option(
            names = "--expect",
            paramLabel = "HASH",
            description = "A last hash that was noted elsewhere: the chain must still contain the entry.")
    private String expect;

    @Option(
            names = "--witness",
            paramLabel = "FILE",
            description = "The list of last hashes that advise --witness wrote; needs --public-key.")
    private Path witness;

    @Option(
            names = "--format",
            description =
                    "${COMPLETION-CANDIDATES}; html and pdf write out the whole advice, step by step, for a reader without this program.",
            defaultValue = "text")
    private Format format;

    @Option(names = "--output", paramLabel = "FILE", description = "Writes the report to a file; a PDF needs one.")
    private Path output;

    @Option(
            names = "--no-replay",
            description =
                    "With --chain: checks order, signatures and reviews alone, and says that nothing was replayed.")
    private boolean noReplay;

    @Option(
            names = "--vouch-for-rules",
            description =
                    "You answer for rules beside the chain that are not this program's and that the key signed: earlier rules, or your own.")
    private boolean vouched;

    @Option(names = "--force", description = "Replaces the file of --output when it is there already.")
    private boolean force;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        admit();
        Optional<OutputFile> place = Optional.ofNullable(output).map(o -> new OutputFile("--output", o, force)
                .sparing(file, publicKey, witness)
                .admit());
        Optional<PublicKey> key = Optional.ofNullable(publicKey).map(Signatures::open);
        RulesAtHand rulesAtHand = new RulesAtHand(RuleBase::shipped, Optional.ofNullable(rules), key, vouched);
        List<String> lines = new ArrayList<>();
        boolean good = chain == null || chain(rulesAtHand, lines);
        String report = "";
        if (file != null) {
            KeptAdvice kept = KeptAdvice.read(file);
            List<Reviewed> reviews = new ArrayList<>();
            good &= around(kept, key, reviews, lines);
            Audit.Outcome outcome = new Audit(kept, rulesAtHand).run(Instant.now());
            lines.addAll(outcome.lines());
            for (Reviewed review : reviews) {
                lines.add(review.says());
                good &= review.good();
            }
            good &= outcome.good();
            lines.replaceAll(AuditCommand::plain);
            report = format == Format.text || kept.review().isPresent()
                    ? ""
                    : CourtReport.write(kept, reviews, lines, rulesAtHand);
        }
        lines.replaceAll(AuditCommand::plain);
        write(place, report, lines);
        return good ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    /** A finding is one line whatever the file holds; only what to do about it begins another. */
    private static String plain(String line) {
        return line.lines().map(Hidden::shown).collect(Collectors.joining("\n"));
    }

    private void admit() {
        if (chain == null && file == null) {
            throw wrong("audit", "names nothing to audit.", "a kept file, or --chain with a folder.");
        }
        if (chain == null && (expect != null || witness != null)) {
            throw wrong(expect != null ? "--expect" : "--witness", "is about a whole chain.", "add --chain FOLDER.");
        }
        if (expect != null && !expect.strip().matches("[0-9a-fA-F]{64}")) {
            throw wrong(
                    "--expect", "is no hash: it must have 64 figures from 0 to 9 and a to f.", "copy the whole hash.");
        }
        if (witness != null && publicKey == null) {
            throw wrong("--witness", "is signed, and no key was given to check it.", "add --public-key PEM.");
        }
        if (vouched && publicKey == null) {
            throw wrong("--vouch-for-rules", "is for rules that your key signed.", "add --public-key PEM.");
        }
        if (chain != null && !Files.isDirectory(chain)) {
            throw wrong(chain.toString(), "is not a folder.", "the folder that --keep was given.");
        }
        if (format == Format.pdf && output == null) {
            throw wrong("--format", "pdf writes no text to standard output.", "add --output report.pdf.");
        }
    }

    private void write(Optional<OutputFile> place, String report, List<String> lines) {
        String text = report.isEmpty() ? String.join("\n", lines) + "\n" + Advice.CLOSING + "\n" : report;
        byte[] bytes = format == Format.pdf && !report.isEmpty()
                ? PdfSheet.write(report)
                : text.getBytes(StandardCharsets.UTF_8);
        PrintWriter out = spec.commandLine().getOut();
        if (place.isPresent()) {
            place.get().write(bytes);
            lines.forEach(out::println);
        } else {
            out.print(text);
        }
        out.flush();
    }

    private boolean chain(RulesAtHand rulesAtHand, List<String> lines) {
        PrintWriter err = spec.commandLine().getErr();
        Audit.Outcome outcome = new ChainAudit(chain, rulesAtHand)
                .run(
                        Instant.now(),
                        Optional.ofNullable(expect).map(e -> e.strip().toLowerCase(Locale.ROOT)),
                        Optional.ofNullable(witness).map(Witness::new),
                        !noReplay,
                        err::println);
        lines.addAll(outcome.lines());
        return outcome.good();
    }

    /** Takes what persons said of an entry from the chain around it, when that is whole. */
    private static boolean around(
            KeptAdvice kept, Optional<PublicKey> key, List<Reviewed> reviews, List<String> lines) {
        Chain around = new Chain(kept.file().toAbsolutePath().getParent());
        Optional<String> broken = around.firstBrokenLink();
        if (broken.isPresent()) {
            lines.add("The chain around this entry is BROKEN at " + broken.get() + ", so no review is taken from it.");
            return false;
        }
        reviews.addAll(Reviewed.of(kept, around.entries(), key));
        return true;
    }

    private static InputException wrong(String field, String message, String maybe) {
        return new InputException(new Problem(field, 0, "", message, maybe));
    }
}
