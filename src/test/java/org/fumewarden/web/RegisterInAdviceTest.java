package org.fumewarden.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page that stands beside a register advises as the command with the same register does. */
final class RegisterInAdviceTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Library LIBRARY = Library.shipped(() -> Yard.TODAY);

    @TempDir
    Path folder;

    private static JsonNode advised(Desk desk, String more) throws IOException {
        return MAPPER.readTree(reply(desk, more));
    }

    private static byte[] reply(Desk desk, String more) {
        String text = Starts.text(Starts.NAMES.get(0)).replace("atmosphere: {", "atmosphere: {altitude: 20 m, ") + more;
        return desk.find("/api/advise")
                .orElseThrow()
                .answer(MAPPER.createObjectNode().put("task", text))
                .body();
    }

    private Desk beside() {
        return new Desk(LIBRARY, new UpkeepDesk(LIBRARY, Optional.of(Yard.in(folder))));
    }

    private static String recommended(JsonNode advice) {
        for (JsonNode respirator : advice.path("respirators")) {
            if (respirator.path("verdict").asText().equals("recommended")) {
                return respirator.path("class").asText();
            }
        }
        return "none";
    }

    @Test
    void aUnitThatFailedItsExaminationIsNotForUseAndItsClassStays() throws IOException {
        JsonNode advice = advised(beside(), "\nkit: {unit: U-015}\n");
        assertEquals("not-for-use", advice.at("/unit/condition").asText());
        assertEquals("th3", recommended(advice));
        assertEquals("kit.unit-withdrawn", advice.at("/register/0/about").asText());
        assertTrue(advice.at("/register/0/says").asText().startsWith("U-015 is out of use since 2026-02-20"));
    }

    @Test
    void aUnitInUseIsAdvisedAndTheSheetSaysWhoSaidSo() throws IOException {
        JsonNode advice = advised(beside(), "\nkit: {unit: U-014}\n");
        assertEquals("th3", recommended(advice));
        assertEquals("U-014 is in use.", advice.at("/register/0/says").asText());
    }

    @Test
    void aUnitThatNobodyRegisteredIsRefusedAtItsField() {
        Desk desk = beside();
        List<Problem> problems = assertThrows(InputException.class, () -> reply(desk, "\nkit: {unit: U-099}\n"))
                .problems();
        assertEquals("kit.unit", problems.get(0).field());
        assertTrue(problems.get(0).remedy().contains("Do not use it until then."), problems.toString());
    }

    @Test
    void aTaskThatNamesNothingOfTheRegisterIsAdvisedAsWithoutOne() throws IOException {
        Desk alone = new Desk(LIBRARY, new UpkeepDesk(LIBRARY, Optional.empty()));
        Desk beside = beside();
        Files.delete(folder.resolve("yard.db"));
        assertEquals(new String(reply(alone, "")), new String(reply(beside, "")));
        assertThrows(InputException.class, () -> reply(beside, "\nkit: {unit: U-014}\n"));
    }
}
