package org.fumewarden.upkeep;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.fumewarden.model.Count;

/** Export and import of a whole store as JSON Lines: one line for the head, one for each entry. */
public final class JsonLines {
    private static final String FORMAT = "fumewarden-log";

    private static final int SHOWN = 8;

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

    private static void chained(BufferedReader in, Consumer<LogEntry> target, Head declared) {
        byte[] running = Canon.origin();
        long entries = 0;
        Numbered lines = new Numbered(in);
        for (Optional<JsonNode> node = lines.next(); node.isPresent(); node = lines.next()) {
            LogEntry entry = Canon.entry(node.get().path("entry").toString());
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
                    "the export has " + Count.of(entries, "entry") + ", but its first line promises "
                            + declared.entries() + ".",
                    "the file was cut off; export again.");
        }
    }

    /**
     * Reads what was salvaged into an empty store.
     *
     * <p>Entries get new numbers and a new chain. A correction of a lost entry keeps what it says and loses its link.
     */
    public static Head importSalvaged(Store store, BufferedReader in) throws IOException {
        TreeMap<Long, LogEntry> found = new TreeMap<>();
        Numbered lines = new Numbered(in);
        for (Optional<JsonNode> node = lines.next(); node.isPresent(); node = lines.next()) {
            if (node.get().has("entry")) {
                LogEntry entry = Canon.entry(node.get().path("entry").toString());
                found.put(entry.sequence(), entry);
            }
        }
        TreeMap<Long, Long> numbers = new TreeMap<>();
        found.keySet().forEach(old -> numbers.put(old, numbers.size() + 1L));
        store.restore(target -> found.values().forEach(e -> target.accept(renumbered(e, numbers))));
        return store.head();
    }

    /**
     * Appends the export of another store. Its entries keep their days, persons and moments and get the next numbers here. The
     * entries about its site are left out when this store has a site of its own.
     *
     * @return the head, after as many entries as came in
     * @throws StoreException when an id means one thing here and another there
     */
    public static Head merge(Store store, BufferedReader in) throws IOException {
        List<LogEntry> all = new ArrayList<>();
        try {
            Head declared = header(in.readLine());
            chained(in, all::add, declared);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        store.append(() -> foreign(store, all));
        return store.head();
    }

    private static List<LogEntry> foreign(Store store, List<LogEntry> all) {
        Map<String, Item> own = store.items().stream().collect(Collectors.toMap(Item::id, i -> i));
        List<Item.Site> sites = store.items(Item.Site.class);
        Map<String, Item> theirs = new TreeMap<>();
        all.forEach(e -> {
            if (e.details() instanceof Details.Registration registration) {
                theirs.put(e.item(), registration.item());
            }
        });
        List<String> both = theirs.keySet().stream().filter(own::containsKey).toList();
        if (!both.isEmpty()) {
            throw StoreException.refused(
                    both.size() + " ids are in both stores: "
                            + both.stream().limit(SHOWN).collect(Collectors.joining(", "))
                            + (both.size() > SHOWN ? ", ..." : "") + ".",
                    "register them under other ids in one of the two; one id is one thing.");
        }
        if (!sites.isEmpty()) {
            for (Item site : theirs.values()) {
                if (site instanceof Item.Site s
                        && !s.facts().equals(sites.get(0).facts())) {
                    throw StoreException.refused(
                            "the two sites \"" + sites.get(0).id() + "\" and \"" + s.id() + "\" have different facts.",
                            "keep two stores, or register the facts with the items and not with the site.");
                }
            }
        }
        TreeMap<Long, Long> numbers = new TreeMap<>();
        long next = store.head().entries();
        List<LogEntry> kept = new ArrayList<>();
        for (LogEntry entry : all) {
            boolean site = theirs.get(entry.item()) instanceof Item.Site;
            if (!site || sites.isEmpty()) {
                numbers.put(entry.sequence(), ++next);
                kept.add(renumbered(entry, numbers));
            }
        }
        return kept;
    }

    private static LogEntry renumbered(LogEntry entry, TreeMap<Long, Long> numbers) {
        Details details = entry.details();
        if (details instanceof Details.Correction correction) {
            Optional<Long> earlier = Optional.ofNullable(numbers.get(correction.entry()));
            details = earlier.<Details>map(n -> new Details.Correction(n, correction.reason(), correction.instead()))
                    .or(correction::instead)
                    .orElseGet(() -> new Details.Performed("correction-of-lost-entry", correction.reason()));
        }
        return new LogEntry(
                numbers.get(entry.sequence()), entry.item(), entry.on(), entry.recorded(), entry.by(), details);
    }

    private static Head header(String text) {
        JsonNode node = Numbered.object(text == null ? "" : text, 1);
        if (!node.has(FORMAT)) {
            throw StoreException.refused(
                    "line 1 does not begin an export.", "name a file that \"store export\" wrote.");
        }
        return new Head(node.path("entries").asLong(-1), node.path("head").asText());
    }
}
