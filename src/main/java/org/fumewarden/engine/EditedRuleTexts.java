package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Tongue;

/** The rules that somebody's folder has otherwise than the program, in their text or in their sentence in some language. */
final class EditedRuleTexts {
    private static final Pattern SAYS = Pattern.compile("/says_([a-z]+)\\.yaml$");

    private EditedRuleTexts() {}

    /** By id, what the program has in the place of a rule. */
    static SortedMap<String, String> in(RuleFolder folder, List<String> parts) {
        RuleFolder program = folder.program().only(parts);
        Map<String, String> now = texts(folder.like(program), parts);
        Map<String, String> before = texts(program, parts);
        SortedMap<String, String> edited = new TreeMap<>();
        before.forEach((id, text) -> {
            if (!text.equals(now.get(id))) {
                edited.put(id, now.containsKey(id) ? "another rule" : "this rule");
            }
        });
        now.keySet().stream().filter(id -> !before.containsKey(id)).forEach(id -> edited.put(id, "no such rule"));
        return edited;
    }

    /** What each rule says, without the blanks between its words. */
    private static Map<String, String> texts(RuleFolder folder, List<String> parts) {
        Map<String, String> texts = new TreeMap<>();
        WrittenFile.readAll(folder).forEach(file -> file.rules()
                .forEach(rule ->
                        texts.merge(rule.id(), StringUtils.normalizeSpace(rule.text()), (one, other) -> one + other)));
        for (String name : folder.names("", ".yaml")) {
            Matcher says = SAYS.matcher(name);
            if (says.find()) {
                Tongue.read(folder, parts, says.group(1))
                        .sentences()
                        .forEach((id, sentence) -> texts.merge(id, sentence, (one, other) -> one + other));
            }
        }
        return texts;
    }
}
