package org.fumewarden.upkeep;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Export and import of a whole store as JSON Lines: one line for the head, one for each entry. */
public final class JsonLines {
    private static final String FORMAT = "fumewarden-log";

    private JsonLines() {}

    /** Writes every entry with its hash. */
    public static Head export(Store store, Writer out) throws IOException {
        Head head = store.head();
        out.write("{\"" + FORMAT + "\":1,\"entries\":" + head.entries() + ",\"head\":\"" + head.hash() + "\"}\n");
        byte[][] running = {Canon.origin()};
        List<IOException> faults = new ArrayList<>();
        store.forEach(entry -> {
            if (entry.sequence() <= head.entries() && faults.isEmpty()) {
                String body = Canon.write(entry);
                running[0] = Canon.hash(running[0], body);
                try {
                    out.write(line(body, running[0]));
                } catch (IOException e) {
                    faults.add(e);
                }
            }
        });
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        if (!HexFormat.of().formatHex(running[0]).equals(head.hash())) {
            throw new StoreException(
                    StoreException.Cause.DAMAGED,
                    store.file() + " does not agree with its own chain.",
                    "run \"store verify\" to see where, and \"store salvage\" to save what is intact.");
        }
        return head;
    }

    static String line(String body, byte[] hash) {
        return "{\"hash\":\"" + HexFormat.of().formatHex(hash) + "\",\"entry\":" + body + "}\n";
    }

    /** Reads an export into an empty store; refuses it whole when one line does not fit the chain. */
    public static Head importInto(Store store, BufferedReader in) throws IOException {
        Head declared = header(in.readLine());
        try {
            store.restore(target -> chained(in, target, declared));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return store.head();
    }

    private static void chained(BufferedReader in, Consumer<Entry> target, Head declared) {
        byte[] running = Canon.origin();
        long entries = 0;
        Numbered lines = new Numbered(in);
        for (Optional<JsonNode> node = lines.next(); node.isPresent(); node = lines.next()) {
            Entry entry = Canon.entry(node.get().path("entry").toString());
            running = Canon.hash(running, Canon.write(entry));
            if (!HexFormat.of()
                    .formatHex(running)
                    .equals(node.get().path("hash").asText())) {
                throw StoreException.refused(
                        "line " + lines.number() + " (entry " + entry.sequence() + ") does not fit the chain.",
                        "the line was changed, lost or moved; export again, or use \"store import --salvaged\".");
            }
            target.accept(entry);
            entries++;
        }
        if (!Head.of(entries, running).equals(declared)) {
            throw StoreException.refused(
                    "the export holds " + entries + " entries but its first line promises " + declared.entries() + ".",
                    "the file was cut off; export again.");
        }
    }

    /**
     * Reads what was salvaged into an empty store.
     *
     * <p>Entries get new numbers and a new chain. A correction of a lost entry keeps what it says and loses its link.
     */
    public static Head importSalvaged(Store store, BufferedReader in) throws IOException {
        TreeMap<Long, Entry> found = new TreeMap<>();
        Numbered lines = new Numbered(in);
        for (Optional<JsonNode> node = lines.next(); node.isPresent(); node = lines.next()) {
            if (node.get().has("entry")) {
                Entry entry = Canon.entry(node.get().path("entry").toString());
                found.put(entry.sequence(), entry);
            }
        }
        TreeMap<Long, Long> numbers = new TreeMap<>();
        found.keySet().forEach(old -> numbers.put(old, numbers.size() + 1L));
        store.restore(target -> found.values().forEach(e -> target.accept(renumbered(e, numbers))));
        return store.head();
    }

    private static Entry renumbered(Entry entry, TreeMap<Long, Long> numbers) {
        Details details = entry.details();
        if (details instanceof Details.Correction correction) {
            Optional<Long> earlier = Optional.ofNullable(numbers.get(correction.entry()));
            details = earlier.<Details>map(n -> new Details.Correction(n, correction.reason(), correction.instead()))
                    .or(correction::instead)
                    .orElseGet(() -> new Details.Performed("correction-of-lost-entry", correction.reason()));
        }
        return new Entry(
                numbers.get(entry.sequence()), entry.item(), entry.on(), entry.recorded(), entry.by(), details);
    }

    private static Head header(String text) {
        JsonNode node = Numbered.object(text == null ? "" : text, 1);
        if (!node.has(FORMAT)) {
            throw StoreException.refused(
                    "line 1 is not the head of an export.", "name a file that \"store export\" wrote.");
        }
        return new Head(node.path("entries").asLong(-1), node.path("head").asText());
    }
}
