package org.fumewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.advice.Advisor;
import org.fumewarden.advice.Bench;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.report.AdviceJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptAdviceTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
    private static final Keeper.Source SOURCE =
            new Keeper.Source("fumewarden test", RuleFolder.shipped(), List.of("shared", "gb"), Optional.empty());
    private static Object task;
    private static String advice;

    @TempDir
    private Path folder;

    private Chain chain;

    @BeforeAll
    static void advise() {
        Bench bench = new Bench(
                Path.of("scenarios/tours/stainless-brackets.yaml"),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                Advisor::shipped);
        task = bench.tree(Map.of()).plain();
        advice = AdviceJson.write(bench.advise());
    }

    @BeforeEach
    void keepThree() {
        Keeper keeper = new Keeper(folder);
        chain = new Chain(folder);
        for (int i = 0; i < 3; i++) {
            Instant at = NOON.plusSeconds(i);
            keeper.keep(task, advice, () -> at, SOURCE, Optional.empty());
        }
    }

    private Path entry(int number) {
        return chain.files().get(number - 1);
    }

    @Test
    void aChainOfThreeIsUnbrokenAndEachEntryIntact() {
        assertEquals(Optional.empty(), chain.firstBrokenLink());
        for (Path file : chain.files()) {
            assertTrue(KeptAdvice.read(file).intact());
        }
    }

    @Test
    void theSameAdviceReplaysTheSame() {
        assertTrue(new Replay(KeptAdvice.read(entry(2)).advice(), advice).same());
    }

    /** Every 97th byte, so that all kinds of places are met: names, numbers, sentences, hashes, the end. */
    @Test
    @Tag("ci")
    void anyFlippedByteIsFound() throws IOException {
        byte[] good = Files.readAllBytes(entry(2));
        int tried = 0;
        for (int at = 0; at < good.length; at += 97) {
            byte[] bad = good.clone();
            bad[at] ^= 1;
            Files.write(entry(2), bad);
            assertTrue(chain.firstBrokenLink().isPresent(), "byte " + at);
            tried++;
        }
        Files.write(entry(2), good);
        assertEquals(Optional.empty(), chain.firstBrokenLink());
        assertTrue(tried > 100, "too few bytes tried: " + tried);
    }

    @Test
    void aByteMoreOrLessAtTheEndIsFound() throws IOException {
        String good = Files.readString(entry(1), StandardCharsets.UTF_8);
        Files.writeString(entry(1), good + "\n");
        assertFalse(KeptAdvice.read(entry(1)).intact());
        Files.writeString(entry(1), good.substring(0, good.length() - 1));
        assertFalse(KeptAdvice.read(entry(1)).intact());
    }

    @Test
    void aMissingEntryIsNamed() throws IOException {
        Files.delete(entry(2));
        assertTrue(chain.firstBrokenLink().orElseThrow().contains("number 2 is missing"));
    }

    @Test
    void anEntryResealedByAForgerNoLongerFitsTheNext() throws IOException {
        var content = KeptAdvice.parse(Files.readString(entry(2), StandardCharsets.UTF_8));
        ((com.fasterxml.jackson.databind.node.ObjectNode) content).put("kept-at", "2026-03-02T12:00:01.5Z");
        Files.writeString(entry(2), KeptAdvice.seal((com.fasterxml.jackson.databind.node.ObjectNode) content));
        assertTrue(KeptAdvice.read(entry(2)).intact());
        assertTrue(chain.firstBrokenLink().orElseThrow().startsWith("00000003"));
    }

    @Test
    void aSignatureFitsOnlyItsFileAndItsKey() throws IOException, NoSuchAlgorithmException {
        Path secret = folder.resolve("secret.pem");
        Path open = pair(secret, folder.resolve("open.pem"));
        Path stranger = pair(folder.resolve("other.pem"), folder.resolve("stranger.pem"));
        Signatures.sign(entry(1), secret);
        assertTrue(Signatures.verify(entry(1), open));
        assertFalse(Signatures.verify(entry(1), stranger));
        Files.copy(Signatures.beside(entry(1)), Signatures.beside(entry(2)));
        assertFalse(Signatures.verify(entry(2), open));
    }

    @Test
    void aKeyThatIsNoneGivesAMessage() throws IOException {
        Path nonsense = Files.writeString(folder.resolve("nonsense.pem"), "not a key");
        InputException fault = assertThrows(InputException.class, () -> Signatures.sign(entry(1), nonsense));
        assertTrue(fault.getMessage().contains("\n"));
    }

    private static Path pair(Path secret, Path open) throws IOException, NoSuchAlgorithmException {
        KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        pem(secret, "PRIVATE KEY", pair.getPrivate().getEncoded());
        pem(open, "PUBLIC KEY", pair.getPublic().getEncoded());
        return open;
    }

    private static void pem(Path file, String label, byte[] der) throws IOException {
        Files.writeString(
                file,
                "-----BEGIN " + label + "-----\n" + Base64.getMimeEncoder().encodeToString(der) + "\n-----END " + label
                        + "-----\n");
    }
}
