package org.fumewarden.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fumewarden.check.Catalogue;
import org.fumewarden.check.CheckScope;
import org.fumewarden.check.RuleBaseCheck;
import org.fumewarden.check.Survey;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.RuleSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks rules, tables and scenarios. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks rules, tables and scenarios, and names file and line of everything that is wrong.",
        footer = {"", "Example:", "  fumewarden check --rules rules --code gb"})
final class CheckCommand implements Callable<Integer> {
    private static final Path PAGE = Path.of("docs/rules.md");
    private static final long LARGEST_PAGE = 10_000_000;
    private static final String SCENARIOS = "scenarios";
    private static final String SHARE = "fumewarden.share";

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules, which are compiled first.")
    private Path rules;

    @Option(
            names = "--scenarios",
            paramLabel = "DIR",
            description =
                    "Folder of scenarios, or one scenario; when not given, scenarios where there is one, else those of the package.")
    private Path scenarios;

    @Option(
            names = "--sources",
            paramLabel = "FILE",
            description = "List of documents that may be cited; that of the rules when not given.")
    private Path sources;

    @Option(names = "--code", paramLabel = "ID", description = "Only what decides under one code, such as gb.")
    private String code;

    @Option(
            names = "--rule",
            paramLabel = "ID",
            description = "Only one rule, such as SHARED-NEED-010, and the scenarios that name it.")
    private String rule;

    @Option(
            names = "--survey",
            description =
                    "Also lists rows that no scenario reads, rows that ended without a successor, agents without a limit or "
                            + "a filter row, and work for which no agent is concluded. These are not faults.")
    private boolean survey;

    @Spec
    private CommandSpec spec;

    /** The page of rules, where this is checked in the source tree. */
    private static Optional<Problem> page(String fresh) {
        return YamlFiles.text(PAGE.toString(), YamlFiles.bytes(PAGE, LARGEST_PAGE))
                        .equals(fresh)
                ? Optional.empty()
                : Optional.of(new Problem(
                        PAGE.toString(),
                        0,
                        "",
                        "is not the page of these rules.",
                        "write it anew: fumewarden rules --markdown > " + PAGE + "."));
    }

    /** Those named, those here, or those that the package carries; the launcher says where it lies. */
    private Path stories() {
        String share = System.getProperty(SHARE);
        Path here = Path.of(SCENARIOS);
        return scenarios != null ? scenarios : share == null || Files.exists(here) ? here : Path.of(share, SCENARIOS);
    }

    @Override
    public Integer call() {
        RuleFolder folder = rules == null ? RuleFolder.shipped() : RuleFolder.at(rules);
        Map<String, RuleBase> known = new ConcurrentHashMap<>();
        Function<String, RuleBase> bases = code ->
                known.computeIfAbsent(code, c -> rules == null ? RuleBase.shipped(c) : RuleBase.compiled(folder, c));
        CheckScope scope = new CheckScope(Optional.ofNullable(code), Optional.ofNullable(rule));
        RuleBaseCheck.Report report =
                RuleBaseCheck.run(scope, folder, bases, stories(), Optional.ofNullable(sources), LocalDate.now());
        List<Problem> problems = new ArrayList<>(report.problems());
        if (problems.isEmpty() && scope.equals(CheckScope.ALL) && Files.exists(PAGE)) {
            page(RuleSheet.markdown(new Catalogue(folder.codes(), bases))).ifPresent(problems::add);
        }
        problems.forEach(p -> spec.commandLine().getOut().println(p.text()));
        if (survey) {
            new Survey(folder, bases, LocalDate.now())
                    .lines(stories())
                    .forEach(spec.commandLine().getOut()::println);
        }
        report.counts().forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println("findings " + problems.size());
        spec.commandLine().getOut().flush();
        return problems.isEmpty() ? ExitCodes.COMPLETE : ExitCodes.BAD_INPUT;
    }
}
