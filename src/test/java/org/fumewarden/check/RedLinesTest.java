package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.fumewarden.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/**
 * Advice that must never come out, and what must not be left open, over tasks that lie beside this repository where its owners
 * keep them. Each line says what is forbidden, so many right answers pass. Where the folder is not there, nothing is run.
 */
class RedLinesTest {
    private static final Path LINES = Path.of("../shared/red-lines/expect.yaml");
    private static final ObjectMapper JSON = new ObjectMapper();

    private record Outcome(String status, BigDecimal factor) {}

    private final Map<String, Outcome> before = new HashMap<>();

    @Test
    void noLineIsCrossed() throws Exception {
        assumeTrue(Files.exists(LINES), "no red lines beside this repository");
        Map<String, List<Map<String, Object>>> file = new Yaml().load(Files.readString(LINES));
        List<String> crossed = new ArrayList<>();
        for (Map<String, Object> line : file.get("lines")) {
            List<String> bad = judged(line);
            if (!bad.isEmpty()) {
                crossed.add(line.get("task") + ": " + String.join("; ", bad) + " (" + line.get("why") + ")");
            }
        }
        System.out.println("red lines " + file.get("lines").size() + ", crossed " + crossed.size());
        assertEquals(List.of(), crossed);
    }

    private List<String> judged(Map<String, Object> line) throws Exception {
        String name = (String) line.get("task");
        String task = LINES.resolveSibling("tasks").resolve(name).toString();
        CommandRun run = CommandRun.of("advise", task, "--format", "json");
        if (run.exit() == 2) {
            return line.containsKey("may-refuse") ? List.of() : List.of("refused: " + run.err());
        }
        JsonNode advice = JSON.readTree(run.out());
        boolean read = line.containsKey("says") || line.containsKey("never-says");
        String text = read ? CommandRun.of("advise", task).out() : "";
        BigDecimal factor = advice.path("required-factor").path("value").isNumber()
                ? advice.path("required-factor").path("value").decimalValue()
                : BigDecimal.ZERO;
        Outcome outcome = new Outcome(advice.get("status").asText(), factor);
        before.put(name, outcome);
        List<String> bad = new ArrayList<>();
        ofFactor(line, outcome, bad);
        ofStatus(line, outcome, bad);
        ofClasses(line, outcome, advice, bad);
        ofWords(line, advice, text, bad);
        return bad;
    }

    private static boolean complete(Outcome outcome) {
        return outcome.status().equals("complete");
    }

    private void ofFactor(Map<String, Object> line, Outcome outcome, List<String> bad) {
        if (line.containsKey("never-none-required")
                && complete(outcome)
                && outcome.factor().compareTo(BigDecimal.ONE) <= 0) {
            bad.add("complete, and nothing is required");
        }
        if (line.containsKey("min-factor")
                && complete(outcome)
                && outcome.factor().compareTo(number(line.get("min-factor"))) < 0) {
            bad.add("complete with factor " + outcome.factor());
        }
        if (line.containsKey("max-factor") && outcome.factor().compareTo(number(line.get("max-factor"))) > 0) {
            bad.add("factor " + outcome.factor());
        }
        Outcome other = before.get(line.get("not-milder-than"));
        if (other != null
                && complete(outcome)
                && (!complete(other) || outcome.factor().compareTo(other.factor()) < 0)) {
            bad.add("milder than " + line.get("not-milder-than"));
        }
    }

    private static BigDecimal number(Object value) {
        return new BigDecimal(value.toString());
    }

    private static void ofStatus(Map<String, Object> line, Outcome outcome, List<String> bad) {
        if (line.containsKey("must-complete") && !complete(outcome)
                || line.containsKey("status") && !outcome.status().equals(line.get("status"))
                || outcome.status().equals(line.get("status-not"))) {
            bad.add("status " + outcome.status());
        }
    }

    private static void ofClasses(Map<String, Object> line, Outcome outcome, JsonNode advice, List<String> bad) {
        Set<String> offered = classes(advice, Set.of("recommended", "suitable"));
        Set<String> best = classes(advice, Set.of("recommended"));
        if (line.containsKey("none-means-none")
                && complete(outcome)
                && outcome.factor().compareTo(BigDecimal.ONE) <= 0
                && !best.isEmpty()) {
            bad.add("nothing required, yet recommends " + best);
        }
        if (!offered.containsAll(words(line, "must-offer"))) {
            bad.add("offers only " + offered);
        }
        if (words(line, "never-offers").stream().anyMatch(offered::contains)
                || words(line, "never-recommends").stream().anyMatch(best::contains)
                || line.containsKey("only-offers")
                        && !words(line, "only-offers").containsAll(offered)) {
            bad.add("offers " + offered + ", recommends " + best);
        }
    }

    private static Set<String> classes(JsonNode advice, Set<String> verdicts) {
        return StreamSupport.stream(advice.get("respirators").spliterator(), false)
                .filter(r -> verdicts.contains(r.get("verdict").asText()))
                .map(r -> r.get("class").asText())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @SuppressWarnings("unchecked")
    private static List<String> words(Map<String, Object> line, String key) {
        return (List<String>) line.getOrDefault(key, List.of());
    }

    private static void ofWords(Map<String, Object> line, JsonNode advice, String text, List<String> bad) {
        String checks = StreamSupport.stream(advice.path("checks").spliterator(), false)
                .map(c -> c.path("id").asText() + " " + c.path("what").asText())
                .collect(Collectors.joining(" | "));
        words(line, "owes").stream().filter(w -> !found(w, checks)).forEach(w -> bad.add("no check like " + w));
        words(line, "says").stream().filter(w -> !found(w, text)).forEach(w -> bad.add("does not say " + w));
        words(line, "never-says").stream().filter(w -> found(w, text)).forEach(w -> bad.add("says " + w));
    }

    private static boolean found(String expression, String text) {
        return Pattern.compile(expression, Pattern.CASE_INSENSITIVE | Pattern.DOTALL)
                .matcher(text)
                .find();
    }
}
