package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.Audit;
import org.fumewarden.audit.CourtReport;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.Review;
import org.fumewarden.audit.Signatures;
import org.fumewarden.audit.Witness;
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
            "0:everything that was checked holds",
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
            description = "A last hash that was noted elsewhere: the chain must still hold the entry.")
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

    @Option(names = "--force", description = "Replaces the file of --output when it is there already.")
    private boolean force;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (chain == null && file == null) {
            throw wrong("audit", "names nothing to audit.", "a kept file, or --chain with a folder.");
        }
        if (chain == null && (expect != null || witness != null)) {
            throw wrong(expect != null ? "--expect" : "--witness", "is about a whole chain.", "add --chain FOLDER.");
        }
        if (witness != null && publicKey == null) {
            throw wrong("--witness", "is signed, and no key was given to check it.", "add --public-key PEM.");
        }
        if (format == Format.pdf && output == null) {
            throw wrong("--format", "pdf writes no text to standard output.", "add --output report.pdf.");
        }
        Optional<OutputFile> place = Optional.ofNullable(output).map(o -> new OutputFile("--output", o, force)
                .sparing(file, publicKey, witness)
                .admit());
        Optional<PublicKey> key = Optional.ofNullable(publicKey).map(Signatures::open);
        List<String> lines = new ArrayList<>();
        boolean good = chain == null || chain(key, lines);
        String report = "";
        if (file != null) {
            KeptAdvice kept = KeptAdvice.read(file);
            Audit.Outcome outcome = new Audit(kept, RuleBase::shipped, Optional.ofNullable(rules), key).run();
            List<Review> reviews = reviews(kept, lines);
            lines.addAll(outcome.lines());
            reviews.forEach(r -> lines.add("Review: " + r.says()));
            good &= outcome.good();
            report = format == Format.text || kept.review().isPresent() ? "" : CourtReport.write(kept, reviews, lines);
        }
        write(place, report, lines);
        return good ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
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

    private boolean chain(Optional<PublicKey> key, List<String> lines) {
        if (!Files.isDirectory(chain)) {
            throw wrong(chain.toString(), "is not a folder.", "the folder that --keep was given.");
        }
        Keeper keeper = new Keeper(chain);
        Optional<String> broken = keeper.firstBrokenLink();
        if (broken.isPresent()) {
            lines.add("BROKEN at " + broken.get() + ".");
            return false;
        }
        List<KeptAdvice> entries = keeper.entries();
        String last = entries.get(entries.size() - 1).hash();
        lines.add("Unbroken: " + entries.size() + " entries, each follows the one before. Last hash " + last
                + ": note it elsewhere, since a cut-off end leaves no trace here.");
        boolean good = true;
        if (key.isPresent()) {
            Optional<String> unsigned = keeper.firstUnsigned(key.get());
            lines.add(unsigned.map(u -> "NOT SIGNED by this key: " + u + ".")
                    .orElse("Signed: the signature of every entry fits the key."));
            good = unsigned.isEmpty();
        }
        if (expect != null) {
            Optional<KeptAdvice> found =
                    entries.stream().filter(e -> e.hash().equals(expect)).findFirst();
            lines.add(
                    found.map(e -> "Expected: entry " + e.sequence() + " has the hash that was noted.")
                            .orElse(
                                    "MISSING: no entry has the hash that was noted. The end was cut off, or the chain was written anew."));
            good &= found.isPresent();
        }
        if (witness != null) {
            Optional<String> against = new Witness(witness).against(entries, key.orElseThrow());
            lines.add(against.map(a -> "THE WITNESS SPEAKS AGAINST IT: " + a + ".")
                    .orElse("Witnessed: every entry that the witness saw is still there."));
            good &= against.isEmpty();
        }
        return good;
    }

    /** What persons said of an entry, as far as the chain around it is whole. */
    private static List<Review> reviews(KeptAdvice kept, List<String> lines) {
        Keeper keeper = new Keeper(kept.file().toAbsolutePath().getParent());
        Optional<String> broken = keeper.firstBrokenLink();
        if (broken.isPresent()) {
            lines.add("The chain around this entry is broken at " + broken.get() + ", so no review is taken from it.");
            return List.of();
        }
        return keeper.entries().stream()
                .flatMap(e -> e.review().stream())
                .filter(r -> r.of().equals(kept.hash()))
                .toList();
    }

    private static InputException wrong(String field, String message, String maybe) {
        return new InputException(new Problem(field, 0, "", message, maybe));
    }
}
