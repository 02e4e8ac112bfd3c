package org.fumewarden.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.duties.Vocabularies;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.upkeep.DueSheet;
import org.fumewarden.upkeep.DueList;
import org.fumewarden.upkeep.DueReport;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists what is due. */
@Command(
        name = "due",
        mixinStandardHelpOptions = true,
        description =
                "Lists the checks, tests and records that are due, overdue first, with the clause that orders each.",
        footer = {"", "Example:", "  fumewarden due --on 2026-03-02 --within \"30 days\""},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {
            "0:nothing is overdue, out of use or open",
            "1:a fault of the program or the disk",
            "2:wrong input; the message says where",
            "3:something is overdue, never done, out of use or not recorded"
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
        /** A period as people write it; ISO 8601, such as P30D, is read too. */
        private static final Pattern SAID =
                Pattern.compile("(\\d{1,6})\\s*(days?|weeks?|months?|years?)", Pattern.CASE_INSENSITIVE);

        @Option(names = "--on", paramLabel = "DATE", description = "Date of the printout; today when not given.")
        private String on = "";

        @Option(
                names = "--within",
                paramLabel = "PERIOD",
                description = "How far ahead, such as 30 days, 6 months or 1 year; 30 days when not given.",
                defaultValue = "30 days")
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
                description = "A circumstance of the whole site. It may be repeated.")
        private Map<String, String> facts = new LinkedHashMap<>();

        @Mixin
        private LanguageOption language;

        /**
         * What is due, under which duties, and how it is said.
         */
        record Answer(DueReport report, DutyBook book, Speech speech) {}

        Answer answer(StoreOption store) {
            Words words = language.words();
            Period ahead = period();
            LocalDate day = day(store);
            Map<String, String> values = new LinkedHashMap<>(facts);
            Vocabularies vocabulary = Vocabularies.shipped(LocalDate.now());
            Map<String, List<String>> site = vocabulary.take("--fact", values);
            values.keySet().stream().findFirst().ifPresent(name -> {
                throw new InputException(new Problem(
                        "--fact",
                        0,
                        name,
                        "is not a fact that a duty depends on.",
                        Nearest.remedy(name, vocabulary.facts().keySet())));
            });
            try (Store open = store.read()) {
                DutyBook book = StoreOption.duties(code, open, day);
                DueReport report = new DueList(open, book.duties(), day, Period.ofDays(7))
                        .compute(site, Optional.of(day.plus(ahead)));
                return new Answer(report, book, Speech.of(words, book.wording()));
            }
        }

        LocalDate day(StoreOption store) {
            return on.isEmpty() ? store.today() : Forms.day("--on", on);
        }

        private Period period() {
            try {
                Matcher said = SAID.matcher(within.strip());
                Period period = said.matches()
                        ? Period.parse("P" + said.group(1)
                                + Character.toUpperCase(said.group(2).charAt(0)))
                        : Period.parse(within.strip());
                if (!period.isNegative()) {
                    return period;
                }
            } catch (DateTimeException e) {
                // Falls through to the complaint.
            }
            throw new InputException(new Problem(
                    "--within",
                    0,
                    "",
                    "cannot be \"" + within + "\".",
                    "write a number with days, weeks, months or years, such as \"30 days\"."));
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
            Question.Answer said = question.answer(store);
            DueReport report = said.report();
            store.out()
                    .print(
                            switch (format) {
                                case text -> DueSheet.text(report, said.book(), said.speech());
                                case csv -> DueSheet.csv(report);
                                case html -> DueSheet.html(report, said.book(), said.speech());
                            });
            return report.settled() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
        });
    }
}
