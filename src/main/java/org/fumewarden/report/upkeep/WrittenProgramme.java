package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Term;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.fumewarden.upkeep.Duty;
import org.fumewarden.upkeep.Item;
import org.fumewarden.upkeep.ItemKind;

/**
 * The site's written respirator programme, ready to edit and sign.
 *
 * <p>The chapters follow the list that 29 CFR 1910.134(c)(1) gives for the programme; the duties under each are those of the
 * chosen code.
 */
public final class WrittenProgramme {
    /** Chapters in order, each with the beginnings of the done-by words that belong to it. */
    private enum Chapter {
        RESPONSIBILITY("Who is responsible", List.of("programme", "control-upkeep", "proper-use", "supervision")),
        SELECTION("Choosing the respirator", List.of()),
        MEDICAL("Medical evaluation and health", List.of("medical")),
        FIT("Fit testing", List.of("fit-test")),
        USE("Use: seal, checks before use, emergencies", List.of("seal-", "before-use", "confined-space", "discard")),
        CARE(
                "Cleaning, storage, inspection, repair and discarding",
                List.of(
                        "cleaning",
                        "storage",
                        "examination",
                        "repair",
                        "replacement",
                        "filter",
                        "shelf-life",
                        "maintenance")),
        CHANGE("Change schedule of gas filters", List.of("change-schedule")),
        AIR("Breathing air", List.of("air-supply", "air-test/certificate", "sorbent", "air-test/breathing")),
        MONITORING("Measuring the air of the workplace", List.of("air-test", "exposure-register")),
        TRAINING("Information, instruction and training", List.of("training")),
        REVIEW("Evaluation of the programme", List.of("programme-evaluation"));

        private final String title;
        private final List<String> begins;

        Chapter(String title, List<String> begins) {
            this.title = title;
            this.begins = begins;
        }

        /** The chapter of a duty: the longest beginning wins. */
        static Chapter of(Duty duty) {
            Chapter best = RESPONSIBILITY;
            int length = 0;
            for (Chapter chapter : values()) {
                for (String begin : chapter.begins) {
                    if (begin.length() > length && duty.doneBy().startsWith(begin)) {
                        best = chapter;
                        length = begin.length();
                    }
                }
            }
            return best;
        }
    }

    private final Optional<Item.Site> site;
    private final List<Item> items;
    private final DutyBook book;
    private final List<TaskAdvice> advice;
    private final LocalDate on;

    /**
     * A programme.
     *
     * @param items the whole register
     * @param advice what was advised for the tasks of the site; may be empty
     */
    public WrittenProgramme(List<Item> items, DutyBook book, List<TaskAdvice> advice, LocalDate on) {
        this.items = List.copyOf(items);
        this.site = items.stream()
                .filter(Item.Site.class::isInstance)
                .map(Item.Site.class::cast)
                .findFirst();
        this.book = book;
        this.advice = List.copyOf(advice);
        this.on = on;
    }

    public String text() {
        return TextForm.write(sheet());
    }

    public String html() {
        return HtmlForm.write(sheet());
    }

    private Sheet sheet() {
        PaperParts parts = new PaperParts();
        parts.pairs(List.of(
                new Pair("employer", site.map(Item.Site::employer).orElse("TO BE WRITTEN IN")),
                new Pair("address", site.map(Item.Site::address).orElse("TO BE WRITTEN IN")),
                new Pair(
                        "programme administrator",
                        site.map(Item.Site::administrator)
                                .filter(a -> !a.isEmpty())
                                .orElse("TO BE WRITTEN IN")),
                new Pair("code", book.code())));
        elements(parts);
        Map<Chapter, List<Duty>> duties =
                book.duties().stream().collect(Collectors.groupingBy(Chapter::of, TreeMap::new, Collectors.toList()));
        for (Chapter chapter : Chapter.values()) {
            parts.head((chapter.ordinal() + 1) + ". " + chapter.title);
            chapter(chapter, duties.getOrDefault(chapter, List.of()), parts);
        }
        parts.head(Chapter.values().length + 1 + ". Records and how long they are kept")
                .table(
                        List.of("record", "keep", "clause"),
                        book.duties().stream()
                                .filter(Duty::recorded)
                                .map(d -> List.of(d.id(), d.keep().text(), DueSheet.clause(d)))
                                .toList())
                .signedBy("Employer", "Programme administrator");
        return parts.sheet(
                "programme",
                "Respirator programme",
                "Draft made from the register and the rules in force on " + on
                        + ". Edit it to the site, then sign it. It is no programme until a named person answers for it.");
    }

    private void chapter(Chapter chapter, List<Duty> duties, PaperParts parts) {
        if (chapter == Chapter.SELECTION) {
            selection(parts);
        } else if (duties.isEmpty()) {
            parts.says(
                    "The tables of this code hold no duty on this point. Write down what the site does.");
        } else {
            parts.table(
                    List.of("what", "when", "who", "clause"),
                    duties.stream()
                            .map(d -> List.of(d.what(), when(d), d.who(), DueSheet.clause(d)))
                            .toList());
        }
        if (chapter == Chapter.FIT) {
            parts.table(List.of("wearer", "name", "team", "masks"), wearers());
        }
        if (chapter == Chapter.USE) {
            parts.points(
                    book.catalogue("alarm-action").stream().map(Term::name).toList());
        }
        if (chapter == Chapter.CARE) {
            parts.table(List.of("number", "kind", "description"), kept());
        }
    }

    private void selection(PaperParts parts) {
        if (advice.isEmpty()) {
            parts.says(
                    "No advice was put in. Describe each task and add what was advised, with its clauses.");
        }
        for (TaskAdvice task : advice) {
            parts.says("Task: " + task.title());
            task.warning().ifPresent(w -> parts.warns(w));
            parts.points(task.sentences());
        }
    }

    /** What the duty that orders a programme says must be in it, to be ticked once it is written for this site. */
    private void elements(PaperParts parts) {
        List<Duty> ordering = book.duties().stream()
                .filter(d -> d.doneBy().equals("programme"))
                .toList();
        parts.head("What must stand in it");
        if (ordering.isEmpty()) {
            parts.says(
                    "The duties of this code, as far as they are in our tables, order no document of this"
                            + " name. This one puts in writing how the site carries out the duties that do hold.");
        }
        for (Duty duty : ordering) {
            parts.says(duty.what() + " [" + DueSheet.clause(duty) + "]. Tick each point once the"
                    + " procedure below is written for this workplace:");
            parts.ticks(duty.fields());
        }
    }

    private List<List<String>> wearers() {
        return items.stream()
                .filter(Item.Wearer.class::isInstance)
                .map(Item.Wearer.class::cast)
                .map(w -> List.of(w.id(), w.name(), w.team(), String.join(", ", w.masks())))
                .toList();
    }

    private List<List<String>> kept() {
        return items.stream()
                .filter(i -> i.kind() != ItemKind.WEARER && i.kind() != ItemKind.SITE)
                .map(i -> List.of(i.id(), i.kind().key(), i.label()))
                .toList();
    }

    private static String when(Duty duty) {
        String often = duty.frequency().key().replace('-', ' ');
        return duty.period().map(p -> often + " " + p).orElse(often);
    }
}
