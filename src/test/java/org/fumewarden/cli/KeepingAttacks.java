package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What spoils a chain while it grows, and what is edited so that only a replay or a signature shows it. */
record KeepingAttacks(AttacksTest chain) {
    void addTo(Map<String, Supplier<CommandRun>> attacks) {
        attacks.put("rechained", () -> {
            String previous = "";
            for (int i = 2; i <= 3; i++) {
                String before = previous;
                AttacksTest.reseal(chain.entry(i), e -> {
                    if (before.isEmpty()) {
                        AttacksTest.required(e).put("value", 1);
                    } else {
                        e.put("previous", before);
                    }
                });
                previous = AttacksTest.json(chain.entry(i)).path("hash").asText();
            }
            CommandRun quick = chain.chain("--no-replay");
            assertTrue(quick.out().contains("Not replayed: "), quick.out());
            return chain.chain();
        });
        attacks.put("broken-around", () -> {
            AttacksTest.delete(chain.entry(2));
            return AttacksTest.audit(chain.entry(1));
        });
        attacks.put("grown-on-forged-advice", () -> {
            AttacksTest.reseal(chain.entry(3), e -> AttacksTest.required(e).put("value", 1));
            return keep("--sign-with", pem("own"));
        });
        attacks.put("kept-without-the-key", this::keep);
        attacks.put("kept-with-another-key", () -> keep("--sign-with", pem("stranger")));
        attacks.put("key-midway", () -> {
            keepIn("plain");
            return keepIn("plain", "--sign-with", pem("own"));
        });
        attacks.put("key-for-nothing", () -> CommandRun.of("advise", AttacksTest.TASK, "--sign-with", pem("own")));
        attacks.put("witness-of-another-chain", () -> {
            CommandRun first = keepIn("other", "--sign-with", pem("own"), "--witness", at("other.txt"));
            assertTrue(first.err().contains("Kept as"), first.err());
            return keep("--sign-with", pem("own"), "--witness", at("other.txt"));
        });
        attacks.put(
                "witness-of-another-key",
                () -> keepIn("other", "--sign-with", pem("stranger"), "--witness", at("witness.txt")));
        attacks.put("witness-in-the-chain", () -> keep("--sign-with", pem("own"), "--witness", at("kept/witness.txt")));
        attacks.put("witness-nowhere", () -> keep("--sign-with", pem("own"), "--witness", at("nowhere/witness.txt")));
        attacks.put("witness-with-a-gap", () -> {
            AttacksTest.change(chain.place.resolve("witness.txt"), text -> text.replaceFirst("(?m)^2 .*\n", ""));
            return chain.witnessed();
        });
        attacks.put("edited-rules-signed", () -> {
            Path forged = chain.forgedRules();
            return CommandRun.of("audit", forged.toString(), "--public-key", at("own.pub"));
        });
        attacks.put("from-the-future", () -> {
            AttacksTest.reseal(chain.entry(3), e -> e.put("kept-at", "2999-01-01T00:00:00Z"));
            return AttacksTest.audit(chain.entry(3));
        });
        attacks.put("part-more", () -> {
            AttacksTest.reseal(chain.entry(3), e -> e.put("note", "exhibit 3: the factor was 1"));
            return chain.chain();
        });
        attacks.put("entry-twice", () -> {
            try {
                Files.copy(chain.entry(3), chain.entry(4));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return chain.chain();
        });
        attacks.put("half-a-hash", () -> chain.chain("--expect", "0123456789ab"));
        attacks.put("kept-in-a-file", () -> keepIn("own.pub", "--sign-with", pem("own")));
        attacks.put("task-as-proof", () -> CommandRun.of("audit", AttacksTest.TASK));
    }

    /** Keeps one more piece of advice; where it is refused, the chain is as long as before. */
    private CommandRun keep(String... more) {
        CommandRun run = keepIn("kept", more);
        assertFalse(Files.exists(chain.entry(4)), "something was kept: " + run.err());
        return run;
    }

    private CommandRun keepIn(String folder, String... more) {
        Stream<String> words = Stream.of("advise", AttacksTest.TASK, "--keep", at(folder));
        return CommandRun.of(Stream.concat(words, Stream.of(more)).toArray(String[]::new));
    }

    private String pem(String who) {
        return at(who + ".pem");
    }

    private String at(String name) {
        return chain.place.resolve(name).toString();
    }
}
