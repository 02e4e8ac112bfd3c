package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fumewarden.Extent;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every attack of docs/attacks.md ends as the table there says. */
final class AttacksTest extends ForgedChain {
    private static final Path TABLE = Path.of("docs/attacks.md");
    private static final String OTHER_TASK = "scenarios/tours/galvanised-deck.yaml";

    private final Map<String, Supplier<CommandRun>> attacks = new LinkedHashMap<>();

    @BeforeEach
    void name() {
        attacks.put("changed-byte", () -> {
            change(entry(2), text -> text.replaceFirst("Stainless", "Stainlfss"));
            return audit(entry(2));
        });
        attacks.put("edited-and-resealed", () -> {
            reseal(entry(2), e -> required(e).put("value", 1));
            return audit(entry(2));
        });
        attacks.put("old-revision", () -> {
            reseal(entry(2), e -> {
                required(e).put("value", 1);
                advice(e).put("revision", "0123456789abcdef".repeat(4));
            });
            return audit(entry(2));
        });
        attacks.put("edited-in-a-chain", () -> {
            reseal(entry(2), e -> required(e).put("value", 1));
            return chain();
        });
        attacks.put("missing-entry", () -> {
            delete(entry(2));
            return chain();
        });
        attacks.put("empty-chain", () -> {
            List.of(1, 2, 3).forEach(i -> delete(entry(i)));
            return chain();
        });
        attacks.put("cut-tail", () -> {
            String noted = json(entry(3)).path("hash").asText();
            delete(entry(3));
            return chain("--expect", noted);
        });
        attacks.put("cut-tail-witnessed", () -> {
            delete(entry(3));
            return witnessed();
        });
        attacks.put("regrown", () -> {
            List.of(1, 2, 3).forEach(i -> delete(entry(i)));
            for (int i = 0; i < 3; i++) {
                CommandRun.of(
                        "advise",
                        OTHER_TASK,
                        "--keep",
                        place.resolve("kept").toString(),
                        "--sign-with",
                        place.resolve("own.pem").toString());
            }
            return witnessed();
        });
        attacks.put("witness-edited", () -> {
            change(
                    place.resolve("witness.txt"),
                    text -> text.replaceFirst("(?m)^3 .", text.matches("(?s).*\n3 0.*") ? "3 1" : "3 0"));
            return witnessed();
        });
        attacks.put("foreign-key", () -> {
            sign(entry(2), "stranger");
            return signed();
        });
        attacks.put("removed-signature", () -> {
            delete(beside(entry(2)));
            return signed();
        });
        attacks.put("swapped-rules", () -> audit(forgedRules()));
        attacks.put("swapped-rules-signed", () -> {
            Path forged = forgedRules();
            sign(
                    place.resolve("kept/rules/"
                            + json(forged).path("advice").path("revision").asText() + ".zip"),
                    "stranger");
            return CommandRun.of(
                    "audit",
                    forged.toString(),
                    "--public-key",
                    place.resolve("own.pub").toString());
        });
        attacks.put("rules-with-a-program", () -> {
            Path entry = forgedRules();
            String revision = json(entry).path("advice").path("revision").asText();
            Path mark = place.resolve("ran");
            EditedRules.append(place.resolve("rules"), "gb/caution.drl", """

                    rule "GB-CAUTION-990 a rule that runs a program"
                    @source("fumewarden") @clause("none") @confidence("practice")
                    when
                      $a : Answer()
                    then
                      java.nio.file.Files.createFile(java.nio.file.Path.of("%s"));
                      insert( new Caution( "none" ) );
                    end
                    """.formatted(mark));
            RuleFolder rules = RuleFolder.at(place.resolve("rules"));
            String other = CodeBook.read(rules, "gb").revision();
            zip(rules, place.resolve("kept/rules/" + other + ".zip"));
            reseal(entry, e -> advice(e).put("revision", other));
            assertFalse(revision.equals(other));
            CommandRun run = audit(entry);
            assertFalse(Files.exists(mark), "the program ran");
            return run;
        });
        attacks.put("named-rules", () -> {
            Path forged = forgedRules();
            return CommandRun.of(
                    "audit",
                    forged.toString(),
                    "--rules",
                    place.resolve("rules").toString());
        });
        attacks.put("clock-back", () -> {
            reseal(entry(3), e -> e.put("kept-at", "2020-01-01T00:00:00Z"));
            return chain();
        });
        attacks.put("clock-nonsense", () -> {
            reseal(entry(3), e -> e.put("kept-at", "yesterday"));
            return chain();
        });
        attacks.put("report-edited", () -> {
            CommandRun first = CommandRun.of("audit", entry(2).toString(), "--format", "html");
            String edited = first.out().replace("factor: 20", "factor: 1");
            CommandRun again = CommandRun.of("audit", entry(2).toString(), "--format", "html");
            assertFalse(again.out().equals(edited), "the report of the kept file shows the edit");
            assertEquals(first.out(), again.out());
            assertTrue(again.out().contains(json(entry(2)).path("hash").asText()), "it names the entry it is of");
            return again;
        });
        attacks.put("grown-on-damage", () -> {
            change(entry(2), text -> text.replaceFirst("Stainless", "Stainlfss"));
            CommandRun run = keep(place, TASK);
            assertFalse(Files.exists(entry(4)));
            return run;
        });
        attacks.put("bad-key", () -> {
            change(place.resolve("own.pem"), text -> "not a key");
            CommandRun run = keep(place, TASK);
            assertFalse(Files.exists(entry(4)));
            return run;
        });
        attacks.put("milder-review", () -> {
            CommandRun run = said("stricter", "long shift", "--class", "ffp3", "--factor", "20");
            String audited = audit(entry(1)).out();
            assertTrue(audited.contains("Disagreed by"), audited);
            assertFalse(audited.contains("Decided stricter"), audited);
            return run;
        });
        attacks.put("compared-after-damage", () -> {
            change(entry(2), text -> text.replace("\"value\":20", "\"value\":1"));
            return CommandRun.of("diff", entry(1).toString(), entry(2).toString());
        });
        new ReviewAttacks(this).addTo(attacks);
        new KeepingAttacks(this).addTo(attacks);
    }

    @TestFactory
    Stream<DynamicTest> everyAttackEndsAsTheTableSays() throws IOException {
        List<String[]> rows = Files.readAllLines(TABLE).stream()
                .filter(l -> l.matches("\\| [a-z].*"))
                .map(l -> l.split("\\s*\\|\\s*"))
                .toList();
        assertEquals(
                attacks.keySet().stream().sorted().toList(),
                rows.stream().map(r -> r[1]).sorted().toList());
        return Extent.sample(rows, row -> row[1], Extent.of(8, Extent.ALL, Extent.ALL)).stream()
                .map(row -> DynamicTest.dynamicTest(row[1], () -> {
                    lay();
                    CommandRun run = attacks.get(row[1]).get();
                    assertEquals(Integer.parseInt(row[4]), run.exit(), run.out() + run.err());
                    assertTrue((run.out() + run.err()).contains(row[5]), run.out() + run.err());
                }));
    }

    @Test
    void anHonestChainPassesEveryCheck() {
        lay();
        CommandRun run = witnessed();
        assertEquals(0, run.exit(), run.out() + run.err());
        assertEquals(0, audit(entry(2)).exit());
    }

    /** The rules that decided are kept, so that advice can be replayed when the program has others. */
    @Test
    @Tag("ci")
    void rulesKeptBesideTheChainReplayOnTheirOwnWhenTheKeyVouchesForThem() {
        lay();
        Path entry = forgedRules();
        sign(
                place.resolve("kept/rules/"
                        + json(entry).path("advice").path("revision").asText() + ".zip"),
                "own");
        sign(entry, "own");
        CommandRun run = CommandRun.of(
                "audit",
                entry.toString(),
                "--public-key",
                place.resolve("own.pub").toString(),
                "--vouch-for-rules");
        assertEquals(0, run.exit(), run.out() + run.err());
        assertTrue(run.out().contains("not the rules of this program"), run.out());
        assertTrue(run.out().contains("signed with this key"), run.out());
    }

    @Test
    void aStricterDecisionBecomesTheAnswerOfTheReport() {
        lay();
        CommandRun run = said("stricter", "long shift", "--class", "airline-full-mask-positive", "--factor", "2000");
        assertEquals(0, run.exit(), run.out() + run.err());
        assertTrue(
                run.out()
                        .contains(
                                "Decided stricter by \"R. Tarn\" (\"safety officer\"): class airline-full-mask-positive, factor 2000."),
                run.out());
        assertEquals(0, chain().exit());
        String report =
                CommandRun.of("audit", entry(1).toString(), "--format", "html").out();
        assertTrue(report.contains("<strong>Decided stricter by &quot;R. Tarn"), "the report says so");
    }
}
