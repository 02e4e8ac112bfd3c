package org.fumewarden.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.TreeSet;

/** The words of the sheet and the page in one language. Sentences of rules stay as the rule base has them. */
public final class Words {
    /** The languages that have a bundle, the first of which is used when another is asked for. */
    public static final List<String> LANGUAGES = List.of(Locale.ENGLISH.getLanguage(), Locale.GERMAN.getLanguage());

    private static final String BUNDLE = "org.fumewarden.messages";

    private final String language;
    private final ResourceBundle bundle;

    private Words(String language, ResourceBundle bundle) {
        this.language = language;
        this.bundle = bundle;
    }

    /** The words of a language such as {@code de} or {@code de-AT}; English when there is no bundle for it. */
    public static Words in(String language) {
        String wanted = Locale.forLanguageTag(language).getLanguage();
        String known = LANGUAGES.contains(wanted) ? wanted : LANGUAGES.get(0);
        Locale locale = known.equals(LANGUAGES.get(0)) ? Locale.ROOT : Locale.forLanguageTag(known);
        return new Words(
                known,
                ResourceBundle.getBundle(
                        BUNDLE,
                        locale,
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }

    /** True when the words are those of the rule base. */
    public boolean ofRuleBase() {
        return language.equals(LANGUAGES.get(0));
    }

    /** Tag of the language, for example {@code de}. */
    public String language() {
        return language;
    }

    /**
     * The words for a key, with {@code {0}}, {@code {1}} replaced.
     *
     * @throws MissingResourceException when no bundle has the key
     */
    public String say(String key, Object... parts) {
        String text = bundle.getString(key);
        for (int i = 0; i < parts.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return text;
    }

    /** The words for a key, or the given text when no bundle has it. */
    public String sayOr(String key, String otherwise) {
        return bundle.containsKey(key) ? bundle.getString(key) : otherwise;
    }

    /** Every key with its words, sorted by key. */
    public Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        new TreeSet<>(bundle.keySet()).forEach(key -> all.put(key, bundle.getString(key)));
        return all;
    }
}
