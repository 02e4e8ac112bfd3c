package org.fumewarden.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Status;
import org.fumewarden.model.Row;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.report.sheet.TextForm;

/**
 * The parts of the page in their order, and what yields where it has no room for all. State, wear, acts, alarms and what is
 * open are never cut. Where nobody may start and no rescue is planned, alarms have nobody to warn, and duties of use are only
 * counted. Of the rest, remarks on the air yield first, then duties, then what to compare is said shortly, then questions beyond the
 * first few are asked by what they are about; the agents at or
 * above a tenth of their limit stay, the last of them in one sentence where the table has no room.
 */
final class PagePlan {
    /** Lines of text of the page, and what title, line below it, closing line and its gap take of them. */
    private static final int LINES = 60;

    private static final int FRAME = 5;

    /** Further lines for a language with longer words; the paper holds them. */
    private static final int LONGER_WORDS = 1;

    /** Lines that the paper also holds, for rows of the table alone. */
    private static final int FOR_ROWS = 2;

    /** Lines that the duties get while remarks on the air can yield. */
    private static final int LEAST = 5;

    private final Advice advice;
    private final String number;
    private final List<Row> rows;
    private final Optional<String> runTime;
    private final Spoken spoken;
    private final Tone tone;
    private final AirPart inTheAir;

    PagePlan(Advice advice, String number, List<Row> rows, Optional<String> runTime, Spoken spoken, Tone tone) {
        this.advice = advice;
        this.number = number;
        this.rows = rows;
        this.runTime = runTime;
        this.spoken = spoken;
        this.tone = tone;
        this.inTheAir = new AirPart(advice, Places.notLaw(rows), spoken);
    }

    List<Part> parts() {
        ActsPart acts = new ActsPart(advice, rows, spoken);
        List<Part> first = new ArrayList<>();
        first.add(tone.of(new StatePart(advice, spoken).write()));
        first.add(tone.of(new WearPart(advice, runTime, spoken).write()));
        acts.write(doing(), "do-now", Sign.ACT).map(tone::of).ifPresent(first::add);
        List<Part> last = last(acts, OpenPart.ASKED, false);
        int room = room(first, last);
        Optional<Part> keepUp = new KeepUpPart(advice, rows, spoken).write().map(tone::of);
        int least = keepUp.map(p -> advice.status() == Status.DO_NOT_ENTER
                        ? height(counted(p))
                        : Math.min(height(p), Math.max(LEAST, height(without(p, size(p) - 1)))))
                .orElse(0);
        Optional<Part> air = air(room - least);
        if (air.isPresent() && height(air.get()) > room - least) {
            last = last(acts, OpenPart.ASKED, true);
            room = room(first, last);
            int duties = keepUp.map(p -> height(counted(p))).orElse(0);
            air = inTheAir.listed(Integer.MAX_VALUE).map(tone::of);
            if (height(air.get()) > room - duties) {
                last = last(acts, OpenPart.FEWEST, true);
                room = room(first, last);
            }
            int most = room + FOR_ROWS;
            if (height(air.get()) > room - duties) {
                air = named(most - duties);
            }
            if (air.isEmpty()) {
                Optional<Part> only = keepUp.map(this::numbered);
                int lines = only.map(PagePlan::height).orElse(0);
                return parts(
                        first, named(most - lines).or(() -> inTheAir.listed(1).map(tone::of)), only, last);
            }
        }
        int left = room - air.map(PagePlan::height).orElse(0);
        return parts(first, air, keepUp.map(p -> cut(p, left)), last);
    }

    private List<Part> last(ActsPart acts, int inWhole, boolean briefly) {
        List<Part> last = new ArrayList<>();
        if (!nobodyWorks()) {
            acts.write("leave", "leave", Sign.LEAVE).map(tone::of).ifPresent(last::add);
        }
        new OpenPart(advice, spoken).write(inWhole).map(tone::of).ifPresent(last::add);
        last.add(tone.of(new IssuePart(advice, number, spoken).write(briefly)));
        return last;
    }

    private static List<Part> parts(List<Part> first, Optional<Part> air, Optional<Part> keepUp, List<Part> last) {
        return Stream.of(first.stream(), air.stream(), keepUp.stream(), last.stream())
                .flatMap(some -> some)
                .toList();
    }

    /** The acts of the page; where nobody may start, what puts that right in place of what prepares the work. */
    private String doing() {
        if (advice.status() == Status.CONFLICT) {
            return "conflict";
        }
        return advice.status() != Status.DO_NOT_ENTER ? "do-now" : new Stopped(advice).byWearer() ? "wearer" : "stop";
    }

    /** True where nobody may start and nobody is sent in by a plan of their own. */
    private boolean nobodyWorks() {
        return advice.status() == Status.DO_NOT_ENTER
                && WearPart.ofTheTeam(advice).isEmpty();
    }

    private int room(List<Part> first, List<Part> last) {
        int lines = LINES + (spoken.words().ofRuleBase() ? 0 : LONGER_WORDS) - FRAME;
        return lines
                - Stream.concat(first.stream(), last.stream())
                        .mapToInt(PagePlan::height)
                        .sum();
    }

    private static int height(Part part) {
        return TextForm.height(part);
    }

    /** What is in the air, with as much as fits: a row for each time, else for each agent, else fewer remarks. */
    private Optional<Part> air(int room) {
        if (!WearPart.ofTheTeam(advice).isEmpty()) {
            // Figures that hold for ordinary work say nothing of the air of a rescue or a fire.
            Line unknown = new Line.Says(Sign.NONE, spoken.say("air.unknown"));
            return Optional.of(tone.of(new Part("air", spoken.say("page.air"), List.of(unknown))));
        }
        Optional<Part> all = inTheAir.write().map(tone::of);
        int remarks = inTheAir.foldable();
        for (int dropped = 0;
                dropped <= remarks && all.filter(p -> height(p) > room).isPresent();
                dropped++) {
            all = inTheAir.brief(dropped).map(tone::of);
        }
        return all;
    }

    /** The table with its last rows in one sentence, which may take the last lines of the paper; empty where they do not fit. */
    private Optional<Part> named(int room) {
        int agents = inTheAir.agents();
        for (int inTable = agents; inTable > 0; inTable--) {
            Optional<Part> shown = inTheAir.listed(inTable).map(tone::of);
            int most = inTable == 1 ? room + FOR_ROWS : room;
            if (shown.filter(p -> height(p) > most).isEmpty()) {
                return shown;
            }
        }
        return Optional.empty();
    }

    /** Drops lines from the end until the part fits; a line says how many, or when all fall due. */
    private Part cut(Part part, int room) {
        Part shown = part;
        for (int dropped = 1; height(shown) > room && dropped <= size(part); dropped++) {
            shown = without(part, dropped);
        }
        return shown;
    }

    private static int size(Part part) {
        return part.lines().size();
    }

    /** The duties without their last lines; without any, the least of them. */
    private Part without(Part part, int dropped) {
        return dropped == size(part)
                ? counted(part)
                : with(
                        part,
                        part.lines().subList(0, size(part) - dropped),
                        spoken.say("page.more.keep-up", new KeepUpPart(advice, rows, spoken).duties(dropped)));
    }

    /** The duties of the law for this air and kit, by when, and how many more there are. */
    private Part counted(Part part) {
        return new KeepUpPart(advice, rows, spoken)
                .core()
                .map(least -> tone.of(with(part, List.of(), least)))
                .orElseGet(() -> numbered(part));
    }

    /** How many duties there are, and no more. */
    private Part numbered(Part part) {
        return tone.of(with(
                part, List.of(), spoken.say("page.all.keep-up", advice.checks().size())));
    }

    private static Part with(Part part, List<Line> lines, String last) {
        return new Part(
                part.key(),
                part.title(),
                Stream.concat(lines.stream(), Stream.of(new Line.Says(Sign.NONE, last)))
                        .toList());
    }
}
