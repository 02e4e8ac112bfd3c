package org.fumewarden.cli;

import java.util.Locale;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.html.Words;
import picocli.CommandLine.Option;

/** The language of what is printed. */
final class LanguageOption {
    @Option(
            names = "--language",
            paramLabel = "TAG",
            description =
                    "Language of what is printed: en or de; en when not given. Where a command has no German, its first line says so.",
            defaultValue = "en")
    private String language;

    /** For a command that prints English: a line that says so in the language that was asked for, nothing for English. */
    String english() {
        Words words = words();
        return words.ofRuleBase() ? "" : words.say("command.english") + "\n\n";
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
