package org.fumewarden.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** The tables that feed the screening estimate are complete, in order and fit for use. */
class EmissionTablesTest {
    private static final Path TABLES = Path.of("rules/shared/tables");

    @SuppressWarnings("unchecked")
    private static Map<String, Object> table(Path file) {
        try {
            return (Map<String, Object>) new Yaml().load(Files.readString(file));
        } catch (IOException e) {
            throw new IllegalStateException(file.toString(), e);
        }
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(TABLES)) {
            return all.filter(f -> f.getFileName().toString().startsWith("emission-"))
                    .sorted()
                    .toList();
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> rows(Map<String, Object> table) {
        return (List<Map<String, Object>>) table.get("rows");
    }

    private static Spread spread(String name, String quantity, String of) {
        return rows(table(TABLES.resolve(name + ".yaml"))).stream()
                .filter(r -> r.get("quantity").equals(quantity) && r.get("of").equals(of))
                .map(r -> Spread.between(number(r, "low"), number(r, "high")))
                .findFirst()
                .orElseThrow();
    }

    private static double number(Map<String, Object> row, String cell) {
        return ((Number) row.get(cell)).doubleValue();
    }

    @Test
    void everyTableNamesSourceClauseEditionConfidenceAndDay() throws IOException {
        assertEquals(9, files().size());
        for (Path file : files()) {
            Map<String, Object> table = table(file);
            assertEquals(table.get("id") + ".yaml", file.getFileName().toString());
            for (String head : List.of("kind", "source", "clause", "edition", "confidence", "checked-on")) {
                assertTrue(table.containsKey(head), file + " lacks " + head);
            }
        }
    }

    @Test
    void everyRowIsARangeWithAUnitAndNoRowIsThereTwice() throws IOException {
        for (Path file : files()) {
            Set<String> keys = new HashSet<>();
            for (Map<String, Object> row : rows(table(file))) {
                String key = row.get("quantity") + "/" + row.get("of") + "/" + row.get("with");
                assertTrue(keys.add(key), file + " has " + key + " twice");
                assertTrue(number(row, "low") > 0 && number(row, "low") <= number(row, "high"), file + " " + key);
                assertTrue(row.get("unit") instanceof String, file + " " + key);
                assertTrue(!"share".equals(row.get("unit")) || number(row, "high") < 1, file + " " + key);
            }
        }
    }

    @Test
    void noMetalOutweighsTheFumeItIsIn() {
        List<Map<String, Object>> fume = rows(table(TABLES.resolve("emission-factors.yaml")));
        for (Map<String, Object> metal : rows(table(TABLES.resolve("emission-metals.yaml")))) {
            fume.stream()
                    .filter(f ->
                            f.get("of").equals(metal.get("of")) && f.get("with").equals(metal.get("with")))
                    .forEach(f -> assertTrue(number(metal, "high") < number(f, "low"), metal.toString()));
        }
    }

    @Test
    void factorTimesUseLiesWithinThePublishedRateOfTheProcess() {
        // AP-42 E7018 18.4 g/kg at 1.5 kg per arc hour = 7.67 mg/s, within 2 to 22 mg/s of TRGS 528 Table 2
        double rate = spread("emission-factors", "fume-per-consumable", "e7018").median() * 1.5 * 1000 / 3600;
        assertEquals(7.67, rate, 0.005);
        Spread published = spread("emission-rates", "fume-rate", "manual-metal-arc");
        assertTrue(Math.abs(Math.log(rate / published.median())) < 1.645 * published.deviationLog());
    }
}
