package org.fumewarden.duties;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.upkeep.AirLimits;
import org.fumewarden.upkeep.AirTest;
import org.fumewarden.upkeep.Result;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

/** Grade D of 29 CFR 1910.134(i)(1)(ii) (CO 10, CO2 1000, oil 5, O2 19.5 to 23.5) and EN 12021:2014 (CO 5, CO2 500, oil 0.5, O2 20 to 22). */
class AirLimitsTest {
    private static AirLimits limits(String code) throws IOException {
        Map<String, Object> table =
                new Yaml().load(Files.readString(Path.of("rules", code, "tables", "breathing-air.yaml")));
        Map<String, BigDecimal> values = new HashMap<>();
        @SuppressWarnings("unchecked")
        List<Map<String, Object>> rows = (List<Map<String, Object>>) table.get("rows");
        rows.forEach(r ->
                values.put((String) r.get("id"), new BigDecimal(r.get("value").toString())));
        return DutyBook.airLimits(values::get, code).orElseThrow();
    }

    @ParameterizedTest(name = "{0}: O2 {1}, CO {2}, CO2 {3}, oil {4} -> {5}")
    @CsvSource({
        "us, 20.9, 8, 450, 0.3, PASSED",
        "us, 20.9, 2, 800, 0.1, PASSED",
        "us, 20.9, 2, 400, 1.0, PASSED",
        "us, 20.9, 10, 1000, 5, PASSED",
        "us, 20.9, 10.1, 400, 0.1, FAILED",
        "us, 19.4, 2, 400, 0.1, FAILED",
        "us, 23.6, 2, 400, 0.1, FAILED",
        "gb, 19.8, 2, 400, 0.1, FAILED",
        "gb, 20.9, 5, 500, 0.5, PASSED",
        // 15 ppm was the limit of the edition of 1999
        "gb, 20.9, 15, 400, 0.1, FAILED",
        "gb, 20.9, 2, 501, 0.1, FAILED",
        "gb, 20.9, 2, 400, 0.51, FAILED"
    })
    void figuresDecide(String code, String oxygen, String monoxide, String dioxide, String oil, Result result)
            throws IOException {
        AirTest test = new AirTest(
                Result.PASSED,
                "breathing",
                "compressor house",
                "",
                Optional.of(new BigDecimal(oxygen)),
                Optional.of(new BigDecimal(monoxide)),
                Optional.of(new BigDecimal(dioxide)),
                Optional.of(new BigDecimal(oil)),
                "",
                "",
                "",
                "",
                "");
        assertEquals(result, limits(code).judged(test, true).test().result());
    }
}
