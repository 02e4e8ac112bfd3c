package org.fumewarden.batch;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;

/** Finds where a killed batch may go on: walks the input and both files side by side to the first task in neither. */
final class Resumption {
    /**
     * Where to go on.
     *
     * @param adviceEnd bytes of the file of advice that are kept
     * @param rejectsEnd bytes of the file of rejects that are kept
     */
    record Place(long adviceEnd, long rejectsEnd) {}

    private record Found(Entry entry, Path file, WrittenLines.Span span) {}

    private Resumption() {}

    static Place find(Path advice, Path rejects, Entries entries, LineAdvisor worker) throws IOException {
        Optional<Found> last = Optional.empty();
        try (WrittenLines advised = new WrittenLines(advice);
                WrittenLines rejected = new WrittenLines(rejects)) {
            Optional<WrittenLines.Span> a = advised.next();
            Optional<WrittenLines.Span> r = rejected.next();
            long adviceEnd = 0;
            long rejectsEnd = 0;
            while (a.isPresent() || r.isPresent()) {
                Optional<Entry> entry = entries.peek();
                if (entry.isEmpty()) {
                    throw differs(advice, "holds more lines than the input has tasks.");
                }
                if (is(a, entry.get())) {
                    last = Optional.of(new Found(entry.get(), advice, a.get()));
                    adviceEnd = a.get().end();
                    a = advised.next();
                } else if (is(r, entry.get())) {
                    last = Optional.of(new Found(entry.get(), rejects, r.get()));
                    rejectsEnd = r.get().end();
                    r = rejected.next();
                } else {
                    break;
                }
                entries.next();
            }
            if (last.isPresent()) {
                same(last.get(), worker);
            }
            return new Place(adviceEnd, rejectsEnd);
        }
    }

    private static boolean is(Optional<WrittenLines.Span> span, Entry entry) {
        return span.isPresent() && span.get().number() == entry.number();
    }

    /** Two halves under different rules would look like one answer, so the last finished task is decided again. */
    private static void same(Found found, LineAdvisor worker) throws IOException {
        byte[] written =
                new byte[Math.toIntExact(found.span().end() - found.span().start())];
        try (RandomAccessFile file = new RandomAccessFile(found.file().toFile(), "r")) {
            file.seek(found.span().start());
            file.readFully(written);
        }
        String now = worker.answer(found.entry()).json() + "\n";
        if (!now.equals(new String(written, StandardCharsets.UTF_8))) {
            throw differs(found.file(), "was written from another input, other rules or other options.");
        }
    }

    private static InputException differs(Path file, String message) {
        return new InputException(new Problem(
                file.toString(),
                0,
                "",
                message,
                "begin anew with another --out, or give what the first run was given."));
    }
}
