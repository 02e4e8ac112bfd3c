package org.fumewarden.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.PrivateKey;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.audit.Audit;
import org.fumewarden.audit.Chain;
import org.fumewarden.audit.Keeper;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.audit.RulesAtHand;
import org.fumewarden.audit.Signatures;
import org.fumewarden.audit.Witness;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Advises on a described task. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description =
                "Advises on a described task: what to wear, what is not suitable and why, which checks are due, what is still open.",
        footer = {"", "Example:", "  fumewarden advise scenarios/tours/stainless-brackets.yaml"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:the advice is complete",
            "1:a fault of the program",
            "2:wrong input; the message says where",
            "3:incomplete, in conflict, do not enter, or the unit that the task speaks of is not for use"
        })
final class AdviseCommand implements Callable<Integer> {
    /** How the sheet is written. */
    enum Format {
        text,
        json,
        html,
        pdf
    }

    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON.")
    private Path file;

    @Option(names = "--format", description = "${COMPLETION-CANDIDATES}; text when not given.", defaultValue = "text")
    private Format format;

    @Option(
            names = "--keep",
            paramLabel = "FOLDER",
            description = "Keeps the advice there, chained to what was kept before.")
    private Path keep;

    @Option(
            names = "--sign-with",
            paramLabel = "PEM",
            description = "Signs what is kept with this Ed25519 private key.")
    private Path key;

    @Option(
            names = "--witness",
            paramLabel = "FILE",
            description =
                    "Notes the new last hash there, signed; keep it in another place. Needs --keep and --sign-with.")
    private Path witness;

    @Option(
            names = "--output",
            paramLabel = "FILE",
            description = "Writes to a file instead of standard output; a PDF needs one.")
    private Path output;

    @Option(names = "--force", description = "Replaces the file of --output when it is there already.")
    private boolean force;

    @Option(
            names = "--detail",
            description = "Adds all that the page rests on: every reason, class, duty, caution and clause.")
    private boolean detail;

    @Mixin
    private LanguageOption language;

    @Mixin
    private RegisterOption register;

    @Mixin
    private TaskOptions options;

    @Spec
    private CommandSpec spec;

    private Optional<String> foreign = Optional.empty();
    private Optional<String> changed = Optional.empty();

    @Override
    public Integer call() {
        language.words();
        admit();
        Bench bench = register.with(options.bench(file), spec.commandLine().getErr());
        Words words = language.words();
        Bench asked = format == Format.json ? language.speaking(bench) : bench;
        Advice advice = asked.advise();
        CodeBook book = bench.book();
        foreign = options.foreign(book);
        changed = options.changed(book);
        if (format == Format.json) {
            changed.ifPresent(f -> spec.commandLine().getErr().println(words.say("sheet.foreign-rules", f)));
        }
        Optional<OutputFile> place = Optional.ofNullable(output).map(o -> new OutputFile("--output", o, force)
                .sparing(file, register.file(), key)
                .admit());
        if (keep != null) {
            keep(bench, asked == bench ? advice : bench.advise());
        }
        byte[] sheet = sheet(bench, advice);
        place.ifPresentOrElse(p -> p.write(sheet), () -> print(sheet));
        boolean usable = advice.unit().filter(UnitInHand::barred).isEmpty();
        return advice.status() == Status.COMPLETE && usable && !register.damaged()
                ? ExitCodes.COMPLETE
                : ExitCodes.NOT_SETTLED;
    }

    /** What would go wrong with keeping, before anything is reckoned. */
    private void admit() {
        for (Map.Entry<String, Boolean> needs :
                Map.of("--sign-with", key != null, "--witness", witness != null).entrySet()) {
            if (needs.getValue() && keep == null) {
                throw wrong(needs.getKey(), "is for advice that is kept, and none is kept.", "add --keep FOLDER.");
            }
        }
        if (witness != null && key == null) {
            throw wrong("--witness", "is a signed list, and no key was given to sign with.", "add --sign-with PEM.");
        }
        if (format == Format.pdf && output == null) {
            throw wrong("--format", "pdf writes no text to standard output.", "add --output sheet.pdf.");
        }
    }

    private static InputException wrong(String field, String message, String maybe) {
        return new InputException(new Problem(field, 0, "", message, maybe));
    }

    private void keep(Bench bench, Advice advice) {
        Optional<PrivateKey> secret = Optional.ofNullable(key).map(Signatures::secret);
        Optional<Witness> other = Optional.ofNullable(witness).map(Witness::new);
        other.ifPresent(w -> w.admit(keep, secret.orElseThrow()));
        CodeBook book = bench.book();
        lastHolds(book, secret);
        Path kept = new Keeper(keep)
                .keep(
                        bench.tree(Map.of()).plain(),
                        AdviceJson.write(advice),
                        InstantSource.system(),
                        new Keeper.Source(Main.VERSION, options.folder(), book.folders(), foreign),
                        secret);
        other.ifPresent(w -> w.saw(KeptAdvice.read(kept), secret.orElseThrow()));
        spec.commandLine().getErr().println("Kept as " + kept);
    }

    /** Nothing grows on advice that these same rules do not give. */
    private void lastHolds(CodeBook book, Optional<PrivateKey> secret) {
        Optional<KeptAdvice> last =
                new Chain(keep).last().filter(e -> e.review().isEmpty());
        if (last.isPresent() && last.get().revision().equals(book.revision())) {
            RulesAtHand rules = new RulesAtHand(
                    id -> options.advisor(id).base(), Optional.empty(), secret.map(Signatures::open), true);
            Audit.Outcome replayed = new Audit(last.get(), rules).replayed();
            if (!replayed.good()) {
                throw wrong(
                        last.get().file().toString(),
                        "is the last entry and not what the rules give: " + String.join(" ", replayed.lines())
                                + " Nothing is added to it.",
                        "audit it, find out how it came to differ, and begin a new folder.");
            }
        }
    }

    private byte[] sheet(Bench bench, Advice advice) {
        return switch (format) {
            case json ->
                AdviceJson.write(advice, changed, language.speech(bench)).getBytes(StandardCharsets.UTF_8);
            case text -> TextForm.write(paper(bench, advice)).getBytes(StandardCharsets.UTF_8);
            case html -> HtmlForm.write(paper(bench, advice)).getBytes(StandardCharsets.UTF_8);
            case pdf -> PdfSheet.write(HtmlForm.write(paper(bench, advice)));
        };
    }

    private Sheet paper(Bench bench, Advice advice) {
        Words words = language.words();
        Sheet sheet = AdviceSheet.of(bench, advice, words, detail);
        return changed.map(f -> sheet.under(words.say("sheet.foreign-rules", f)))
                .orElse(sheet);
    }

    private void print(byte[] sheet) {
        spec.commandLine().getOut().print(new String(sheet, StandardCharsets.UTF_8));
        spec.commandLine().getOut().flush();
    }
}
