package org.fumewarden.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.OutputFile;
import org.fumewarden.codes.Problem;

/**
 * The two files of a batch, advice and rejects, each in the order of the input. For one thread.
 *
 * <p>Each begins with a line that marks it as begun here: a file without it is never gone on with.
 */
public final class ResultFiles implements Batch.Sink, AutoCloseable {
    static final byte[] ADVICE = marker("advice");
    static final byte[] REJECTS = marker("rejects");

    private static final int BUFFER = 1 << 16;

    private final Path advicePath;
    private final Path rejectPath;
    private final FileChannel adviceChannel;
    private final FileChannel rejectChannel;
    private final OutputStream advice;
    private final OutputStream rejects;

    private ResultFiles(Path advicePath, Path rejectPath, FileChannel adviceChannel, FileChannel rejectChannel) {
        this.advicePath = advicePath;
        this.rejectPath = rejectPath;
        this.adviceChannel = adviceChannel;
        this.rejectChannel = rejectChannel;
        this.advice = new BufferedOutputStream(Channels.newOutputStream(adviceChannel), BUFFER);
        this.rejects = Channels.newOutputStream(rejectChannel);
    }

    private static byte[] marker(String kind) {
        return ("{\"line\":0,\"batch\":\"" + kind + "\",\"format\":1}\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Begins new files; what may not be overwritten was refused before. */
    public static ResultFiles begin(Path advice, Path rejects) throws IOException {
        ResultFiles files = open(advice, rejects);
        try {
            files.cut(0, 0);
            return files;
        } catch (IOException | RuntimeException e) {
            files.close();
            throw e;
        }
    }

    /** What a resumed batch is told: what is settled, what has to be made anew. */
    public interface Told {
        /**
         * Hears it once, before the first new line.
         *
         * @param advised tasks that have advice from before
         * @param rejected tasks that were rejected before
         * @param stale lines that are made anew, since their task or they themselves were changed
         */
        void settled(long advised, long rejected, long stale);
    }

    /** Runs a batch over an input into files. */
    public interface Run<T> {
        T over(Entries entries, Batch.Sink sink) throws IOException, InterruptedException;
    }

    /**
     * Goes on after the last task that both files have complete. What a kill left beyond that, such as a torn line, is cut off
     * and made again. A line whose task was changed, or that was edited, is made anew: both files are then written beside and
     * moved into their places when they are whole.
     *
     * @throws InputException when a file was not begun by a batch, or comes from other input, rules or options
     */
    public static <T> T resume(Path advice, Path rejects, Path input, LineAdvisor worker, Told told, Run<T> run)
            throws IOException, InterruptedException {
        begunHere(advice, ADVICE);
        begunHere(rejects, REJECTS);
        try (ResultFiles files = open(advice, rejects)) {
            try (Entries entries = Entries.open(input)) {
                Resumption.Place place;
                try (Resumption walk = new Resumption(advice, rejects, entries)) {
                    place = walk.find(worker);
                }
                if (place.stale() == 0) {
                    told.settled(place.advised(), place.rejected(), 0);
                    files.cut(place.adviceEnd(), place.rejectsEnd());
                    return run.over(entries, files);
                }
                told.settled(0, 0, place.stale());
            }
            return mend(files, input, run);
        }
    }

    /** Looked at before the other file is made, so that a refusal leaves nothing behind. */
    private static void begunHere(Path path, byte[] marker) throws IOException {
        if (Files.exists(path)) {
            WrittenLines.open(path, marker).close();
        }
    }

    private static <T> T mend(ResultFiles old, Path input, Run<T> run) throws IOException, InterruptedException {
        Path advice = OutputFile.beside(old.advicePath);
        Path rejects = OutputFile.beside(old.rejectPath);
        try {
            T result;
            try (Entries entries = Entries.open(input);
                    Resumption walk = new Resumption(old.advicePath, old.rejectPath, entries);
                    ResultFiles fresh = begin(advice, rejects)) {
                result = run.over(walk.mended(), fresh);
                fresh.advice.flush();
                fresh.adviceChannel.force(true);
                fresh.rejectChannel.force(true);
            }
            // Ended between the two moves, a task may stand in both files; only one of the two answers it.
            Files.move(rejects, old.rejectPath, StandardCopyOption.REPLACE_EXISTING);
            Files.move(advice, old.advicePath, StandardCopyOption.REPLACE_EXISTING);
            return result;
        } finally {
            Files.deleteIfExists(advice);
            Files.deleteIfExists(rejects);
        }
    }

    private void cut(long adviceEnd, long rejectsEnd) throws IOException {
        cut(adviceChannel, adviceEnd, ADVICE);
        cut(rejectChannel, rejectsEnd, REJECTS);
    }

    private static void cut(FileChannel channel, long end, byte[] marker) throws IOException {
        channel.truncate(end).position(end);
        if (end == 0) {
            channel.write(ByteBuffer.wrap(marker));
        }
    }

    private static ResultFiles open(Path advice, Path rejects) throws IOException {
        FileChannel first = locked(advice);
        try {
            return new ResultFiles(advice, rejects, first, locked(rejects));
        } catch (IOException | RuntimeException e) {
            first.close();
            throw e;
        }
    }

    private static FileChannel locked(Path path) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw new InputException(new Problem(
                    path.toString(),
                    0,
                    "",
                    "cannot be written (" + e.getMessage() + ").",
                    "name a file in a folder that is there and may be written to."));
        }
        if (!held(channel)) {
            channel.close();
            throw new InputException(new Problem(
                    path.toString(),
                    0,
                    "",
                    "is being written by another batch.",
                    "wait for it, or name another file."));
        }
        return channel;
    }

    /** Locks one byte far behind all data: some systems let nobody read what is locked, and a resumption must. */
    private static boolean held(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(Long.MAX_VALUE - 1, 1, false) != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    @Override
    public void take(Outcome outcome) throws IOException {
        // Rejects go out at once: a kept-back one would make a resumed batch do again all that came after it.
        OutputStream file = outcome.advised() ? advice : rejects;
        try {
            file.write((outcome.json() + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw full(e);
        }
    }

    private IOException full(IOException e) {
        return new IOException(
                (e.getMessage() + ". The lines written to " + advicePath + " are kept; --resume goes on after them"),
                e);
    }

    @Override
    public void close() throws IOException {
        try (adviceChannel;
                rejectChannel) {
            advice.flush();
        } catch (IOException e) {
            throw full(e);
        }
    }
}
