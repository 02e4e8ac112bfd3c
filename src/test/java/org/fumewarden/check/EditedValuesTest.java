package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RowAffirmer;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.codes.TypedApart;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.Limit;
import org.fumewarden.model.NoneListed;
import org.junit.jupiter.api.Test;

/**
 * A value that somebody edited or lost never keeps the standing of the one that was compared. The limit of nickel, 0.5 mg/m3 as Ni,
 * is that of EH40/2005 Table 1, 4th ed. 2020; what to do with an edited copy is common practice, no source.
 */
final class EditedValuesTest extends CopiedRules {
    private static final String LIMITS = "gb/tables/limits.yaml";
    private static final String NICKEL = "agent: nickel, unit: mg/m3, twa: 0.5,";
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private CodeBook book() {
        return CodeBook.read(RuleFolder.at(rules), "gb");
    }

    private Optional<Limit> nickel() {
        return book().rows(DAY).stream()
                .filter(Limit.class::isInstance)
                .map(Limit.class::cast)
                .filter(l -> l.agent().equals("nickel"))
                .findFirst();
    }

    private void edit() {
        EditedRules.edit(rules, LIMITS, NICKEL, NICKEL.replace("0.5", "5"));
    }

    @Test
    void anEditedLimitIsComparedByNobodyAndSaysWhatTheProgramHas() {
        assertEquals("", nickel().orElseThrow().ref().changed());
        edit();
        assertEquals(Confidence.MEMORY, nickel().orElseThrow().ref().citation().confidence());
        assertEquals("the program has twa 0.5", nickel().orElseThrow().ref().changed());
    }

    @Test
    void oneThatWasTypedASecondTimeKeepsItsStanding() throws IOException {
        edit();
        Files.writeString(
                folder.resolve(RuleFolder.TYPED),
                "table,row,cell,value,source\ngb-limits,nickel,twa,5,a document of the house\n");
        assertEquals("", nickel().orElseThrow().ref().changed());
        assertEquals(Confidence.READ, nickel().orElseThrow().ref().citation().confidence());
    }

    @Test
    void anAffirmationOfTheOldValueIsSaidToBeVoid() {
        new RowAffirmer(rules)
                .affirm("gb-limits#nickel/twa", Optional.empty(), "A. Officer", DAY, "EH40/2005", "Table 1");
        assertTrue(nickel().orElseThrow().ref().affirmed().contains("A. Officer"));
        assertTrue(RuleFolder.at(rules).isLikeShipped(book().folders()), "who affirms changes no rules");
        edit();
        assertEquals(
                "the program has twa 0.5; what A. Officer affirmed was another value",
                nickel().orElseThrow().ref().changed());
        assertEquals("", nickel().orElseThrow().ref().affirmed());
    }

    @Test
    void aLimitThatEndedWithoutASuccessorIsNotHeld() {
        EditedRules.edit(rules, LIMITS, NICKEL, NICKEL + " until: 2026-01-01,");
        assertTrue(nickel().isEmpty());
        assertTrue(book().rows(DAY).stream()
                .anyMatch(r -> r instanceof NoneListed n
                        && n.agent().equals("nickel")
                        && n.list().equals(NoneListed.NOT_HELD)));
    }

    @Test
    void aMissingTableIsOneFinding() throws IOException {
        Files.delete(rules.resolve(LIMITS));
        RuleFolder folder = RuleFolder.at(rules);
        assertEquals(
                List.of(rules + "/gb/tables/limits.yaml is missing (the program has it)."),
                MissingFiles.in(folder).stream()
                        .map(p -> p.text().lines().findFirst().orElseThrow())
                        .toList());
    }

    @Test
    void aBadLineOfTheTypedValuesIsNamed() throws IOException {
        Files.writeString(
                folder.resolve(RuleFolder.TYPED), "table,row,cell,value\n\ngb-limits,nickel\ngb-limits,tin,twa,2,x\n");
        TypedApart typed = TypedApart.beside(RuleFolder.at(rules));
        assertEquals(List.of(1, 3), typed.problems().stream().map(Problem::line).toList());
        assertEquals(
                List.of(4), typed.lines().stream().map(TypedApart.Line::line).toList());
    }
}
