package org.fumewarden.web;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.fumewarden.advice.Advisor;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.RuleBase;

/** The codes that can decide, each compiled once when it is first asked for. */
public final class Library {
    private final Optional<RuleFolder> edited;
    private final Supplier<LocalDate> today;
    private final Map<String, Advisor> advisors = new ConcurrentHashMap<>();

    private Library(Optional<RuleFolder> edited, Supplier<LocalDate> today) {
        this.edited = edited;
        this.today = today;
    }

    /** The rules that ship with the program. */
    public static Library shipped(Supplier<LocalDate> today) {
        return new Library(Optional.empty(), today);
    }

    /** Rules from a folder that somebody edits, as they are at the start. */
    public static Library edited(Path folder, Supplier<LocalDate> today) {
        return new Library(Optional.of(RuleFolder.at(folder)), today);
    }

    List<String> codes() {
        return edited.orElseGet(RuleFolder::shipped).codes();
    }

    Advisor advisor(String code) {
        return advisors.computeIfAbsent(
                code,
                id -> new Advisor(edited.isPresent() ? RuleBase.compiled(edited.get(), id) : RuleBase.shipped(id)));
    }

    LocalDate today() {
        return today.get();
    }
}
