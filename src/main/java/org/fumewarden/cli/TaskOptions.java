package org.fumewarden.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.check.MissingFiles;
import org.fumewarden.check.Placeholders;
import org.fumewarden.codes.Affirmations;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.html.Words;
import picocli.CommandLine.Option;

/** Options of every command that reads a task: which rules, which code, which day. */
final class TaskOptions {
    @Option(
            names = "--code",
            paramLabel = "ID",
            description = "Code that decides, whatever the file says, such as gb or us.")
    private String code;

    @Option(names = "--on", paramLabel = "DATE", description = "Day whose rules apply, such as 2026-03-02.")
    private LocalDate on;

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of edited rules, which are compiled first.")
    private Path rules;

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "As in wearer.facial-hair=true: sets one value of the task.")
    private Map<String, String> changes = new LinkedHashMap<>();

    /** A bench for a task file: the file with the options of this command, ready for changes. */
    Bench bench(Path file) {
        return new Bench(file, changes, Optional.ofNullable(code), Optional.ofNullable(on), this::advisor);
    }

    /** The code that was named. */
    Optional<String> code() {
        return Optional.ofNullable(code);
    }

    /** The day that was named. */
    Optional<LocalDate> on() {
        return Optional.ofNullable(on);
    }

    /** The rules of this command. */
    RuleFolder folder() {
        return rules == null ? RuleFolder.shipped() : RuleFolder.at(rules);
    }

    /** The folder of the rules, when they are not those of this program. */
    Optional<String> foreign(CodeBook book) {
        return Optional.ofNullable(rules).filter(r -> !shipped(book)).map(Path::toString);
    }

    private static boolean shipped(CodeBook book) {
        RuleFolder own = RuleFolder.shipped();
        String id = book.card().id();
        return own.codes().contains(id) && CodeBook.read(own, id).revision().equals(book.revision());
    }

    /** The same when its rules or tables are others; who affirmed those of the program changed none. */
    Optional<String> changed(CodeBook book) {
        return book.changedFolder();
    }

    /** The first line of what goes out by changed rules; nothing when they are those of the program. */
    String banner(Words words, CodeBook... books) {
        return Stream.of(books)
                .flatMap(book -> changed(book).stream())
                .findFirst()
                .map(folder -> words.say("sheet.foreign-rules", folder) + "\n\n")
                .orElse("");
    }

    /** Says, where advice goes out without a sheet, that somebody changed the rules of a folder. */
    static void warn(Path rules, PrintWriter err) {
        Optional.ofNullable(rules)
                .map(RuleFolder::at)
                .flatMap(folder -> folder.changed(folder.folders()))
                .ifPresent(changed -> err.println(Words.in("en").say("sheet.foreign-rules", changed)));
    }

    /** The advisor of a code, on the rules of this command. */
    Advisor advisor(String id) {
        return advisor(rules, id);
    }

    /**
     * The advisor of a code, on the rules of a folder or, when it is null, those of the program.
     *
     * @throws InputException when a word of a scaffold is still to be filled in, or a value was compared on a day to come
     */
    static Advisor advisor(Path rules, String id) {
        if (rules == null) {
            return Advisor.shipped(id);
        }
        RuleFolder folder = RuleFolder.at(rules);
        Placeholders.refuse(folder, id);
        MissingFiles.refuse(folder, id);
        Affirmations.refuseToCome(folder, LocalDate.now());
        return new Advisor(RuleBase.compiled(folder, id));
    }
}
