package org.fumewarden.engine;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.EditedWords;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.Tongue;

/** The rules that somebody's folder has otherwise than the program, in their text or in their sentence in some language, and the words of such sentences. */
final class EditedRuleTexts {
    private static final Pattern SAYS = Pattern.compile("/says_([a-z]+)\\.yaml$");

    private EditedRuleTexts() {}

    /** By id, what the program has in the place of a rule; by what {@link EditedWords} says of it, in the place of a word. */
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
        edited.putAll(EditedWords.between(words(folder.like(program), parts), words(program, parts)));
        return edited;
    }

    /** What each rule says, without the blanks between its words. */
    private static Map<String, String> texts(RuleFolder folder, List<String> parts) {
        Map<String, String> texts = new TreeMap<>();
        WrittenFile.readAll(folder).forEach(file -> file.rules()
                .forEach(rule ->
                        texts.merge(rule.id(), StringUtils.normalizeSpace(rule.text()), (one, other) -> one + other)));
        tongues(folder, parts).forEach(tongue -> tongue.sentences()
                .forEach((id, sentence) -> texts.merge(id, sentence, (one, other) -> one + other)));
        return texts;
    }

    /** What stands in the places of the sentences, in each language. */
    private static Map<String, String> words(RuleFolder folder, List<String> parts) {
        Map<String, String> words = new TreeMap<>();
        tongues(folder, parts).forEach(tongue -> tongue.words()
                .forEach((word, own) -> words.put(EditedWords.word(word, tongue.language()), '"' + own + '"')));
        return words;
    }

    private static Stream<Tongue> tongues(RuleFolder folder, List<String> parts) {
        return folder.names("", ".yaml").stream()
                .flatMap(name -> SAYS.matcher(name).results())
                .map(says -> says.group(1))
                .distinct()
                .map(language -> Tongue.read(folder, parts, language));
    }
}
