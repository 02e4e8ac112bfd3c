package org.fumewarden.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.report.upkeep.DueSheet;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what is owed. */
@Command(
        name = "due",
        mixinStandardHelpOptions = true,
        description =
                "Lists the checks, tests and records that are due, overdue first, with the clause that orders each.",
        footer = {"", "Example:", "  fumewarden due --on 2026-03-02 --within P30D"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:nothing is overdue, withdrawn or open",
            "1:a fault of the program or the disk",
            "2:wrong input; the message says where",
            "3:something is overdue, never done, withdrawn or not recorded"
        })
final class DueCommand implements Callable<Integer> {
    /** How the list is written. */
    enum Format {
        text,
        csv,
        html
    }

    /** What the due computation needs to know. */
    static final class Question {
        @Option(names = "--on", paramLabel = "DATE", description = "The day; today when not given.")
        private String on = "";

        @Option(
                names = "--within",
                paramLabel = "PERIOD",
                description = "How far ahead; P30D when not given.",
                defaultValue = "P30D")
        private String within;

        @Option(
                names = "--code",
                paramLabel = "ID",
                description = "The code whose duties count; that of the site when not given.",
                defaultValue = "")
        private String code;

        @Option(
                names = "--fact",
                paramLabel = "FACT=VALUE",
                description = "A circumstance that holds for the whole site; may be repeated.")
        private Map<String, String> facts = new LinkedHashMap<>();

        DueReport answer(StoreOption store) {
            LocalDate day = day(store);
            Map<String, String> values = new LinkedHashMap<>(facts);
            Vocabularies vocabulary = Vocabularies.shipped(LocalDate.now());
            Map<String, List<String>> site = vocabulary.take("--fact", values);
            values.keySet().stream().findFirst().ifPresent(name -> {
                throw new InputException(new Problem(
                        "--fact",
                        0,
                        name,
                        "is no fact that a duty hangs on.",
                        Nearest.remedy(name, vocabulary.facts().keySet())));
            });
            try (Store open = store.read()) {
                return new DueList(open, StoreOption.duties(code, open, day).duties(), day, Period.ofDays(7))
                        .compute(site, Optional.of(day.plus(period())));
            }
        }

        LocalDate day(StoreOption store) {
            return on.isEmpty() ? store.today() : Forms.day("--on", on);
        }

        private Period period() {
            try {
                Period period = Period.parse(within);
                if (!period.isNegative()) {
                    return period;
                }
            } catch (DateTimeException e) {
                // Falls through to the complaint.
            }
            throw new InputException(new Problem(
                    "--within", 0, "", "cannot be \"" + within + "\".", "P30D for thirty days, P3M for three months."));
        }
    }

    @Mixin
    private Question question = new Question();

    @Mixin
    private StoreOption store;

    @Option(names = "--format", description = "${COMPLETION-CANDIDATES}; text when not given.", defaultValue = "text")
    private Format format;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> {
            DueReport report = question.answer(store);
            store.out()
                    .print(
                            switch (format) {
                                case text -> DueSheet.text(report);
                                case csv -> DueSheet.csv(report);
                                case html -> DueSheet.html(report);
                            });
            return report.settled() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
        });
    }
}
