package org.fumewarden.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;
import org.apache.commons.text.StringSubstitutor;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.engine.Phase;

/** Writes the files with which a new code or rule begins. It never writes over a file. */
final class Scaffold {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");
    private static final List<String> CODE_FILES = List.of(
            "code.yaml",
            "tables/factors.yaml",
            "tables/limits.yaml",
            "tables/limits-none.yaml",
            "tables/thresholds.yaml",
            "tables/systems.yaml",
            "tables/not-covered.yaml",
            "tables/clauses.yaml",
            "atmosphere.drl",
            "exclusion.drl");
    private static final List<String> CODE_SCENARIOS = List.of(
            "OXYGEN-little-oxygen.yaml",
            "OXYGEN-little-oxygen-at.yaml",
            "ATMOSPHERE-020-tank.yaml",
            "ATMOSPHERE-020-tank-not.yaml");

    private final Path rules;
    private final Path scenarios;
    private final LocalDate today;

    Scaffold(Path rules, Path scenarios, LocalDate today) {
        this.rules = rules;
        this.scenarios = scenarios;
        this.today = today;
    }

    /**
     * Begins a code.
     *
     * @throws InputException when the id cannot be used or is taken
     */
    List<Path> code(String id) {
        String folder = id.replace('-', '_');
        if (!ID.matcher(id).matches() || !SourceVersion.isName("rules." + folder)) {
            throw wrong("ID", "is \"" + id + "\".", "small letters, digits and single hyphens, and no word of Java.");
        }
        RuleFolder known = RuleFolder.at(rules);
        if (known.folders().contains(id)) {
            throw wrong(
                    "ID", "is \"" + id + "\", which is there already.", "add a rule to it: new rule " + id + " need.");
        }
        Map<String, String> words = words(id);
        List<Path> written = new ArrayList<>();
        for (String file : CODE_FILES) {
            written.add(write(rules.resolve(id).resolve(file), fill("code/" + file, words)));
        }
        for (String file : CODE_SCENARIOS) {
            Path target = scenarios.resolve(id).resolve(words.get("PREFIX") + "-" + file);
            written.add(write(target, fill("code/scenarios/" + file, words)));
        }
        return written;
    }

    /**
     * Adds a rule to a phase of a code, with the next free number in tens.
     *
     * @throws InputException when there is no such folder
     */
    List<Path> rule(String code, Phase phase) {
        List<String> folders = RuleFolder.at(rules).folders();
        if (!folders.contains(code)) {
            throw wrong("CODE", "is \"" + code + "\", which is no folder of rules.", Nearest.remedy(code, folders));
        }
        Path file = rules.resolve(code).resolve(phase.key() + ".drl");
        Map<String, String> words = new HashMap<>(words(code));
        String old = Files.exists(file) ? read(file) : fill("rule/head.drl", with(words, "phase", phase.key()));
        String stem = words.get("PREFIX") + "-" + phase.name() + "-";
        String id = stem + String.format(Locale.ROOT, "%03d", next(old, stem));
        words.put("rule", id);
        words.put("body", fill("rule/" + phase.key() + ".txt", words).stripTrailing());
        String text = old.stripTrailing() + "\n\n" + fill("rule/rule.drl", words);
        List<Path> written = new ArrayList<>();
        Path folder = scenarios.resolve(code);
        written.add(write(folder.resolve(id + "-fires.yaml"), fill("rule/scenario.yaml", words)));
        written.add(write(folder.resolve(id + "-fires-not.yaml"), fill("rule/near-miss.yaml", words)));
        save(file, text);
        written.add(file);
        return written;
    }

    private static int next(String text, String stem) {
        Matcher numbers =
                Pattern.compile("rule \"" + Pattern.quote(stem) + "(\\d+)").matcher(text);
        int highest = 0;
        while (numbers.find()) {
            highest = Math.max(highest, Integer.parseInt(numbers.group(1)));
        }
        return highest / 10 * 10 + 10;
    }

    private Map<String, String> words(String id) {
        String prefix = id.toUpperCase(Locale.ROOT);
        return Map.of("id", id, "package", id.replace('-', '_'), "PREFIX", prefix, "today", today.toString());
    }

    private static Map<String, String> with(Map<String, String> words, String key, String value) {
        Map<String, String> more = new HashMap<>(words);
        more.put(key, value);
        return more;
    }

    private static String fill(String template, Map<String, String> words) {
        return new StringSubstitutor(words, "<<", ">>")
                .replace(ProgramFile.text(Scaffold.class, "scaffold/" + template));
    }

    private static Path write(Path file, String text) {
        if (Files.exists(file)) {
            throw wrong("file", file + " is there already.", "remove it or choose another id.");
        }
        return save(file, text);
    }

    private static Path save(Path file, String text) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            new OutputFile("", file, true).write(text.getBytes(StandardCharsets.UTF_8));
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputException wrong(String field, String found, String maybe) {
        return new InputException(new Problem("new", 0, field, found, maybe));
    }
}
