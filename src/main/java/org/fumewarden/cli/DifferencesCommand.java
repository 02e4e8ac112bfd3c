package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.audit.KeptAdvice;
import org.fumewarden.report.AdviceReader;
import org.fumewarden.report.MovedText;
import org.fumewarden.report.WhatIfText;
import org.fumewarden.report.html.Speech;
import org.fumewarden.whatif.Differences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares two pieces of advice. */
@Command(
        name = "differences",
        aliases = "diff",
        mixinStandardHelpOptions = true,
        description = "Compares two files of advice, conclusion by conclusion, with the reasons.",
        footer = {"", "Example:", "  fumewarden differences kept/00000001.kept.json kept/00000002.kept.json"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:nothing moves", "2:wrong input", "3:something moves"})
final class DifferencesCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "A", description = "Advice as JSON, or kept advice.")
    private Path first;

    @Parameters(index = "1", paramLabel = "B", description = "Advice as JSON, or kept advice.")
    private Path second;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Advice before = AdviceReader.read(first);
        Advice after = AdviceReader.read(second);
        warn(first);
        warn(second);
        PrintWriter out = spec.commandLine().getOut();
        WhatIfText text = new WhatIfText(Speech.ENGLISH);
        out.print(MovedText.write(before, after, id -> id.replace('-', ' '), text));
        out.print(text.closing(before, after));
        out.flush();
        return Differences.between(before, after).isEmpty() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    /** Advice that was kept and changed since is compared all the same, but never in silence. */
    private void warn(Path file) {
        if (KeptAdvice.isKept(file) && !KeptAdvice.read(file).intact()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println("DAMAGED: " + file + ": the bytes do not match the hash. What it says is not what was kept.");
            err.flush();
        }
    }
}
