package org.fumewarden.web;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Tongue;
import org.fumewarden.engine.RuleBase;
import org.fumewarden.report.html.Words;

/** The codes that can decide, each compiled once when it is first asked for. */
public final class Library {
    private final RuleFolder folder;
    private final boolean compiledNow;
    private final Supplier<LocalDate> today;
    private final Map<String, CodeCard> cards = new ConcurrentHashMap<>();
    private final Map<String, Advisor> advisors = new ConcurrentHashMap<>();

    private Library(RuleFolder folder, boolean compiledNow, Supplier<LocalDate> today) {
        this.folder = folder;
        this.compiledNow = compiledNow;
        this.today = today;
    }

    /** The rules that ship with the program. */
    public static Library shipped(Supplier<LocalDate> today) {
        return new Library(RuleFolder.shipped(), false, today);
    }

    /** Rules from a folder that somebody edits, as they are at the start. */
    public static Library edited(Path folder, Supplier<LocalDate> today) {
        return new Library(RuleFolder.at(folder), true, today);
    }

    /** Makes the codes of the starting tasks ready, one after the other, so that nobody waits for the first answer. */
    public void warm() {
        Thread thread = new Thread(
                () -> Starts.NAMES.stream()
                        .map(name -> Bench.ofText(name, Starts.text(name), this::advisor))
                        .filter(bench -> codes().contains(bench.code()))
                        .forEach(Bench::advise),
                "fumewarden-warm");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    List<String> codes() {
        return folder.codes();
    }

    /** The id of a code that people name otherwise; empty when no code is meant. */
    String known(String code) {
        try {
            return codes().contains(code) ? code : CodeBook.card(folder, code).id();
        } catch (InputException e) {
            return "";
        }
    }

    CodeCard card(String code) {
        return cards.computeIfAbsent(code, id -> CodeBook.card(folder, id));
    }

    Advisor advisor(String code) {
        return advisors.computeIfAbsent(
                code, id -> compiledNow ? new Advisor(RuleBase.compiled(folder, id)) : Advisor.shipped(id));
    }

    /** How far the rules of a code speak the language of some words. */
    Tongue tongue(String code, Words words) {
        return advisor(code).base().book().tongue(words.language());
    }

    /** The folder of the rules of a code, when somebody changed them. */
    Optional<String> changed(String code) {
        return advisor(code).base().book().changedFolder();
    }

    LocalDate today() {
        return today.get();
    }
}
