package org.fumewarden.report.html;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fumewarden.codes.Vocabulary;

/** How papers speak: in a language, and in English with the words of the code. */
public final class Speech {
    /** British English. */
    public static final Speech ENGLISH = new Speech(Words.in("en"), new Wording(Map.of()), Map.of());

    private static final Pattern FIGURE = Pattern.compile("[\\d.]+|\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern CLAUSES = Pattern.compile("(?<=; )|(?=; )");
    private static final Pattern PARTS = Pattern.compile("(?<=[;:,] )|(?=[;:,] )");

    private final Words words;
    private final Wording wording;
    private final Phrases phrases;
    private final Map<String, String> names;

    private Speech(Words words, Wording wording, Map<String, String> names) {
        this.words = words;
        this.wording = wording;
        this.phrases = Phrases.in(words.language());
        this.names = Map.copyOf(names);
    }

    /** The speech of a language under a code. */
    public static Speech of(Words words, Vocabulary vocabulary) {
        if (words.ofRuleBase()) {
            return new Speech(words, new Wording(vocabulary.catalogues().getOrDefault("wording", Map.of())), Map.of());
        }
        Map<String, String> names = new HashMap<>();
        words.names().forEach((id, own) -> names.put(vocabulary.name(id), own));
        Map<String, String> ofCode = vocabulary.catalogues().getOrDefault("wording-" + words.language(), Map.of());
        return new Speech(words, new Wording(ofCode), names);
    }

    /**
     * The speech of a language.
     *
     * @param wording what the code says instead of the words of the rule base
     */
    public static Speech of(Words words, Map<String, String> wording) {
        return new Speech(words, new Wording(words.ofRuleBase() ? wording : Map.of()), Map.of());
    }

    public Words words() {
        return words;
    }

    /** A phrase with its places {0}, {1} filled as they are. */
    public String say(String english, Object... parts) {
        String text =
                words.ofRuleBase() ? wording.of(english) : phrases.of(english).orElse(english);
        for (int i = 0; i < parts.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return text;
    }

    /** A sentence that another part of the program wrote in English and filled. */
    public String told(String english) {
        return words.ofRuleBase() ? wording.of(english) : phrases.told(english.stripTrailing(), this::inPlace);
    }

    /** A message on what somebody wrote, which is shown as it was written. */
    public String quoting(String english) {
        return words.ofRuleBase() ? english : phrases.told(english, UnaryOperator.identity());
    }

    /** What stands in a place: a name, or several short phrases side by side. */
    private String inPlace(String held) {
        String said = eachPart(CLAUSES, held, clause -> eachPart(PARTS, clause, UnaryOperator.identity()));
        return Written.in(words.language(), said);
    }

    /** A text, or else each part of it, as it is said; what is neither is left to the next. */
    private String eachPart(Pattern between, String held, UnaryOperator<String> next) {
        return Arrays.stream(between.split(held))
                .map(p -> Optional.ofNullable(names.get(p))
                        .or(() -> phrases.fitting(p, UnaryOperator.identity()))
                        .orElseGet(() -> next.apply(p)))
                .collect(Collectors.joining());
    }

    /** A text of its own with figures and days as the language writes them, and in English the words of the code. */
    public String spelt(String own) {
        return words.ofRuleBase() ? wording.of(own) : Written.in(words.language(), wording.of(own));
    }

    /** A citation: a foreign law keeps its own words, and ours are said. */
    public String cited(String place) {
        return words.ofRuleBase()
                ? place
                : phrases.fitting(place, UnaryOperator.identity()).orElseGet(() -> citedInParts(place));
    }

    private String citedInParts(String place) {
        int cut = place.lastIndexOf(", ");
        return cut < 0 ? place : cited(place.substring(0, cut)) + ", " + cited(place.substring(cut + 2));
    }

    /** A value of a record: words of the program are said, what a person wrote stays as it is. */
    public String valued(String value) {
        if (words.ofRuleBase()) {
            return value;
        }
        return phrases.of(value)
                .orElseGet(() -> FIGURE.matcher(value).matches() ? Written.in(words.language(), value) : value);
    }

    /** The words for a key, or else told. */
    public String named(String key, String otherwise) {
        return words.ofRuleBase() ? wording.of(words.sayOr(key, otherwise)) : words.sayOr(key, told(otherwise));
    }

    /** A day as people write it. */
    public String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(words.ofRuleBase() ? Locale.UK : Locale.forLanguageTag(words.language()))
                .format(day);
    }
}
