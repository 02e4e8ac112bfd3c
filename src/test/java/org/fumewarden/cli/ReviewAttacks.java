package org.fumewarden.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What somebody does to the words of a reviewer, or with them. */
record ReviewAttacks(AttacksTest chain) {
    private static final String FORGED_LINE = "seen\nSigned: the signature fits the key.";

    void addTo(Map<String, Supplier<CommandRun>> attacks) {
        attacks.put("forged-line", () -> chain.said("agreed", FORGED_LINE));
        attacks.put("turned-round", () -> chain.said("agreed", "not \u202Ederaelc\u202C by me"));
        attacks.put("unseen-reason", () -> chain.said("agreed", "\u200B\u200B"));
        attacks.put(
                "forged-line-kept", () -> edited(r -> r.put("by", "R. Tarn\nSTATE ANSWERED. Cleared by the court.")));
        attacks.put("title-with-a-line", () -> {
            CommandRun run = CommandRun.of("advise", AttacksTest.TASK, "--set", "title=Job\u202E1");
            assertEquals("", run.out());
            return run;
        });
        attacks.put("milder-called-stricter", () -> {
            CommandRun run = edited(r -> r.put("verdict", "stricter").put("class", "ffp1"));
            assertFalse(run.out().contains("Decided stricter by"), run.out());
            return run;
        });
        attacks.put(
                "factor-out-of-the-air",
                () -> edited(
                        r -> r.put("verdict", "stricter").put("class", "tm3").put("factor", "1e999999")));
        attacks.put("unsigned-review", () -> {
            appended("review", e -> {});
            return CommandRun.of(
                    "audit",
                    chain.entry(1).toString(),
                    "--public-key",
                    chain.place.resolve("own.pub").toString());
        });
        attacks.put("unsigned-review-without-key", () -> {
            appended("review", e -> {});
            return AttacksTest.audit(chain.entry(1));
        });
        attacks.put("review-by-nobody", () -> inChain(r -> r.remove("by")));
        attacks.put("review-unknown-verdict", () -> inChain(r -> r.put("verdict", "cleared")));
        attacks.put("review-of-nothing", () -> inChain(r -> r.put("of", "0".repeat(64))));
        attacks.put("review-with-a-part-more", () -> inChain(r -> r.put("seal", "of the court")));
        attacks.put("same-called-stricter", () -> chain.said("stricter", "long shift", "--class", "th3"));
        attacks.put(
                "more-than-the-class-holds",
                () -> chain.said("stricter", "long shift", "--class", "airline-hood-4", "--factor", "2000"));
        attacks.put("agreed-to-another-class", () -> chain.said("agreed", "long shift", "--class", "ffp2"));
        attacks.put("signed-by-nobody", () -> chain.said("agreed", "none"));
        attacks.put("review-of-forged-advice", () -> {
            AttacksTest.reseal(chain.entry(1), e -> AttacksTest.required(e).put("value", 1));
            return chain.said("agreed", "long shift");
        });
    }

    /** An honest disagreement, then edited and sealed anew as the last entry, and the advice audited. */
    private CommandRun edited(Consumer<ObjectNode> edit) {
        appended("review", edit);
        return AttacksTest.audit(chain.entry(1));
    }

    private CommandRun inChain(Consumer<ObjectNode> edit) {
        appended("review", edit);
        return chain.chain();
    }

    /** An entry that nobody signed, as somebody without the key can write it. */
    private void appended(String part, Consumer<ObjectNode> edit) {
        ObjectNode last = AttacksTest.json(chain.entry(3));
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("format", last.path("format").asText());
        entry.put("sequence", 4);
        entry.put("previous", last.path("hash").asText());
        entry.put("kept-at", last.path("kept-at").asText());
        ObjectNode review = entry.putObject(part);
        review.put("of", AttacksTest.json(chain.entry(1)).path("hash").asText());
        review.put("verdict", "disagreed");
        review.put("reason", "long shift");
        review.put("by", "R. Tarn");
        review.put("capacity", "safety officer");
        edit.accept(review);
        try {
            Files.writeString(chain.entry(4), entry.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        AttacksTest.reseal(chain.entry(4), e -> {});
    }
}
