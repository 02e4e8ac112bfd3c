package org.fumewarden.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A day before any list of a code is refused, also where the officer states every limit. */
final class BeforeAnyListTest {
    private static Advice advise(String code, String on) {
        String task = """
                title: Brackets
                code: %s
                on: %s
                task: {process: grinding, base-metal: mild-steel, coating: none, place: indoors, extraction: none}
                atmosphere: {immediately-dangerous: false}
                exposures:
                  - {agent: dust-respirable, twa: 0.1 mg/m3, limit-twa: 4 mg/m3, limit-from: "list of that day"}
                  - {agent: dust-inhalable, twa: 0.1 mg/m3, limit-twa: 10 mg/m3, limit-from: "list of that day"}
                  - {agent: iron-oxide, twa: 0.1 mg/m3, limit-twa: 5 mg/m3, limit-from: "list of that day"}
                """.formatted(code, on);
        Advisor advisor = Advisor.shipped(code);
        return Bench.ofText("task", task, id -> advisor).advise();
    }

    /** The days are those of the editions named in the tables: EN 529:2005, BGR 190 of 2011, AS/NZS 1715:2009; 1910.134 from memory. */
    @ParameterizedTest
    @CsvSource({
        "gb, 2004-12-31, 2005-01-01",
        "us, 1998-04-07, 1998-04-08",
        "de, 2010-12-31, 2011-01-01",
        "au, 2008-12-31, 2009-01-01",
        "nz, 2008-12-31, 2009-01-01",
        "fi, 2004-12-31, 2005-01-01",
        "it, 2004-12-31, 2005-01-01",
        "se, 2004-12-31, 2005-01-01"
    })
    void theDayBeforeIsRefusedAndSaysWhatWouldDo(String code, String before, String first) {
        for (String day : new String[] {"1950-01-01", before}) {
            Problem problem = assertThrows(InputException.class, () -> advise(code, day))
                    .problems()
                    .get(0);
            assertEquals("on", problem.field(), problem.text());
            assertEquals(3, problem.line(), problem.text());
            assertTrue(problem.text().contains("before any list that is held"), problem.text());
            assertTrue(problem.text().contains("competent person"), problem.text());
        }
        assertEquals(first, advise(code, first).on().toString());
    }
}
