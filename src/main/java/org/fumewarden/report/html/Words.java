package org.fumewarden.report.html;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The words of the sheet and the page in one language. Sentences of rules stay as the rule base has them. */
public final class Words {
    /** The languages that have a bundle, the first of which is used when another is asked for. */
    public static final List<String> LANGUAGES = List.of(Locale.ENGLISH.getLanguage(), Locale.GERMAN.getLanguage());

    private static final String CHOICE = "choice.";
    private static final String WHO = "who.";
    private static final String BUNDLE = "org.fumewarden.messages";
    /** Names of the catalogues of the rule base: own translations beside the tables. */
    private static final String NAMES = "org.fumewarden.names";

    private final String language;
    private final ResourceBundle bundle;
    private final ResourceBundle names;

    private Words(String language, Locale locale) {
        this.language = language;
        this.bundle = read(BUNDLE, locale);
        this.names = read(NAMES, locale);
    }

    /** The words of a language such as {@code de} or {@code de-AT}; English when there is no bundle for it. */
    public static Words in(String language) {
        String wanted = Locale.forLanguageTag(language).getLanguage();
        String known = LANGUAGES.contains(wanted) ? wanted : LANGUAGES.get(0);
        Locale locale = known.equals(LANGUAGES.get(0)) ? Locale.ROOT : Locale.forLanguageTag(known);
        return new Words(known, locale);
    }

    private static ResourceBundle read(String bundle, Locale locale) {
        return ResourceBundle.getBundle(
                bundle, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** The names of ids of the rule base in this language; none in that of the rule base. */
    public Map<String, String> names() {
        Map<String, String> all = new LinkedHashMap<>();
        // An answer is called after its own question; many words of answers stand among the messages.
        bundle.keySet().stream()
                .filter(key -> key.startsWith(CHOICE))
                .forEach(key -> all.put(key.substring(key.indexOf('.') + 1), bundle.getString(key)));
        for (String key : named()) {
            if (Stream.of("agent.", CHOICE, "device.", WHO).anyMatch(key::startsWith)) {
                all.put(key.substring(key.lastIndexOf('.') + 1), names.getString(key));
                all.put(key.substring(key.indexOf('.') + 1), names.getString(key));
            }
        }
        return all;
    }

    /** Every key of a catalogue name that the language has, sorted. */
    public List<String> named() {
        return List.copyOf(new TreeSet<>(names.keySet()));
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
        if (bundle.containsKey(key)) {
            return bundle.getString(key);
        }
        return names.containsKey(key) ? names.getString(key) : otherwise;
    }

    /** Every key with its words, sorted by key. */
    public Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        bundle.keySet().forEach(key -> all.put(key, bundle.getString(key)));
        return all;
    }
}
