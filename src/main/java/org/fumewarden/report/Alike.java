package org.fumewarden.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.trail.Sentence;

/**
 * Sentences of one form, told as the form and what differs. In the form {@code {1}} stands for the first word or words that
 * differ; {@code {of}} for the name that each sentence has under that word, with a capital as {@code {Of}}.
 *
 * @param form the sentence with its places
 * @param fillings what stands in the numbered places, for each sentence
 */
record Alike(String form, List<List<String>> fillings) {
    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]*)(\\d*)}");
    private static final String BRACE = "{";
    private static final List<String> PLAIN = Sentence.plain("").fixed();

    /** Sentences of no common form, taken apart into the words with which all begin and end and what stands between. */
    private static List<Sentence> apart(List<Sentence> told) {
        List<String> form = told.get(0).fixed();
        if (!form.equals(PLAIN) && told.stream().allMatch(s -> s.fixed().equals(form))) {
            return told;
        }
        List<String> texts = told.stream().map(Sentence::text).toList();
        String begin = begin(texts);
        List<String> rest = texts.stream().map(t -> t.substring(begin.length())).toList();
        String end = StringUtils.reverse(
                begin(rest.stream().map(StringUtils::reverse).toList()));
        return (begin + end).isEmpty() || (begin + end).contains(BRACE)
                ? told
                : rest.stream()
                        .map(r -> new Sentence(List.of(begin, end), List.of(r.substring(0, r.length() - end.length()))))
                        .toList();
    }

    /** The whole words with which all of some texts begin. */
    private static String begin(List<String> texts) {
        String common = StringUtils.getCommonPrefix(texts.toArray(String[]::new));
        return common.substring(0, common.lastIndexOf(' ') + 1);
    }

    /** What one sentence may name. */
    interface Named {
        /** The name of a word in the sentence of that number, or an empty text. */
        String name(int sentence, String word);
    }

    /**
     * Finds the form of some sentences.
     *
     * @param words what a sentence may name, in the order in which they are tried
     */
    static Alike of(List<Sentence> told, List<String> words, Named named) {
        List<Sentence> sentences = apart(told);
        Sentence first = sentences.get(0);
        boolean same = sentences.stream().allMatch(s -> s.text().equals(first.text()));
        if (same && !first.text().contains(BRACE)) {
            return new Alike(first.text(), Collections.nCopies(sentences.size(), List.of()));
        }
        boolean alike = sentences.stream().allMatch(s -> s.fixed().equals(first.fixed()))
                && first.fixed().stream().noneMatch(f -> f.contains(BRACE));
        if (same || !alike) {
            return new Alike(
                    "{1}", sentences.stream().map(s -> List.of(s.text())).toList());
        }
        return new Finder(sentences, words, named).alike();
    }

    /** Puts words into the places of a form. A place for which there is nothing stays as it is. */
    static String filled(String form, List<String> fillings, Map<String, String> names) {
        return PLACE.matcher(form).replaceAll(place -> {
            String word = place.group(1) + place.group(2);
            return Matcher.quoteReplacement(
                    place.group(1).isEmpty()
                            ? numbered(word, fillings).orElse(place.group())
                            : named(word, names).orElse(place.group()));
        });
    }

    private static Optional<String> numbered(String number, List<String> fillings) {
        int place = number.isEmpty() || number.length() > 3 ? 0 : Integer.parseInt(number);
        return place > 0 && place <= fillings.size() ? Optional.of(fillings.get(place - 1)) : Optional.empty();
    }

    private static Optional<String> named(String word, Map<String, String> names) {
        return Optional.ofNullable(names.get(StringUtils.uncapitalize(word)))
                .map(name -> Character.isUpperCase(word.charAt(0)) ? StringUtils.capitalize(name) : name);
    }

    /** Goes through the places of sentences that differ in nothing else. */
    private static final class Finder {
        private final List<Sentence> sentences;
        private final List<String> words;
        private final Named named;
        private final List<List<String>> fillings = new ArrayList<>();
        private final StringBuilder form = new StringBuilder();
        private int numbered;
        /** True when the form ends with a numbered place and a space. */
        private boolean open;

        Finder(List<Sentence> sentences, List<String> words, Named named) {
            this.sentences = sentences;
            this.words = words;
            this.named = named;
            sentences.forEach(s -> fillings.add(new ArrayList<>()));
        }

        Alike alike() {
            List<String> fixed = sentences.get(0).fixed();
            form.append(fixed.get(0));
            for (int place = 0; place + 1 < fixed.size(); place++) {
                boolean joins = open && fixed.get(place).equals(" ");
                place(place, joins);
                form.append(fixed.get(place + 1));
            }
            return new Alike(form.toString(), fillings);
        }

        private void place(int place, boolean joins) {
            String first = sentences.get(0).filled().get(place);
            boolean same =
                    sentences.stream().allMatch(s -> s.filled().get(place).equals(first));
            String known = same ? "" : known(place);
            open = false;
            if (same && !first.contains(BRACE)) {
                form.append(first);
            } else if (!known.isEmpty()) {
                form.append('{').append(known).append('}');
            } else if (joins) {
                form.setLength(form.length() - 1);
                for (int i = 0; i < fillings.size(); i++) {
                    fillings.get(i)
                            .set(
                                    numbered - 1,
                                    fillings.get(i).get(numbered - 1) + " "
                                            + sentences.get(i).filled().get(place));
                }
                open = true;
            } else {
                numbered++;
                form.append('{').append(numbered).append('}');
                for (int i = 0; i < fillings.size(); i++) {
                    fillings.get(i).add(sentences.get(i).filled().get(place));
                }
                open = true;
            }
        }

        /** The word under which each sentence has the name that stands in this place. */
        private String known(int place) {
            for (String word : words) {
                if (stands(place, word, false)) {
                    return word;
                }
                if (stands(place, word, true)) {
                    return StringUtils.capitalize(word);
                }
            }
            return "";
        }

        private boolean stands(int place, String word, boolean capital) {
            for (int i = 0; i < sentences.size(); i++) {
                String name = named.name(i, word);
                String expected = capital ? StringUtils.capitalize(name) : name;
                if (name.isEmpty() || !sentences.get(i).filled().get(place).equals(expected)) {
                    return false;
                }
            }
            return true;
        }
    }
}
