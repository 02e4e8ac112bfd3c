package org.fumewarden.check;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeCard;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TableFile;

/** Nobody compared a table with its document on a day to come. */
final class DaysToCome {
    private DaysToCome() {}

    static List<Problem> in(RuleFolder folder, LocalDate today) {
        Set<Problem> problems = new LinkedHashSet<>();
        for (String code : folder.codes()) {
            CodeBook book = CodeBook.read(folder, code);
            CodeCard card = book.card();
            say(folder.origin() + "/" + card.id() + "/code.yaml", card.checkedOn(), today, problems);
            for (TableFile table : book.tables()) {
                say(table.file(), table.checkedOn().toString(), today, problems);
            }
        }
        return List.copyOf(problems);
    }

    /** Days as they are written, year first, sort as they follow each other. */
    private static void say(String file, String checked, LocalDate today, Set<Problem> problems) {
        if (checked.compareTo(today.toString()) > 0) {
            problems.add(new Problem(
                    file,
                    0,
                    "checked-on",
                    "is a day to come: " + checked + ".",
                    "give the day on which it was compared with its document."));
        }
    }
}
