package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.Replay;
import org.fumewarden.audit.Signatures;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.task.TaskReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Replays kept advice and checks that nobody changed it. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description =
                "Replays kept advice: says same, or shows the first difference; finds any changed byte and the first broken link of a chain.",
        footer = {"", "Example:", "  fumewarden audit kept/00000001.kept.json"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:same and unbroken", "2:wrong input", "3:damaged, or not the same"})
final class AuditCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A file that advise --keep wrote.")
    private Path file;

    @Option(names = "--chain", paramLabel = "FOLDER", description = "Checks every link of a folder of kept advice.")
    private Path chain;

    @Option(names = "--rules", paramLabel = "DIR", description = "Replays on the rules of this folder.")
    private Path rules;

    @Option(names = "--public-key", paramLabel = "PEM", description = "Checks the signature with this key.")
    private Path publicKey;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (chain == null && file == null) {
            throw new InputException(
                    new Problem("audit", 0, "", "names nothing to audit.", "a kept file, or --chain with a folder."));
        }
        boolean good = true;
        if (chain != null) {
            good = chain(out);
        }
        if (file != null) {
            good &= file(out);
        }
        out.println(Advice.CLOSING);
        out.flush();
        return good ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    private boolean chain(PrintWriter out) {
        if (!Files.isDirectory(chain)) {
            throw new InputException(
                    new Problem(chain.toString(), 0, "", "is not a folder.", "the folder that --keep was given."));
        }
        Keeper keeper = new Keeper(chain);
        Optional<String> broken = keeper.firstBrokenLink();
        out.println(broken.map(b -> "BROKEN at " + b + ".")
                .orElseGet(
                        () -> "Unbroken: " + keeper.files().size() + " entries, each follows the one before. Last hash "
                                + keeper.lastHash() + ": note it elsewhere, since a cut-off end leaves no trace."));
        return broken.isEmpty();
    }

    private boolean file(PrintWriter out) {
        KeptAdvice kept = KeptAdvice.read(file);
        boolean intact = kept.intact();
        out.println(
                intact
                        ? "Intact: the bytes match the hash " + kept.hash() + "."
                        : "DAMAGED: the bytes do not match the hash.");
        boolean signed = publicKey == null || Signatures.verify(file, publicKey);
        if (publicKey != null) {
            out.println(signed ? "Signed: the signature fits the key." : "NOT SIGNED by this key, or changed since.");
        }
        return replay(kept, out) & intact & signed;
    }

    private boolean replay(KeptAdvice kept, PrintWriter out) {
        RuleBase base =
                rules == null ? RuleBase.shipped(kept.code()) : RuleBase.compiled(RuleFolder.at(rules), kept.code());
        Advice now = new Advisor(base)
                .advise(new TaskReader(base.book().vocabulary())
                        .read(
                                YamlFiles.parse(file.toString(), kept.task()),
                                kept.code(),
                                Optional.of(LocalDate.parse(kept.on()))));
        Replay replay = new Replay(kept.advice(), AdviceJson.write(now));
        if (replay.same()) {
            out.println("Replayed: same advice, byte for byte, on revision "
                    + kept.revision().substring(0, 16) + ".");
            return true;
        }
        out.println(
                replay.sameRevision()
                        ? "NOT THE SAME, though the revision is the same:"
                        : "Replayed on another revision: kept "
                                + kept.revision().substring(0, 16) + ", now "
                                + now.revision().substring(0, 16) + ".");
        replay.firstDifference().ifPresent(d -> out.println("First difference: " + d));
        List<String> changes = replay.changedRulesAndRows();
        changes.forEach(c -> out.println("  " + c));
        if (changes.isEmpty()) {
            out.println("No rule and no row that decided this advice has changed.");
        }
        return !replay.sameRevision() && changes.isEmpty();
    }
}
