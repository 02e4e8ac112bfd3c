package org.fumewarden.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;

/**
 * Sentences of the program and of its tables in another language, by the English ones. A sentence that changes loses its
 * translation, so that none can be out of date unseen; a test finds those without.
 */
final class Phrases {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final Pattern BREAK = Pattern.compile("(?<=[.?!:])\\s+(?=[\\p{Lu}\"])");

    /** Before the items of a list, which are said like other sentences. */
    private static final String ITEM = "- ";

    /** What may stand in a place: no sentence ends in it. */
    private static final String HELD = "((?:(?![.?!] \\p{Lu}).)+?)";

    /**
     * @param said how many letters stand in no place
     * @param fixed its words that stand in no place, in order: a text without them does not fit, which is told fast
     */
    private record Template(int said, List<String> fixed, Pattern english, List<String> places, String own) {
        boolean mayFit(String text) {
            return text.length() >= said + places.size()
                    && text.startsWith(fixed.get(0))
                    && text.endsWith(fixed.get(fixed.size() - 1))
                    && fixed.stream().allMatch(text::contains);
        }
    }

    private static final Map<String, Phrases> READ = new ConcurrentHashMap<>();

    private final Map<String, String> whole = new LinkedHashMap<>();
    private final List<Template> templates = new ArrayList<>();

    /** The phrases of a language, read once; none for a language without a file of them. */
    static Phrases in(String language) {
        return READ.computeIfAbsent(language, Phrases::read);
    }

    private static Phrases read(String language) {
        Phrases phrases = new Phrases();
        try (InputStream in = Phrases.class.getResourceAsStream("/org/fumewarden/phrases_" + language + ".tsv")) {
            if (in != null) {
                new String(in.readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .filter(l -> l.indexOf('\t') > 0)
                        .forEach(l -> phrases.add(l.substring(0, l.indexOf('\t')), l.substring(l.indexOf('\t') + 1)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // What says more fits first: a short form with many places fits nearly everything.
        phrases.templates.sort(Comparator.comparingInt(Template::said).reversed());
        return phrases;
    }

    private void add(String english, String own) {
        whole.put(english, own);
        Matcher place = PLACE.matcher(english);
        List<String> places = new ArrayList<>();
        StringBuilder pattern = new StringBuilder();
        int from = 0;
        while (place.find()) {
            pattern.append(Pattern.quote(english.substring(from, place.start())))
                    .append(HELD);
            places.add(place.group());
            from = place.end();
        }
        if (!places.isEmpty()) {
            pattern.append(Pattern.quote(english.substring(from)));
            List<String> fixed = List.of(PLACE.split(english, -1));
            templates.add(new Template(
                    String.join("", fixed).length(),
                    fixed,
                    Pattern.compile(pattern.toString(), Pattern.DOTALL),
                    places,
                    own));
        }
    }

    /** The phrase for an English one with the same {places}. */
    Optional<String> of(String english) {
        return Optional.ofNullable(whole.get(english));
    }

    /**
     * A filled text in the language; what no phrase fits stays as it is.
     *
     * @param inPlace what stands in a place that no phrase fits
     */
    String told(String english, UnaryOperator<String> inPlace) {
        String[] pieces = BREAK.split(english);
        List<String> said = new ArrayList<>();
        int at = 0;
        while (at < pieces.length) {
            int to = pieces.length;
            Optional<String> found = Optional.empty();
            while (to > at && found.isEmpty()) {
                found = fitting(String.join(" ", List.of(pieces).subList(at, to)), inPlace);
                to--;
            }
            said.add(found.orElse(inPlace.apply(pieces[at])));
            at = found.isPresent() ? to + 1 : at + 1;
        }
        return String.join(" ", said);
    }

    /** The phrase that fits the whole of a text, filled; what stands in quotation marks is shown as it was written. */
    Optional<String> fitting(String english, UnaryOperator<String> inPlace) {
        if (whole.containsKey(english)) {
            return of(english);
        }
        if (english.endsWith(".") && whole.containsKey(english.substring(0, english.length() - 1))) {
            return of(english.substring(0, english.length() - 1)).map(own -> own + ".");
        }
        if (whole.containsKey(english + ".")) {
            return of(english + ".").map(own -> StringUtils.removeEnd(own, "."));
        }
        for (Template template : templates) {
            if (!template.mayFit(english)) {
                continue;
            }
            Matcher matcher = template.english().matcher(english);
            if (matcher.matches()) {
                String own = template.own();
                for (int i = 0; i < template.places().size(); i++) {
                    String held = matcher.group(i + 1);
                    String place = template.places().get(i);
                    boolean quoted = template.own().contains("„" + place + "“");
                    own = own.replace(
                            place, quoted ? held : fitting(held, inPlace).orElseGet(() -> inPlace.apply(held)));
                }
                return Optional.of(own);
            }
        }
        return english.startsWith(ITEM)
                ? fitting(english.substring(ITEM.length()), inPlace).map(own -> ITEM + own)
                : Optional.empty();
    }
}
