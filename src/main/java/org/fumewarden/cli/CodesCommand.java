package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.CodeSummary;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.engine.RuleCard;
import org.fumewarden.model.Confidence;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the codes: what each folder covers, its edition, how well its values are known, what it lacks. */
@Command(
        name = "codes",
        mixinStandardHelpOptions = true,
        description = "Lists the codes: what each covers, its edition, how well its values are known, what it lacks.",
        footer = {"", "Examples:", "  fumewarden codes", "  fumewarden codes gb --changes"})
final class CodesCommand implements Callable<Integer> {
    @Parameters(paramLabel = "ID", arity = "0..*", description = "Codes to list; all when none is given.")
    private List<String> ids = List.of();

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules, which are compiled first.")
    private Path rules;

    @Option(names = "--changes", description = "Also lists the days on which rows begin or end.")
    private boolean changes;

    @Option(
            names = "--values",
            description = "Counts for each table how well its values are known, the least known first.")
    private boolean values;

    @Mixin
    private LanguageOption language;

    @Spec
    private CommandSpec spec;

    private Words words;

    @Override
    public Integer call() {
        words = language.words();
        RuleFolder folder = rules == null ? RuleFolder.shipped() : RuleFolder.at(rules);
        if (folder.codes().isEmpty()) {
            throw new InputException(folder.codeless());
        }
        List<String> chosen = ids.isEmpty() ? folder.codes() : ids;
        for (String id : chosen) {
            if (!folder.codes().contains(id)) {
                throw new InputException(new Problem(
                        folder.origin(),
                        0,
                        CodeBook.CODE,
                        "is not a code of these rules: \"" + id + "\".",
                        Nearest.remedy(id, folder.codes())));
            }
        }
        PrintWriter out = spec.commandLine().getOut();
        if (values) {
            out.print(new ValueSheet(words)
                    .of(chosen.stream().map(id -> CodeBook.read(folder, id)).toList()));
            out.flush();
            return ExitCodes.COMPLETE;
        }
        for (String id : chosen) {
            RuleBase base = rules == null ? RuleBase.shipped(id) : RuleBase.compiled(folder, id);
            print(out, CodeSummary.of(folder, base.book()), base);
        }
        out.println(words.say("codes.end"));
        out.flush();
        return ExitCodes.COMPLETE;
    }

    private void print(PrintWriter out, CodeSummary summary, RuleBase base) {
        CodeCard card = summary.card();
        CodeBook book = base.book();
        Speech speech = Speech.of(words, book.vocabulary());
        out.printf("%s: %s%n", card.id(), words.sayOr("code." + card.id(), card.name()));
        line(out, "territory", speech.told(card.territory()));
        line(out, "edition", speech.cited(card.edition()));
        line(out, "checked", card.checkedOn());
        if (!card.borrows().isEmpty()) {
            line(out, "borrows", String.join(", ", card.borrows()));
        }
        line(out, "covers", card.covers().stream().map(speech::told).collect(Collectors.joining(", ")));
        line(out, "rows", rows(summary));
        line(out, "rules", rules(base, book));
        card.lacks().forEach(gap -> line(out, "lacks", speech.told(gap)));
        summary.notCovered().forEach(gap -> line(out, "cautions", words.say("codes.cautions.of", speech.told(gap))));
        if (changes) {
            days(summary, base).forEach((day, what) -> out.printf("  %-11s %s%n", day, String.join(", ", what)));
        }
        out.println();
    }

    /** Addresses of rows and ids of rules that begin or end on a day, by day. */
    private static Map<LocalDate, TreeSet<String>> days(CodeSummary summary, RuleBase base) {
        Map<LocalDate, TreeSet<String>> days = new TreeMap<>();
        summary.changes().forEach((day, what) -> days.computeIfAbsent(day, k -> new TreeSet<>())
                .addAll(what));
        for (RuleCard rule : base.cards().values()) {
            for (LocalDate day : List.of(rule.from(), rule.until())) {
                if (day.isAfter(CodeSummary.ALWAYS) && day.isBefore(CodeSummary.NEVER)) {
                    days.computeIfAbsent(day, k -> new TreeSet<>()).add(rule.id());
                }
            }
        }
        return days;
    }

    private void line(PrintWriter out, String label, String text) {
        out.printf("  %-11s %s%n", words.say("codes." + label), text);
    }

    private String rows(CodeSummary summary) {
        int all = summary.rows().values().stream().mapToInt(Integer::intValue).sum();
        String known = Arrays.stream(Confidence.values())
                .filter(summary.rows()::containsKey)
                .map(c -> summary.rows().get(c) + " " + words.say(ValueSheet.KNOWN + c.key()))
                .collect(Collectors.joining(", "));
        return words.say("codes.rows.of", all, summary.tables(), known, summary.borrowedRows());
    }

    private String rules(RuleBase base, CodeBook book) {
        Map<String, Long> byFolder = base.cards().values().stream()
                .collect(Collectors.groupingBy(RuleCard::code, TreeMap::new, Collectors.counting()));
        return book.folders().stream()
                .map(folder -> byFolder.getOrDefault(folder, 0L) + " " + words.sayOr("codes.of." + folder, folder))
                .collect(Collectors.joining(", "));
    }
}
