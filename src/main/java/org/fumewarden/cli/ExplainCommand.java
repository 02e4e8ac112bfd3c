package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Suitability;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.Lever;
import org.fumewarden.report.WhatIfText;
import org.fumewarden.trail.Step;
import org.fumewarden.whatif.AnswerValue;
import org.fumewarden.whatif.Derivation;
import org.fumewarden.whatif.Remedies;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a conclusion, or what stands against a class. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description =
                "Shows the derivation of a conclusion, every reason against a class with the smallest remedy, or which answer settles most.",
        footer = {"", "Example:", "  fumewarden explain scenarios/tours/stainless-brackets.yaml --why-not ffp3"})
final class ExplainCommand implements Callable<Integer> {
    /** Exactly one question at a time. */
    static final class Asked {
        @Option(
                names = "--why",
                paramLabel = "ID",
                description = "What to explain: a step (s12), rule, class, agent, question, or required-factor.")
        private String why;

        @Option(
                names = "--why-not",
                paramLabel = "CLASS",
                description = "Class of respirator: names every reason against it.")
        private String whyNot;

        @Option(names = "--ask-first", description = "Names the open question whose answer would settle most.")
        private boolean askFirst;
    }

    @Parameters(paramLabel = "FILE", description = "Task file, YAML or JSON.")
    private Path file;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Asked asked;

    @Mixin
    private TaskOptions options;

    @Mixin
    private LanguageOption language;

    @Spec
    private CommandSpec spec;

    private WhatIfText text;

    @Override
    public Integer call() {
        Bench plain = options.bench(file);
        Bench bench = language.speaking(plain);
        text = new WhatIfText(language.speech(plain));
        Advice advice = bench.advise();
        PrintWriter out = spec.commandLine().getOut();
        out.print(options.banner(language.words(), bench.book()));
        if (asked.why != null) {
            why(bench, advice, out);
        } else if (asked.whyNot != null) {
            whyNot(bench, advice, out);
        } else {
            List<AnswerValue.Worth> worths = new AnswerValue(bench).rank();
            out.println(text.say(worths.isEmpty() ? "No question is open." : "Ask in this order:"));
            out.print(text.worth(worths));
        }
        out.print(text.closing(advice));
        out.flush();
        return ExitCodes.COMPLETE;
    }

    private void why(Bench bench, Advice advice, PrintWriter out) {
        Derivation derivation = new Derivation(advice);
        List<Step> steps = derivation.named(asked.why);
        if (steps.isEmpty()) {
            throw new InputException(new Problem(
                    "--why",
                    0,
                    "",
                    "names nothing in this advice: \"" + asked.why + "\".",
                    Nearest.remedy(asked.why, derivation.names())));
        }
        RuleBase base = bench.advisor(bench.code()).base();
        String told = steps.stream().map(s -> text.tree(derivation, s) + "\n").collect(Collectors.joining())
                + text.dangerous(asked.why, base.rowsOn(advice.on()));
        out.println(told);
        out.print(text.documents(told, base.book().documents()));
    }

    private void whyNot(Bench bench, Advice advice, PrintWriter out) {
        Respirator respirator = advice.respirators().stream()
                .filter(r -> r.deviceClass().equals(asked.whyNot))
                .findFirst()
                .orElseThrow(() -> new InputException(new Problem(
                        "--why-not",
                        0,
                        "",
                        "names no class of this code: \"" + asked.whyNot + "\".",
                        Nearest.remedy(
                                asked.whyNot,
                                advice.respirators().stream()
                                        .map(Respirator::deviceClass)
                                        .toList()))));
        out.println(
                text.device(respirator) + ": " + text.shown(respirator.verdict().key()));
        respirator.reasons().forEach(r -> out.print(WhatIfText.line("  - ", text.reason(r))));
        if (respirator.verdict().offered()) {
            return;
        }
        // Answers decide nothing of a class that is ruled out whatever they are.
        boolean undecided = respirator.verdict() == Suitability.UNDECIDED;
        List<String> asks = advice.trail().all(Doubt.class).stream()
                .filter(d -> undecided && d.deviceClass().equals(asked.whyNot))
                .flatMap(d ->
                        advice.questions().stream().filter(q -> q.question().equals(d.question())))
                .map(text::ask)
                .distinct()
                .toList();
        if (asks.size() == 1) {
            out.print(WhatIfText.line("  ", text.say("This answer decides it: {0}", asks.get(0))));
        } else if (!asks.isEmpty()) {
            out.println("  " + text.say("These answers together decide it:"));
            asks.forEach(ask -> out.print(WhatIfText.line("    ", ask)));
        }
        out.println();
        remedies(new Remedies(bench), undecided, out);
    }

    private void remedies(Remedies remedies, boolean undecided, PrintWriter out) {
        List<List<Lever>> sets = remedies.forClass(asked.whyNot);
        if (!sets.isEmpty()) {
            if (sets.size() == 1) {
                said(out, "It would be suitable only if all of this is done:");
                each(sets.get(0), "  - ", out);
                return;
            }
            said(out, "It would be suitable if one of these were done:");
            for (List<Lever> set : sets) {
                if (set.size() == 1) {
                    each(set, "  - ", out);
                } else {
                    out.print(WhatIfText.line("  - ", text.say("all of:")));
                    each(set, "    - ", out);
                }
            }
            return;
        }
        List<Lever> larger = remedies.larger(asked.whyNot);
        if (!larger.isEmpty()) {
            said(
                    out,
                    "More than {0} changes are needed. These together are enough, and none of them can be left out:",
                    Remedies.LARGEST);
            each(larger, "  - ", out);
        } else if (undecided) {
            said(out, "Nothing rules it out. It stays open until all that is named above is settled.");
        } else {
            said(out, "None of the changes that were tried makes it suitable, not even all of them together.");
            said(out, "Choose another class, or bring the exposure down. No other exposure was tried.");
        }
    }

    private void said(PrintWriter out, String english, Object... parts) {
        out.print(WhatIfText.line("", text.say(english, parts)));
    }

    private void each(List<Lever> levers, String lead, PrintWriter out) {
        levers.forEach(l -> out.print(WhatIfText.line(lead, text.told(l.says()))));
    }
}
