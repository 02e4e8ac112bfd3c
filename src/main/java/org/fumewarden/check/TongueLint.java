package org.fumewarden.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Tongue;
import org.fumewarden.engine.WrittenFile;
import org.fumewarden.engine.WrittenRule;

/** Sentences in another language: each is about a rule of its folder and has the places of the rule's own sentence. */
final class TongueLint {
    private static final Pattern PLACE = Pattern.compile("\\{[^}]*}");
    private static final Pattern FILE = Pattern.compile("[^/]+/says_([a-z]+)\\.yaml");

    private TongueLint() {}

    static List<Problem> check(RuleFolder folder, List<WrittenRule> rules) {
        List<Problem> problems = new ArrayList<>();
        for (String name : folder.names("", ".yaml")) {
            if (FILE.matcher(name).matches()) {
                file(folder, name, rules, problems);
            }
        }
        for (String part : folder.isShipped() ? List.<String>of() : folder.folders()) {
            RuleFolder.shipped().names(part + "/says_", ".yaml").stream()
                    .filter(name -> folder.names(name, "").isEmpty())
                    .forEach(name -> problems.add(new Problem(
                            folder.origin() + "/" + name,
                            0,
                            "",
                            "is missing (the program has it), so these rules have no sentence in that language.",
                            "restore it.")));
        }
        return problems;
    }

    /** Nothing is said of a folder of which some file cannot be read: its rules would all be missing. */
    private static void file(RuleFolder folder, String name, List<WrittenRule> rules, List<Problem> problems) {
        String part = StringUtils.substringBefore(name, "/");
        String language = FILE.matcher(name).replaceAll("$1");
        Map<String, WrittenRule> own = rules.stream()
                .filter(r -> r.folder().equals(part))
                .collect(Collectors.toMap(WrittenRule::id, Function.identity(), (a, b) -> a));
        boolean unread = WrittenFile.readAll(folder).stream()
                .anyMatch(f -> f.folder().equals(part)
                        && f.rules().isEmpty()
                        && !f.refused().isEmpty());
        if (unread) {
            return;
        }
        try {
            Tongue tongue = Tongue.read(folder, List.of(part), language);
            Map<String, Integer> lines = lines(folder.located(name));
            tongue.sentences().forEach((id, says) -> {
                WrittenRule rule = own.get(id);
                if (rule == null) {
                    problems.add(new Problem(
                            folder.origin() + "/" + name,
                            lines.get(id),
                            id,
                            "is not a rule of this folder.",
                            Nearest.remedy(id, own.keySet())));
                } else if (!places(says).equals(places(said(rule)))) {
                    problems.add(new Problem(
                            folder.origin() + "/" + name,
                            lines.get(id),
                            id,
                            "has the places " + places(says) + ", the rule has " + places(said(rule)) + ".",
                            "keep every {place} of the rule's own sentence, and add none."));
                }
            });
            if (tongue.complete()) {
                Set<String> missing = new TreeSet<>(own.keySet());
                missing.removeAll(tongue.sentences().keySet());
                missing.forEach(id -> problems.add(new Problem(
                        own.get(id).file(),
                        own.get(id).line(),
                        id,
                        "has no sentence in " + name + ", though that says complete: true.",
                        "translate it there, or say complete: false.")));
            }
        } catch (InputException e) {
            problems.addAll(e.problems());
        }
    }

    /** The line of each sentence. */
    private static Map<String, Integer> lines(Located file) {
        return Optional.ofNullable(file.entries().get("rules"))
                .map(Located::entries)
                .orElse(Map.of())
                .entrySet()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().line()));
    }

    private static String said(WrittenRule rule) {
        return rule.note("says").orElse(StringUtils.substringAfter(rule.name(), " "));
    }

    private static Set<String> places(String says) {
        return PLACE.matcher(says).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}
