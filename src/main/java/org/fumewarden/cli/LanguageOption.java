package org.fumewarden.cli;

import java.util.Locale;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Speech;
import org.fumewarden.report.html.Words;
import picocli.CommandLine.Option;

/** The language of what is printed. */
final class LanguageOption {
    @Option(
            names = "--language",
            paramLabel = "TAG",
            description = "Language of what is printed: en or de; en when not given.",
            defaultValue = "en")
    private String language;

    /** The same bench, whose rules speak the language. */
    Bench speaking(Bench bench) {
        Words words = words();
        return words.ofRuleBase() ? bench : bench.speaking(words.language(), words.names());
    }

    /** How papers speak of the tasks of a bench. */
    Speech speech(Bench bench) {
        return Speech.of(words(), bench.book().vocabulary());
    }

    /**
     * The words of the language.
     *
     * @throws InputException when the program does not speak it
     */
    Words words() {
        if (!Words.LANGUAGES.contains(Locale.forLanguageTag(language).getLanguage())) {
            throw new InputException(new Problem(
                    "--language",
                    0,
                    "",
                    "cannot be \"" + language + "\": nothing is translated into it.",
                    "write " + String.join(" or ", Words.LANGUAGES) + "."));
        }
        return Words.in(language);
    }
}
