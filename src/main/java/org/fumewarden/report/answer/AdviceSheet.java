package org.fumewarden.report.answer;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.advice.Status;
import org.fumewarden.codes.Tongue;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.model.Row;
import org.fumewarden.report.AdviceJson;
import org.fumewarden.report.SamplePart;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.Line;
import org.fumewarden.report.sheet.Part;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.Sign;
import org.fumewarden.report.sheet.TextForm;

/** The sheet of advice: one page that is read, and behind it, when asked for, all that it rests on. */
public final class AdviceSheet {
    /** Lines of text of the page, and what title, line below it, closing line and its gap take of them. */
    private static final int LINES = 60;

    private static final int FRAME = 5;

    /** Further lines for a language with longer words; the paper holds them. */
    private static final int LONGER_WORDS = 1;

    /** Lines that the duties get even where the air takes the rest. */
    private static final int LEAST = 5;

    private AdviceSheet() {}

    /**
     * Writes the sheet.
     *
     * @param detail false for the page alone
     */
    public static Sheet of(Bench bench, Advice advice, Words words, boolean detail) {
        RuleBase base = bench.advisor(bench.code()).base();
        Speech speech = Speech.of(words, base.book().vocabulary());
        if (words.ofRuleBase()) {
            Spoken spoken = new Spoken(base.book().vocabulary(), speech, Set.of());
            return sheet(bench, advice, advice, spoken, detail);
        }
        Tongue tongue = base.book().tongue(words.language());
        RuleBase speaking = base.speaking(tongue, words.names());
        Advice said = new Advisor(speaking).advise(bench.task(bench.code(), Map.of()));
        Spoken spoken = new Spoken(
                speaking.book().vocabulary(), speech, tongue.sentences().keySet());
        return sheet(bench, advice, said, spoken, detail);
    }

    /** True for a part that cites laws, whose numbers keep their points. */
    private static boolean cites(Part part, Spoken spoken) {
        return part.key().equals("notes")
                || part.key().equals("compare") && !spoken.words().ofRuleBase();
    }

    /** Says at the top how many sentences are not in the language of the sheet. */
    private static Sheet sheet(Bench bench, Advice advice, Advice said, Spoken spoken, boolean detail) {
        RuleBase base = bench.advisor(bench.code()).base();
        List<Row> rows = base.rowsOn(advice.on());
        Tone tone = new Tone(spoken.speech()::spelt);
        List<Part> page = parts(said, number(advice), rows, spoken, tone);
        List<Part> annex = detail
                ? new Annex(said, rows, base.book().documents(), spoken)
                        .write(SamplePart.of(bench, advice, spoken.speech())).stream()
                                .map(p -> cites(p, spoken) ? p : tone.of(p))
                                .toList()
                : List.of();
        long foreign = Stream.concat(page.stream(), annex.stream())
                .flatMap(p -> p.lines().stream())
                .filter(l -> l instanceof Line.Says says && !says.language().isEmpty())
                .count();
        String under = spoken.say(
                "sheet.under",
                spoken.say("sheet.kind"),
                advice.codeUsed().id(),
                spoken.words()
                        .sayOr(
                                "code." + advice.codeUsed().id(),
                                advice.codeUsed().name()),
                spoken.day(advice.on()));
        return new Sheet(
                spoken.say("sheet.kind"),
                advice.title(),
                under + (foreign == 0 ? "" : ". " + spoken.say("sheet.untranslated.some", foreign)),
                advice.status().key(),
                page,
                annex,
                spoken.say("closing"),
                spoken.words().language());
    }

    /** The parts in the order of the page. Those that must not be cut take their room first; the others share what is left. */
    private static List<Part> parts(Advice advice, String number, List<Row> rows, Spoken spoken, Tone tone) {
        ActsPart acts = new ActsPart(advice, rows, spoken);
        Part state = tone.of(new StatePart(advice, spoken).write());
        Part wear = tone.of(new WearPart(advice, spoken).write());
        Optional<Part> now = acts.write(advice.status() == Status.DO_NOT_ENTER ? "stop" : "do-now", "do-now", Sign.ACT)
                .map(tone::of);
        Optional<Part> leave = acts.write("leave", "leave", Sign.LEAVE).map(tone::of);
        Optional<Part> open = new OpenPart(advice, spoken).write().map(tone::of);
        Part issue = tone.of(new IssuePart(advice, number, spoken).write());
        int room = LINES
                + (spoken.words().ofRuleBase() ? 0 : LONGER_WORDS)
                - FRAME
                - TextForm.height(state)
                - TextForm.height(wear)
                - TextForm.height(issue);
        for (Optional<Part> kept : List.of(now, leave, open)) {
            room -= kept.map(TextForm::height).orElse(0);
        }
        Optional<Part> keepUp = new KeepUpPart(advice, rows, spoken).write().map(tone::of);
        int least = keepUp.map(p ->
                        Math.min(TextForm.height(p), Math.max(LEAST, TextForm.height(without(p, size(p) - 1, spoken)))))
                .orElse(0);
        int forAir = room - least;
        AirPart told = new AirPart(advice, spoken);
        Optional<Part> air = told.write()
                .map(tone::of)
                .filter(p -> TextForm.height(p) <= forAir)
                .or(told::brief)
                .map(tone::of)
                .map(cut(forAir, spoken));
        room -= air.map(TextForm::height).orElse(0);
        Optional<Part> upkeep = keepUp.map(cut(room, spoken));
        List<Part> parts = new ArrayList<>(List.of(state, wear));
        List.of(now, air, upkeep, leave, open).forEach(p -> p.ifPresent(parts::add));
        parts.add(issue);
        return parts;
    }

    /** Drops lines from the end until the part fits; a line says how many. */
    private static UnaryOperator<Part> cut(int room, Spoken spoken) {
        return part -> {
            Part shown = part;
            int dropped = 0;
            while (TextForm.height(shown) > room && dropped < size(part) - 1) {
                dropped++;
                shown = without(part, dropped, spoken);
            }
            return shown;
        };
    }

    /** SHA-256 of the advice as {@code --format json} writes it, so that paper and file are told to belong together. */
    private static String number(Advice advice) {
        try {
            byte[] json = AdviceJson.write(advice).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(json));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static int size(Part part) {
        return part.lines().stream()
                .mapToInt(l -> l instanceof Line.Table table ? table.rows().size() : 1)
                .sum();
    }

    /** The part without its last entries, sentences before the rows of its table. */
    private static Part without(Part part, int dropped, Spoken spoken) {
        List<Line> lines = new ArrayList<>(part.lines());
        int left = dropped;
        while (left > 0 && lines.size() > 1) {
            lines.remove(lines.size() - 1);
            left--;
        }
        if (left > 0 && lines.get(0) instanceof Line.Table table) {
            int rows = Math.max(1, table.rows().size() - left);
            lines.set(0, new Line.Table(table.heads(), table.rows().subList(0, rows), table.numbers()));
        }
        lines.add(new Line.Says(Sign.NONE, spoken.say("page.more." + part.key(), dropped)));
        return new Part(part.key(), part.title(), lines);
    }
}
