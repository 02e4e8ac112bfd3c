package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.register.InUse;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.upkeep.BeforeUseCard;
import org.fumewarden.report.upkeep.Paper;
import org.fumewarden.report.upkeep.TaskAdvice;
import org.fumewarden.report.upkeep.WrittenProgramme;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.LateExamination;
import org.fumewarden.upkeep.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the papers of an item or of the site. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        description =
                "Prints the records of an item (examinations of a unit or mask; what the duties ask to be kept of a wearer,"
                        + " extraction system or air supply), the card of checks before use, or the programme of the site.",
        footer = {
            "",
            "Examples:",
            "  fumewarden record U-014 --format html > U-014.html",
            "  fumewarden record --sheet programme \\",
            "    --task scenarios/tours/stainless-brackets.yaml \\",
            "    --format html > programme.html"
        })
final class RecordCommand implements Callable<Integer> {
    /** Which paper. */
    enum Sheet {
        examination,
        card,
        programme
    }

    @Parameters(arity = "0..1", paramLabel = "ITEM", description = "Id of the item; not for the programme.")
    private String id;

    @Option(
            names = "--sheet",
            description = "${COMPLETION-CANDIDATES}; examination when not given.",
            defaultValue = "examination")
    private Sheet sheet;

    @Option(names = "--format", description = "${COMPLETION-CANDIDATES}; text when not given.", defaultValue = "text")
    private DueCommand.Format format;

    @Option(
            names = "--code",
            paramLabel = "ID",
            description = "The code whose clauses are cited; that of the site when not given.",
            defaultValue = "")
    private String code;

    @Option(
            names = "--task",
            paramLabel = "FILE",
            description = "Task file whose advice goes into the programme; may be repeated.")
    private List<Path> tasks = List.of();

    @Option(names = "--on", paramLabel = "DATE", description = "Date of the printout; today when not given.")
    private String on = "";

    @Mixin
    private LanguageOption language;

    @Mixin
    private StoreOption store;

    @Override
    public Integer call() throws Exception {
        return store.guarded(() -> {
            Words words = language.words();
            LocalDate day = on.isEmpty() ? store.today() : Forms.day("--on", on);
            try (Store open = store.read()) {
                DutyBook book = StoreOption.duties(code, open, day);
                Speech speech = Speech.of(words, book.wording());
                return sheet == Sheet.programme ? programme(open, book, day, speech) : paper(open, book, day, speech);
            }
        });
    }

    private int programme(Store open, DutyBook book, LocalDate day, Speech speech) {
        String id = StoreOption.code(code, open);
        Speech named = Speech.of(speech.words(), RuleBase.shipped(id).book().vocabulary());
        List<TaskAdvice> advice = tasks.stream()
                .map(t -> TaskAdvice.of(advised(t, id, day, speech.words()), named))
                .toList();
        WrittenProgramme programme = new WrittenProgramme(open.items(), book, advice, day, speech);
        switch (format) {
            case text -> store.out().print(programme.text());
            case html -> store.out().print(programme.html());
            case csv ->
                throw new InputException(
                        new Problem("--format", 0, "", "cannot be \"csv\" for a programme.", "write html or text."));
        }
        return advice.stream().allMatch(TaskAdvice::settled) ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    /** Advice under the code and on the day of the programme, with what the register says of the unit in use. */
    private Advice advised(Path task, String id, LocalDate day, Words words) {
        Bench bench = new Bench(task, Map.of(), Optional.of(id), Optional.of(day), c -> Advisor.shipped(c)
                .speaking(words.language(), words.names()));
        return InUse.with(bench, store::read).advise();
    }

    private int paper(Store open, DutyBook book, LocalDate day, Speech speech) {
        if (!tasks.isEmpty()) {
            throw new InputException(
                    new Problem("--task", 0, "", "goes with the programme only.", "add --sheet programme."));
        }
        Item item = wanted(open);
        if (sheet == Sheet.card) {
            if (!(item instanceof Item.Unit unit)) {
                throw new InputException(new Problem(
                        "record",
                        0,
                        item.id(),
                        "is not a unit but: " + item.kind().key() + ".",
                        "name a unit."));
            }
            Optional<String> late =
                    LateExamination.of(open, book.duties(), item.id(), day).against();
            return print(BeforeUseCard.of(unit, open.state(item.id()), book, late), speech);
        }
        return print(Paper.record(open, item, book.duties(), day), speech);
    }

    private int print(Paper paper, Speech speech) {
        store.out()
                .print(
                        switch (format) {
                            case text -> paper.text(speech);
                            case html -> paper.html(speech);
                            case csv -> paper.csv();
                        });
        return paper.whole() ? ExitCodes.COMPLETE : ExitCodes.NOT_SETTLED;
    }

    private Item wanted(Store open) {
        if (id == null) {
            throw new InputException(new Problem("record", 0, "", "names no item.", "name one, such as: record U-014"));
        }
        Optional<Item> item = open.item(id);
        return item.orElseThrow(() -> new InputException(new Problem(
                "record:", 0, id, "is not in the register.", InUse.remedy(id, open.items(), InUse.unread("on it")))));
    }
}
