package org.fumewarden.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.report.answer.AdviceSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page orders fits what lies ready, what is worn, and whether the work may start. Expected words: common practice, no source. */
final class SheetOrdersTest {
    private static final String BLOWER = "The blower stops.";

    @TempDir
    Path dir;

    private String page(String language, String changes) throws Exception {
        Path task = dir.resolve("task.yaml");
        Path plain = Path.of("scenarios/shared/SHARED-SELECTION-010-plain-bench.yaml")
                .toAbsolutePath();
        String told = Files.readString(plain).replaceAll("(?s)\nexpect:.*", "\n");
        for (String change : changes.split("; ")) {
            String[] parts = change.split("=", 2);
            told = parts[0].isEmpty() ? told : told.replaceFirst(parts[0], parts[1]);
        }
        Files.writeString(task, told);
        Bench bench = new Bench(task, Map.of(), Optional.empty(), Optional.empty(), Advisor::shipped);
        String text = TextForm.write(AdviceSheet.of(bench, bench.advise(), Words.in(language), false));
        return text.replaceAll("\\s+", " ");
    }

    private static String kit(String kit) {
        return "wearer: =kit: {" + kit + "}\nwearer: ";
    }

    private static void ordered(String page, String first, String then) {
        assertTrue(page.contains(first) && page.indexOf(first) < page.indexOf(then), page);
    }

    @Test
    void aBarredUnitStandsBeforeWhatIsWornInstead() throws Exception {
        String page = page("en", kit("class-in-hand: th3, unit-withdrawn: true, check-failed: true"));
        assertTrue(page.contains("STATE DO NOT USE THIS UNIT."), page);
        ordered(
                page,
                "This unit: DO NOT USE IT. Hand it in for repair and examination.",
                "Powered hood, helmet or visor, class TH3 (EN 12941). Filter");
        assertTrue(page.contains("Tag the unit, hand it in, get another."), page);
        assertFalse(page.contains("ANSWERED"), page);
        String sound = page("en", kit("class-in-hand: th3, unit-withdrawn: false"));
        assertTrue(sound.contains("ANSWERED") && sound.contains("not withdrawn"), sound);
        assertFalse(sound.contains("hand it in"), sound);
    }

    @Test
    void anOldFilterIsSaidWithItsDayInBothLanguages() throws Exception {
        String page = page("en", kit("class-in-hand: th3, filter-expiry: 2026-03-01"));
        assertTrue(page.contains("filter usable until 1 March 2026"), page);
        assertTrue(page.contains("past the date on its label"), page);
        assertTrue(page.contains("Fit a new filter"), page);
        String german = page("de", kit("class-in-hand: th3, filter-expiry: 2026-03-01"));
        assertTrue(german.contains("Das Datum auf dem Filter ist überschritten."), german);
        String sound = page("en", kit("class-in-hand: th3, filter-expiry: 2026-03-02"));
        assertFalse(sound.contains("past the date"), sound);
    }

    @Test
    void alarmsAreThoseOfTheClassThatIsWorn() throws Exception {
        assertTrue(page("en", "").contains(BLOWER));
        String open = page("en", "twa: 0.06 mg/m3}=twa: 0.06 mg/m3}\n  - {agent: ozone, stel: unknown}");
        assertTrue(open.contains("Only for work that cannot wait, ordered in writing by the responsible person"), open);
        assertFalse(open.contains(BLOWER), open);
        assertTrue(open.contains("The air supply drops"), open);
    }

    @Test
    void anotherWearerIsSentWhereOnlyTheWearerIsInTheWay() throws Exception {
        String page = page("en", "medically-cleared: true=medically-cleared: false");
        assertTrue(page.contains("This wearer must not do this work."), page);
        assertTrue(page.contains("Send a wearer who is cleared and trained."), page);
        assertFalse(page.contains("Do not enter"), page);
    }

    @Test
    void aStopSaysApartWhatHoldsOnceItIsLifted() throws Exception {
        String page = page("en", "place: indoors=place: confined-space; explosive: false=explosive: true");
        ordered(
                page,
                "An explosive atmosphere can be present",
                "After the stop is lifted this still holds. Confined space");
        assertFalse(page.contains("protection factor"), page);
        String shut = page("en", "place: indoors=place: confined-space");
        assertFalse(shut.contains("After the stop is lifted"), shut);
    }

    /** 1910.134(c)(2) asks for clearance by choice too; a beard under a mask is common practice, no source. */
    @Test
    void byChoiceToldWhatABeardDoesAndNobodyUnfitIsToldToPutAMaskOn() throws Exception {
        String low = "twa: 0.06 mg/m3=twa: 0.05 mg/m3; facial-hair: false=facial-hair: true";
        String bearded = page("en", low);
        ordered(bearded, "do not require a respirator", "- This wearer has facial hair: a tight-fitting mask leaks");
        String unfit =
                "medically-cleared: true=medically-cleared: false; wearer: =kit: {class-in-hand: half-mask-p3}\nwearer: ";
        assertFalse(page("en", "twa: 0.06 mg/m3=twa: 0.05 mg/m3; " + unfit).contains("Tight mask:"));
        String fit = page("en", "twa: 0.06 mg/m3=twa: 0.05 mg/m3; " + kit("class-in-hand: half-mask-p3"));
        assertTrue(fit.contains("Tight mask:") && !fit.contains("facial hair: a tight"), fit);
        String foreign = page("en", "twa: 0.06 mg/m3=twa: 0.05 mg/m3; " + kit("class-in-hand: purifying-half-mask"));
        assertTrue(foreign.contains("NO PROTECTION IS COUNTED FOR IT."), foreign);
    }

    /** The benchmark is the stricter one and decides, so the row is not that of the stated limit. */
    @Test
    void aRowIsNamedByTheLimitThatDecides() throws Exception {
        String stated = "mg/m3, limit-twa: 9 mg/m3, limit-from: list of the yard}";
        assertFalse(page("en", "0.06 mg/m3}=0.06 " + stated).contains("limit as stated"));
        String strict = page("en", "0.06 mg/m3}=0.06 " + stated.replace("9", "0.04"));
        assertTrue(strict.contains("limit as stated"), strict);
    }

    /** Duties of use are for people at work; examinations and health care go on. */
    @Test
    void aStoppedSheetListsTheDutiesThatGoOn() throws Exception {
        String page = page("en", "oxygen: 20.9 %=oxygen: 17 %");
        String monthly = "Monthly: thorough examination of the respirator (competent person).";
        ordered(page, "KEEP UP For this air, yearly: health surveillance (doctor or responsible person).", monthly);
        ordered(page, monthly, "More duties in");
        assertFalse(page.contains("(wearer"), page);
    }
}
