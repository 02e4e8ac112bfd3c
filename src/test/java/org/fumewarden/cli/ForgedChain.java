package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

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
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.erdtman.jcs.JsonCanonicalizer;
import org.fumewarden.check.EditedRules;
import org.fumewarden.codes.RuleFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** A signed and witnessed chain, and what a forger can do to it, with other means than the program's own. */
abstract class ForgedChain {
    static final String TASK = "scenarios/tours/stainless-brackets.yaml";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    private static Path honest;

    @TempDir
    Path place;

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
    final void lay() {
        try {
            Path kept = place.resolve("kept");
            if (Files.exists(kept)) {
                try (Stream<Path> old = Files.walk(place)) {
                    old.filter(Files::isRegularFile).forEach(ForgedChain::delete);
                }
            }
            EditedRules.folder(honest, place);
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

    static void zip(RuleFolder rules, Path target) {
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
