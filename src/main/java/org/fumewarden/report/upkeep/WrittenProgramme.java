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
        return sheet().text();
    }

    public String html() {
        return sheet().html();
    }

    private Sheet sheet() {
        List<Sheet.Block> blocks = new ArrayList<>();
        blocks.add(new Sheet.Paragraph("Draft made from the register and the rules in force on " + on
                + ". Edit it to the site, then sign it. It is no programme until a named person answers for it."));
        blocks.add(new Sheet.Pairs(List.of(
                new Sheet.Pair("employer", site.map(Item.Site::employer).orElse("TO BE WRITTEN IN")),
                new Sheet.Pair("address", site.map(Item.Site::address).orElse("TO BE WRITTEN IN")),
                new Sheet.Pair(
                        "programme administrator",
                        site.map(Item.Site::administrator)
                                .filter(a -> !a.isEmpty())
                                .orElse("TO BE WRITTEN IN")),
                new Sheet.Pair("code", book.code()))));
        elements(blocks);
        Map<Chapter, List<Duty>> duties =
                book.duties().stream().collect(Collectors.groupingBy(Chapter::of, TreeMap::new, Collectors.toList()));
        for (Chapter chapter : Chapter.values()) {
            blocks.add(new Sheet.Heading((chapter.ordinal() + 1) + ". " + chapter.title));
            chapter(chapter, duties.getOrDefault(chapter, List.of()), blocks);
        }
        blocks.add(new Sheet.Heading(Chapter.values().length + 1 + ". Records and how long they are kept"));
        blocks.add(new Sheet.Table(
                List.of("record", "keep", "clause"),
                book.duties().stream()
                        .filter(Duty::recorded)
                        .map(d -> List.of(d.id(), d.keep().text(), DueSheet.clause(d)))
                        .toList()));
        blocks.add(new Sheet.Paragraph(Closing.WORDS));
        blocks.add(new Sheet.Signatures(List.of("Employer", "Programme administrator")));
        return new Sheet("Respirator programme", blocks);
    }

    private void chapter(Chapter chapter, List<Duty> duties, List<Sheet.Block> blocks) {
        if (chapter == Chapter.SELECTION) {
            selection(blocks);
        } else if (duties.isEmpty()) {
            blocks.add(new Sheet.Paragraph(
                    "The tables of this code hold no duty on this point. Write down what the site does."));
        } else {
            blocks.add(new Sheet.Table(
                    List.of("what", "when", "who", "clause"),
                    duties.stream()
                            .map(d -> List.of(d.what(), when(d), d.who(), DueSheet.clause(d)))
                            .toList()));
        }
        if (chapter == Chapter.FIT) {
            blocks.add(new Sheet.Table(List.of("wearer", "name", "team", "masks"), wearers()));
        }
        if (chapter == Chapter.USE) {
            blocks.add(new Sheet.Points(
                    book.catalogue("alarm-action").stream().map(Term::name).toList()));
        }
        if (chapter == Chapter.CARE) {
            blocks.add(new Sheet.Table(List.of("number", "kind", "description"), kept()));
        }
    }

    private void selection(List<Sheet.Block> blocks) {
        if (advice.isEmpty()) {
            blocks.add(new Sheet.Paragraph(
                    "No advice was put in. Describe each task and add what was advised, with its clauses."));
        }
        for (TaskAdvice task : advice) {
            blocks.add(new Sheet.Paragraph("Task: " + task.title()));
            task.warning().ifPresent(w -> blocks.add(new Sheet.Warning(w)));
            blocks.add(new Sheet.Points(task.sentences()));
        }
    }

    /** What the duty that orders a programme says must be in it, to be ticked once it is written for this site. */
    private void elements(List<Sheet.Block> blocks) {
        List<Duty> ordering = book.duties().stream()
                .filter(d -> d.doneBy().equals("programme"))
                .toList();
        blocks.add(new Sheet.Heading("What must stand in it"));
        if (ordering.isEmpty()) {
            blocks.add(new Sheet.Paragraph(
                    "The duties of this code, as far as they are in our tables, order no document of this"
                            + " name. This one puts in writing how the site carries out the duties that do hold."));
        }
        for (Duty duty : ordering) {
            blocks.add(new Sheet.Paragraph(duty.what() + " [" + DueSheet.clause(duty) + "]. Tick each point once the"
                    + " procedure below is written for this workplace:"));
            blocks.add(new Sheet.Ticks(duty.fields()));
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
