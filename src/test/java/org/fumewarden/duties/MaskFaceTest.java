package org.fumewarden.duties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.upkeep.Draft;
import org.fumewarden.upkeep.FitTest;
import org.fumewarden.upkeep.Forms;
import org.fumewarden.upkeep.Result;
import org.fumewarden.upkeep.Store;
import org.fumewarden.upkeep.StoreException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The kind of mask is that of the register. INDG479: no taste test for a full face mask. 29 CFR 1910.134(f)(8): masks with a
 * blower or supplied air are tested in negative-pressure mode, by either method.
 */
class MaskFaceTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Instant NOW = Instant.parse("2026-03-02T09:00:00Z");

    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(folder.resolve("log.db"));
        store.append(
                Draft.registering(Forms.item("wearer", Map.of("id", "W-1", "name", "Sanna Grey"), Map.of()), DAY, "s"),
                NOW);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void mask(String id, String model, String face, String supply) {
        store.append(
                Draft.registering(
                        Forms.item(
                                "mask",
                                Map.of("id", id, "model", model, "face", face),
                                Map.of("face-seal", List.of("tight"), "air-delivery", List.of(supply))),
                        DAY,
                        "stores"),
                NOW);
    }

    private Judging.Judged tasted(String code, String model, String face) {
        Map<String, String> form =
                new HashMap<>(Map.of("result", "passed", "model", model, "method", "qualitative, bitter"));
        form.put("face", face);
        Judging.Judged judged = new Judging(store, () -> DutyBook.of(CodeBook.read(RuleFolder.shipped(), code), DAY))
                .of("fit-test", "W-1", form);
        store.append(new Draft("W-1", DAY, "Odran Pell", judged.details()), NOW);
        return judged;
    }

    @ParameterizedTest
    @ValueSource(strings = {"full mask", "Full face mask, size M", "Vollmaske", "model K"})
    void aFullMaskOfTheRegisterIsNoHalfMask(String model) {
        mask("M-1", model, model.equals("model K") ? "full" : "", "unpowered");
        StoreException refused = assertThrows(StoreException.class, () -> tasted("gb", model, "half"));
        assertTrue(refused.getMessage().contains("the register of M-1 says full mask"), refused.getMessage());
        assertEquals(Result.FAILED, tasted("gb", model, "").details().result());
    }

    @Test
    void theFieldOfTheRegisterStandsAboveTheWords() {
        mask("M-1", "full of holes, size M", "half", "unpowered");
        assertEquals(
                Result.PASSED,
                tasted("gb", "full of holes, size M", "half").details().result());
    }

    @Test
    void whereTheRegisterIsSilentTheEarlierTestStands() {
        mask("M-1", "model K", "", "unpowered");
        assertEquals(Result.FAILED, tasted("gb", "model K", "full").details().result());
        StoreException refused = assertThrows(StoreException.class, () -> tasted("gb", "model K", "half"));
        assertTrue(refused.getMessage().contains("entry 3"), refused.getMessage());
        assertEquals(Result.FAILED, tasted("gb", "model K", "").details().result());
        assertEquals(
                Result.PASSED, tasted("gb", "model L", "half").details().result(), "another model is another mask");
    }

    @Test
    void aMaskWithABlowerIsTestedWithoutItAndByEitherMethod() {
        mask("M-1", "full mask", "", "powered");
        Judging.Judged judged = tasted("us", "full mask", "");
        assertEquals(Result.PASSED, judged.details().result());
        assertTrue(judged.says().contains("negative-pressure mode"), judged.says());
        assertTrue(judged.says().contains("1910.134(f)(8)"), judged.says());
        assertTrue(!judged.says().contains("10 times"), judged.says());
        mask("M-2", "full mask, unpowered", "", "unpowered");
        Judging.Judged capped = tasted("us", "full mask, unpowered", "");
        assertTrue(capped.says().contains("up to 10 times"), capped.says());
        assertTrue(!capped.says().contains("negative-pressure"), capped.says());
        assertEquals(((FitTest) capped.details()).face(), "full");
    }
}
