package org.fumewarden.report.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.duties.DutyBook;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.report.html.DutyTerms;
import org.fumewarden.report.html.Speech;
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
    private final Speech speech;

    /**
     * A programme.
     *
     * @param items the whole register
     * @param advice what was advised for the tasks of the site; may be empty
     */
    public WrittenProgramme(List<Item> items, DutyBook book, List<TaskAdvice> advice, LocalDate on, Speech speech) {
        this.speech = speech;
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

    private RegisterSheet sheet() {
        List<RegisterSheet.Block> blocks = new ArrayList<>();
        blocks.add(new RegisterSheet.Paragraph(speech.say(
                "Draft made from the register and the rules in force on {0}. Edit it to the site, then sign it. It becomes a programme only when a named person answers for it.",
                speech.day(on))));
        String blank = speech.say("TO BE WRITTEN IN");
        blocks.add(new RegisterSheet.Pairs(List.of(
                new RegisterSheet.Pair(
                        speech.say("employer"), site.map(Item.Site::employer).orElse(blank)),
                new RegisterSheet.Pair(
                        speech.say("address"), site.map(Item.Site::address).orElse(blank)),
                new RegisterSheet.Pair(
                        speech.say("programme administrator"),
                        site.map(Item.Site::administrator)
                                .filter(a -> !a.isEmpty())
                                .orElse(blank)),
                new RegisterSheet.Pair(speech.say("country whose rules apply"), speech.told(book.code())))));
        elements(blocks);
        Map<Chapter, List<Duty>> duties =
                book.duties().stream().collect(Collectors.groupingBy(Chapter::of, TreeMap::new, Collectors.toList()));
        for (Chapter chapter : Chapter.values()) {
            blocks.add(new RegisterSheet.Heading((chapter.ordinal() + 1) + ". " + speech.say(chapter.title)));
            chapter(chapter, duties.getOrDefault(chapter, List.of()), blocks);
        }
        blocks.add(new RegisterSheet.Heading(
                Chapter.values().length + 1 + ". " + speech.say("Records and how long they are kept")));
        blocks.add(new RegisterSheet.Table(
                said("record", "keep", "clause"),
                book.duties().stream()
                        .filter(Duty::recorded)
                        .map(d -> List.of(
                                StringUtils.capitalize(terms().deed(
                                                d.doneBy(),
                                                List.of(d.appliesTo().get(0)))),
                                terms().keep(d.keep()),
                                DueSheet.clause(d, speech)))
                        .distinct()
                        .toList()));
        blocks.add(new RegisterSheet.Paragraph(speech.say(Closing.WORDS)));
        blocks.add(new RegisterSheet.Signatures(said("Employer", "Programme administrator"), speech.say("Date")));
        return new RegisterSheet(
                speech.say("Respirator programme"), blocks, speech.words().language());
    }

    private void chapter(Chapter chapter, List<Duty> duties, List<RegisterSheet.Block> blocks) {
        if (chapter == Chapter.SELECTION) {
            selection(blocks);
        } else if (duties.isEmpty()) {
            blocks.add(new RegisterSheet.Paragraph(
                    speech.say("This code has no duty on this point in our tables. Write down what the site does.")));
        } else {
            blocks.add(new RegisterSheet.Table(
                    said("what", "when", "who", "clause"),
                    duties.stream()
                            .map(d -> List.of(
                                    speech.told(d.what()), when(d), terms().who(d.who()), DueSheet.clause(d, speech)))
                            .toList()));
        }
        if (chapter == Chapter.FIT) {
            blocks.add(new RegisterSheet.Table(said("wearer", "name", "team", "masks"), wearers()));
        }
        if (chapter == Chapter.USE) {
            blocks.add(new RegisterSheet.Points(book.catalogue("alarm-action").stream()
                    .map(t -> speech.told(t.name()))
                    .toList()));
        }
        if (chapter == Chapter.CARE) {
            blocks.add(new RegisterSheet.Table(said("number", "kind", "description"), kept()));
        }
    }

    private void selection(List<RegisterSheet.Block> blocks) {
        if (advice.isEmpty()) {
            blocks.add(new RegisterSheet.Paragraph(speech.say(
                    "No advice was put in. Describe each task and add what was advised, with its clauses.")));
        }
        for (TaskAdvice task : advice) {
            blocks.add(new RegisterSheet.Paragraph(
                    speech.say("Task: {0} (rules of {1})", task.title(), speech.day(task.on()))));
            task.warning().ifPresent(w -> blocks.add(new RegisterSheet.Warning(speech.say(w))));
            blocks.add(new RegisterSheet.Points(task.sentences()));
        }
    }

    /** What the duty that orders a programme says must be in it, to be ticked once it is written for this site. */
    private void elements(List<RegisterSheet.Block> blocks) {
        List<Duty> ordering = book.duties().stream()
                .filter(d -> d.doneBy().equals("programme"))
                .toList();
        blocks.add(new RegisterSheet.Heading(speech.say("What the programme must contain")));
        if (ordering.isEmpty()) {
            blocks.add(
                    new RegisterSheet.Paragraph(
                            speech.say(
                                    "As far as our tables go, this code orders no document of this name. This one puts in writing how the site carries out the duties that apply.")));
        }
        for (Duty duty : ordering) {
            blocks.add(new RegisterSheet.Paragraph(speech.told(duty.what()) + " [" + DueSheet.clause(duty, speech)
                    + "]. " + speech.say("Tick each point once the procedure below is written for this workplace:")));
            blocks.add(new RegisterSheet.Ticks(
                    duty.fields().stream().map(speech::told).toList()));
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
                .map(i -> List.of(
                        i.id(), speech.named("kind." + i.kind().key(), i.kind().key()), i.label()))
                .toList();
    }

    /** How often, as people say it. */
    private String when(Duty duty) {
        return duty.period()
                .filter(p -> duty.frequency() != Frequency.ONCE)
                .map(terms()::every)
                .orElseGet(() -> speech.named(
                        "when." + duty.frequency().key(), duty.frequency().key().replace('-', ' ')));
    }

    private DutyTerms terms() {
        return new DutyTerms(speech);
    }

    private List<String> said(String... words) {
        return Arrays.stream(words).map(speech::say).toList();
    }
}
