package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Anchor;
import org.fumewarden.model.Duty;
import org.fumewarden.model.Frequency;
import org.fumewarden.model.Keep;
import org.fumewarden.model.Subject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RetentionTest {
    @TempDir(factory = MemoryFolder.class)
    Path folder;

    private static Duty kept(String id, Subject subject, String doneBy, String keep) {
        return Samples.exam(id, Frequency.MAX_INTERVAL, "P6M", Anchor.LAST_DONE, subject, doneBy, keep);
    }

    private static Details.Medical blood() {
        return new Details.Medical(Result.PASSED, "lead-blood", "", "", Optional.of(true), "", "");
    }

    private List<Retention.Kept> kept(Item item, List<Duty> duties, Draft... drafts) {
        try (Store store = Store.open(folder.resolve("log.db"))) {
            store.append(
                    Draft.registering(item, LocalDate.parse("2020-01-01"), "stores"),
                    Instant.parse("2020-01-01T08:00:00Z"));
            for (Draft draft : drafts) {
                store.append(draft, draft.on().atTime(12, 0).toInstant(java.time.ZoneOffset.UTC));
            }
            return new Retention(store, duties).of(item);
        }
    }

    private static Item.Wearer wearer(String end) {
        return new Item.Wearer(
                "W-01",
                "Odran Pell",
                "",
                Optional.empty(),
                end.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(end)),
                List.of(),
                Map.of());
    }

    private static Draft bloodOn(String day) {
        return new Draft("W-01", LocalDate.parse(day), "physician", blood());
    }

    /** COSHH regulation 9(4): at least five years from the day the record was made; a leap day rounds up. */
    @Test
    void fiveYearsFromALeapDayEndOnTheFirstOfMarch() {
        Retention.Kept record = kept(
                        Samples.powered("U-014"),
                        List.of(kept("exam", Subject.UNIT, "examination", "record made + P5Y")),
                        Samples.examined("U-014", "2024-02-29", Result.PASSED))
                .get(1);
        assertEquals(Optional.of(LocalDate.parse("2029-03-01")), record.keepThrough());
        assertFalse(record.mayGo(LocalDate.parse("2029-03-01")));
        assertTrue(record.mayGo(LocalDate.parse("2029-03-02")));
    }

    /** 29 CFR 1910.1025(n)(2): 40 years, or employment plus 20 years, whichever is longer; legs by hand 2065-06-15 and 2050-01-01. */
    @Test
    void theLaterOfTwoLegsCounts() {
        String rule = "later of record made + P40Y and employment end + P20Y";
        List<Duty> duties = List.of(kept("blood", Subject.WEARER, "medical/lead-blood", rule));
        assertEquals(
                Optional.of(LocalDate.parse("2065-06-15")),
                kept(wearer("2030-01-01"), duties, bloodOn("2025-06-15")).get(1).keepThrough());
    }

    /** 29 CFR 1910.1020(d)(1)(i): employment plus 30 years; while the end is unknown no day can be given. */
    @Test
    void anUnknownEndOfEmploymentKeepsTheRecord() {
        List<Duty> duties = List.of(kept("medical", Subject.WEARER, "medical", "employment end + P30Y"));
        Retention.Kept open = kept(wearer(""), duties, bloodOn("2025-06-15")).get(1);
        assertEquals(Optional.empty(), open.keepThrough());
        assertFalse(open.mayGo(LocalDate.parse("2999-01-01")));
        assertTrue(open.why().contains("employment end"), open.why());
    }

    @Test
    void theLongestRuleWinsAndTheLastEntryMovesTheEnd() {
        List<Duty> duties = List.of(
                kept("five", Subject.WEARER, "medical/lead-blood", "record made + P5Y"),
                kept("forty", Subject.WEARER, "medical/lead-blood", "last entry + P40Y"));
        List<Retention.Kept> all = kept(wearer(""), duties, bloodOn("2025-06-15"), bloodOn("2026-01-10"));
        assertEquals(Optional.of(LocalDate.parse("2066-01-10")), all.get(1).keepThrough());
    }

    /** 29 CFR 1910.134(m)(2): a fit test record is kept until the next one. */
    @Test
    void untilTheNextRecordMeansTheDayOfTheNext() {
        List<Duty> duties = List.of(kept("blood", Subject.WEARER, "medical/lead-blood", "until next record"));
        List<Retention.Kept> all = kept(wearer(""), duties, bloodOn("2025-06-15"), bloodOn("2026-01-10"));
        assertEquals(Optional.of(LocalDate.parse("2026-01-10")), all.get(1).keepThrough());
        assertEquals(Optional.empty(), all.get(2).keepThrough());
    }

    @Test
    void withoutARuleOrAPeriodNothingMayGo() {
        List<Duty> unstated = List.of(kept("blood", Subject.WEARER, "medical/lead-blood", "not stated"));
        assertTrue(
                kept(wearer(""), unstated, bloodOn("2025-06-15")).get(1).why().contains("states no period"));
    }

    /** A rule for another kind of item or another deed orders nothing here; a rule for the family of the deed does. */
    @Test
    void onlyRulesForTheItemAndTheDeedCount() {
        List<Duty> others = List.of(
                kept("unit", Subject.UNIT, "medical/lead-blood", "record made + P5Y"),
                kept("other", Subject.WEARER, "medical/other", "record made + P5Y"),
                kept("longer", Subject.WEARER, "medical/lead-blood-again", "record made + P5Y"));
        Retention.Kept none = kept(wearer(""), others, bloodOn("2025-06-15")).get(1);
        assertEquals("no rule was found, so it is kept", none.why());
        assertEquals(Optional.empty(), none.keepThrough());
        assertEquals(List.of(), none.duties());
        assertFalse(none.mayGo(LocalDate.parse("2999-01-01")));
    }

    @Test
    void ruleForTheFamilyOfTheDeedCounts() {
        List<Duty> family = List.of(kept("family", Subject.WEARER, "medical", "record made + P5Y"));
        assertEquals(
                Optional.of(LocalDate.parse("2030-06-15")),
                kept(wearer(""), family, bloodOn("2025-06-15")).get(1).keepThrough());
    }

    /** What is owed for a wearer and mask is on record with the wearer. */
    @Test
    void rulesForWearerAndMaskCountForTheWearer() {
        List<Duty> pair = List.of(kept("pair", Subject.WEARER_MASK, "medical/lead-blood", "record made + P5Y"));
        assertEquals(
                Optional.of(LocalDate.parse("2030-06-15")),
                kept(wearer(""), pair, bloodOn("2025-06-15")).get(1).keepThrough());
        assertEquals(
                "no rule was found, so it is kept",
                kept(
                                Samples.powered("U-014"),
                                List.of(kept("pair", Subject.WEARER_MASK, "examination", "record made + P5Y")),
                                Samples.examined("U-014", "2024-02-29", Result.PASSED))
                        .get(1)
                        .why());
    }

    /** Only a later entry of the same deed moves the end: the questionnaire of 2026 does not prolong the blood of 2025. */
    @Test
    void lastEntryMeansTheLastOfItsKind() {
        List<Duty> duties = List.of(kept("forty", Subject.WEARER, "medical/lead-blood", "last entry + P40Y"));
        Draft other = new Draft(
                "W-01",
                LocalDate.parse("2026-01-10"),
                "physician",
                new Details.Medical(Result.PASSED, "respirator", "", "", Optional.of(true), "", ""));
        assertEquals(
                Optional.of(LocalDate.parse("2065-06-15")),
                kept(wearer(""), duties, bloodOn("2025-06-15"), other).get(1).keepThrough());
    }

    /** "Record made" is the day of the writing where that comes after the deed. */
    @Test
    void recordWrittenLateIsKeptFromTheWriting() {
        Item wearer = wearer("");
        List<Duty> duties = List.of(kept("blood", Subject.WEARER, "medical/lead-blood", "record made + P5Y"));
        try (Store store = Store.open(folder.resolve("late.db"))) {
            store.append(
                    Draft.registering(wearer, LocalDate.parse("2020-01-01"), "stores"),
                    Instant.parse("2020-01-01T08:00:00Z"));
            store.append(bloodOn("2025-06-15"), Instant.parse("2025-07-01T08:00:00Z"));
            assertEquals(
                    Optional.of(LocalDate.parse("2030-07-01")),
                    new Retention(store, duties).of(wearer).get(1).keepThrough());
        }
    }

    @Test
    void onlyIntervalsAndSingleDeedsFallDueOnADay() {
        for (Frequency frequency : Frequency.values()) {
            assertEquals(frequency == Frequency.MAX_INTERVAL || frequency == Frequency.ONCE, frequency.dated());
        }
    }

    @Test
    void aRuleThatCannotBeReadIsRefused() {
        assertEquals(Optional.empty(), Keep.parse("five years"));
    }
}
