package org.fumewarden.audit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.codes.Vocabulary;

/** What a step looked for and did not find, as a person would say it; empty where saying it tells nothing. */
record NotFound(Vocabulary vocabulary) {
    private static final Pattern ANSWER = Pattern.compile("(.*): (no answer|not .*)");

    private record Way(Pattern words, String says) {}

    private static final List<Way> WAYS = List.of(
            way("no reason against it", "nothing rules it out"),
            way("no open question about it", "no question about it is open"),
            way("no reason to stop", "nothing stops the work"),
            way("no gap", "no question is open"),
            way("no exposure", "nothing was measured or published of it"),
            way("no exposure: (.*)", "nothing was measured or published of $1"),
            way("no exposure limit", "the code holds no limit for it"),
            way("no exposure limit: (.*)", "the code holds no limit for $1"),
            way("no judgement by a competent person", "no competent person judged it"),
            way("no judgement by a competent person: (.*)", "no competent person judged $1"),
            way("no respirator worn by choice", "the respirator is not worn by choice alone"));

    private static Way way(String words, String says) {
        return new Way(Pattern.compile(words), says);
    }

    Optional<String> says(String address, String words) {
        Matcher answer = ANSWER.matcher(words);
        boolean asked = vocabulary.asked(address).isPresent();
        if (asked && answer.matches()) {
            String about = answer.group(1);
            String the = about.matches("(the|a|an|there) .*") ? about : "the " + about;
            return Optional.of(
                    switch (answer.group(2)) {
                        case "no answer" -> "nothing was told of " + the;
                        case "not true" -> "nothing says yes to: " + about;
                        case "not false" -> "nothing says no to: " + about;
                        default ->
                            "nothing shows " + the + " as " + answer.group(2).substring("not ".length());
                    });
        }
        return WAYS.stream()
                .map(way -> way.words().matcher(words).matches()
                        ? way.words().matcher(words).replaceAll(way.says())
                        : "")
                .filter(said -> !said.isEmpty())
                .findFirst();
    }
}
