package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.erdtman.jcs.JsonCanonicalizer;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every attack of docs/attacks.md ends as the table there says. The forger works with other means than the program's own. */
final class AttacksTest {
    private static final Path TABLE = Path.of("docs/attacks.md");
    static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final String OTHER_TASK = "scenarios/tours/galvanised-deck.yaml";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    private static Path honest;

    @TempDir
    Path place;

    private final Map<String, Supplier<CommandRun>> attacks = new LinkedHashMap<>();

    /** A chain of three, signed and witnessed. */
    @BeforeAll
    static void keepThree() {
        pair(honest, "own");
        pair(honest, "stranger");
        for (int i = 0; i < 3; i++) {
            keep(honest, TASK);
        }
    }

    static CommandRun keep(Path at, String task) {
        return CommandRun.of(
                "advise",
                task,
                "--keep",
                at.resolve("kept").toString(),
                "--sign-with",
                at.resolve("own.pem").toString(),
                "--witness",
                at.resolve("witness.txt").toString());
    }

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
            change(place.resolve("witness.txt"), text -> text.replaceFirst("(?m)^3 .", "3 0"));
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
        return rows.stream()
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

    /** What the safety officer says of the first entry, signed with the key of the chain. */
    CommandRun said(String verdict, String reason, String... more) {
        Stream<String> words = Stream.of(
                "review",
                entry(1).toString(),
                "--verdict",
                verdict,
                "--reason",
                reason,
                "--by",
                "R. Tarn",
                "--capacity",
                "safety officer",
                "--sign-with",
                place.resolve("own.pem").toString());
        return CommandRun.of(Stream.concat(words, Arrays.stream(more)).toArray(String[]::new));
    }

    /** A chain of its own for each attack. */
    private void lay() {
        try {
            Path kept = place.resolve("kept");
            if (Files.exists(kept)) {
                try (Stream<Path> old = Files.walk(place)) {
                    old.filter(Files::isRegularFile).forEach(AttacksTest::delete);
                }
            }
            try (Stream<Path> files = Files.walk(honest)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Path copy = place.resolve(honest.relativize(file).toString());
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path entry(int number) {
        return place.resolve("kept/0000000" + number + ".kept.json");
    }

    static CommandRun audit(Path file) {
        return CommandRun.of("audit", file.toString());
    }

    CommandRun chain(String... more) {
        String[] arguments = {"audit", "--chain", place.resolve("kept").toString()};
        return CommandRun.of(
                Stream.concat(Arrays.stream(arguments), Arrays.stream(more)).toArray(String[]::new));
    }

    CommandRun signed() {
        return chain("--public-key", place.resolve("own.pub").toString());
    }

    CommandRun witnessed() {
        return chain(
                "--public-key",
                place.resolve("own.pub").toString(),
                "--witness",
                place.resolve("witness.txt").toString());
    }

    /** Advice on rules in which the factor of the floor is lower, with these rules beside it: all as the program would keep it. */
    Path forgedRules() {
        Path rules = EditedRules.copy(place);
        try {
            Path table = rules.resolve("gb/tables/gb-policy.yaml");
            Path edited = Files.exists(table) ? table : find(rules, "welding-fume-floor");
            Files.writeString(
                    edited, Files.readString(edited).replaceFirst("(id: welding-fume-floor, value: )20", "$14"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        CommandRun.of(
                "advise",
                TASK,
                "--rules",
                rules.toString(),
                "--keep",
                place.resolve("kept").toString(),
                "--sign-with",
                place.resolve("own.pem").toString());
        return entry(4);
    }

    private static void zip(RuleFolder rules, Path target) {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
            for (Map.Entry<String, byte[]> file : rules.files().entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path find(Path folder, String text) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                if (Files.readString(file).contains("id: " + text)) {
                    return file;
                }
            }
        }
        throw new IllegalStateException(text);
    }

    static ObjectNode advice(ObjectNode entry) {
        return (ObjectNode) entry.get("advice");
    }

    static ObjectNode required(ObjectNode entry) {
        return (ObjectNode) advice(entry).get("required-factor");
    }

    static ObjectNode json(Path file) {
        try {
            return (ObjectNode) MAPPER.readTree(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void reseal(Path file, Consumer<ObjectNode> edit) {
        try {
            ObjectNode entry = json(file);
            edit.accept(entry);
            entry.remove("hash");
            byte[] canonical = new JsonCanonicalizer(entry.toString()).getEncodedUTF8();
            entry.put(
                    "hash",
                    HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(canonical)));
            Files.writeString(file, new JsonCanonicalizer(entry.toString()).getEncodedString() + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    static void change(Path file, java.util.function.UnaryOperator<String> edit) {
        try {
            String text = Files.readString(file);
            String edited = edit.apply(text);
            assertFalse(text.equals(edited), "nothing was changed in " + file);
            Files.writeString(file, edited);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + ".sig");
    }

    void sign(Path file, String who) {
        org.fumewarden.audit.Signatures.sign(file, place.resolve(who + ".pem"));
    }

    private static void pair(Path folder, String name) {
        try {
            KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
            pem(folder.resolve(name + ".pem"), "PRIVATE KEY", pair.getPrivate().getEncoded());
            pem(folder.resolve(name + ".pub"), "PUBLIC KEY", pair.getPublic().getEncoded());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void pem(Path file, String label, byte[] der) throws IOException {
        Files.writeString(
                file,
                "-----BEGIN " + label + "-----\n" + Base64.getMimeEncoder().encodeToString(der) + "\n-----END " + label
                        + "-----\n");
    }
}
