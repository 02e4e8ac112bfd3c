package org.fumewarden.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RowAffirmer;
import picocli.CommandLine.Option;

/** A reviewer's check of one row, written into a file beside the rules. */
final class AffirmOptions {
    @Option(
            names = "--affirm",
            required = true,
            paramLabel = "ROW",
            description =
                    "Row that was compared with its document, for example gb-limits#cadmium/twa; a row that begins on a day to "
                            + "come with that day, such as \"eu-limits-carcinogens#cadmium/twa from 2027-07-11\".")
    private String row;

    @Option(
            names = "--value",
            paramLabel = "VALUE",
            description = "What the document gives, such as 0.025 or \"0.025 mg/m3\": the row must have the same.")
    private String value;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who compared it.")
    private String by;

    @Option(
            names = "--document",
            required = true,
            paramLabel = "TEXT",
            description = "Document that it was compared with, with its edition.")
    private String document;

    @Option(
            names = "--place",
            required = true,
            paramLabel = "TEXT",
            description = "Place in the document, such as a table and its line.")
    private String place;

    @Option(names = "--on", paramLabel = "DATE", description = "Day of the check; today when not given.")
    private LocalDate on;

    /** Writes the check and says what it changed. */
    String write(Path rules, LocalDate today) {
        if (rules == null) {
            throw new InputException(new Problem(
                    "--affirm",
                    0,
                    "",
                    "writes into a file beside the rules, and the shipped rules are no folder.",
                    "name your folder of rules: --rules rules."));
        }
        LocalDate day = on == null ? today : on;
        if (day.isAfter(today)) {
            throw new InputException(new Problem(
                    "--on", 0, "", "is a day to come: " + day + ".", "give the day on which the row was compared."));
        }
        RowAffirmer.Written written =
                new RowAffirmer(rules).affirm(row, Optional.ofNullable(value), by, day, document, place);
        String other = written.other().isEmpty()
                ? ""
                : "\n  Compared with " + document + "; the document of the row is another: " + written.other() + ".";
        return written.file() + "\n  " + String.join("\n  ", written.rows()) + other + "\n  was "
                + written.before().key() + ", counts as " + written.after().key() + " now: affirmed by " + by + " on "
                + day + " against " + document + ", " + place
                + "\n  It holds for the value compared and for no other; have it reviewed before it is shared.\n";
    }
}
