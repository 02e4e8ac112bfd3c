package org.fumewarden.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fumewarden.check.Catalogue;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.RuleCard;
import org.fumewarden.report.RuleSheet;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the rules, or shows one. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description =
                "Lists the rules with their clauses, or shows one with its scenarios and the table rows it reads.",
        footer = {
            "",
            "Examples:",
            "  fumewarden rules SHARED-NEED-010",
            "  fumewarden rules --affirm gb-limits#cadmium/twa --by \"reviewer A\" \\",
            "    --document \"EH40, 4th ed.\" --place \"Table 1\" --rules rules"
        })
final class RulesCommand implements Callable<Integer> {
    private static final Path SCENARIOS = Path.of("scenarios");

    @Parameters(arity = "0..1", paramLabel = "ID", description = "Id of one rule.")
    private String id;

    @Option(
            names = "--confidence",
            description =
                    "Counts how well rules and rows are known, and lists those that still need their primary text.")
    private boolean confidence;

    @Option(names = "--markdown", description = "Writes the page docs/rules.md.")
    private boolean markdown;

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules, which are compiled first.")
    private Path rules;

    @Option(
            names = "--scenarios",
            paramLabel = "DIR",
            description = "Folder of scenarios; scenarios when not given and it is there.")
    private Path scenarios;

    @ArgGroup(exclusive = false, heading = "%nA reviewer's check:%n")
    private AffirmOptions affirm;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (affirm != null) {
            spec.commandLine().getOut().print(affirm.write(rules, LocalDate.now()));
            spec.commandLine().getOut().flush();
            return ExitCodes.COMPLETE;
        }
        RuleFolder folder = rules == null ? RuleFolder.shipped() : RuleFolder.at(rules);
        if (folder.codes().isEmpty()) {
            throw new InputException(folder.codeless());
        }
        Map<String, RuleBase> known = new ConcurrentHashMap<>();
        Function<String, RuleBase> bases = code ->
                known.computeIfAbsent(code, c -> rules == null ? RuleBase.shipped(c) : RuleBase.compiled(folder, c));
        Catalogue catalogue = new Catalogue(folder.codes(), bases);
        spec.commandLine().getOut().print(sheet(catalogue, bases));
        spec.commandLine().getOut().flush();
        return ExitCodes.COMPLETE;
    }

    private String sheet(Catalogue catalogue, Function<String, RuleBase> bases) {
        if (confidence) {
            return RuleSheet.confidence(catalogue);
        }
        if (markdown) {
            return RuleSheet.markdown(catalogue);
        }
        if (id == null) {
            return RuleSheet.list(catalogue);
        }
        RuleCard card = catalogue.cards().get(id);
        if (card == null) {
            throw new InputException(new Problem(
                    "rules",
                    0,
                    "",
                    "holds no rule \"" + Located.shown(id) + "\".",
                    Nearest.remedy(id, catalogue.cards().keySet())));
        }
        Path shown = scenarios == null ? SCENARIOS : scenarios;
        Optional<Catalogue.Use> use = scenarios == null && !Files.isDirectory(SCENARIOS)
                ? Optional.empty()
                : Optional.of(catalogue.use(id, bases, shown));
        return RuleSheet.one(card, catalogue, use);
    }
}
