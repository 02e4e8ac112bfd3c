package org.fumewarden.batch;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;

/** The two files of a batch, advice and rejects, each in the order of the input. For one thread. */
public final class ResultFiles implements Batch.Sink, AutoCloseable {
    private static final int BUFFER = 1 << 16;

    private final FileChannel adviceChannel;
    private final FileChannel rejectChannel;
    private final OutputStream advice;
    private final OutputStream rejects;

    private ResultFiles(FileChannel adviceChannel, FileChannel rejectChannel) {
        this.adviceChannel = adviceChannel;
        this.rejectChannel = rejectChannel;
        this.advice = new BufferedOutputStream(Channels.newOutputStream(adviceChannel), BUFFER);
        this.rejects = Channels.newOutputStream(rejectChannel);
    }

    /**
     * Begins new files.
     *
     * @throws InputException when one is there already: the work of hours is not overwritten
     */
    public static ResultFiles begin(Path advice, Path rejects) throws IOException {
        absent(advice);
        absent(rejects);
        return open(advice, rejects);
    }

    private static void absent(Path path) {
        if (Files.exists(path)) {
            throw new InputException(new Problem(
                    path.toString(), 0, "", "is there already.", "add --resume to go on with it, or name another."));
        }
    }

    /**
     * Goes on after the last task that both files have complete, and takes the input to the task after it. What a kill
     * left beyond that, such as a torn line, is cut off and made again. Files that are not there count as empty.
     *
     * @throws InputException when the last finished task would now come out differently: other input, rules or options
     */
    public static ResultFiles resume(Path advice, Path rejects, Entries entries, LineAdvisor worker)
            throws IOException {
        ResultFiles files = open(advice, rejects);
        try {
            Resumption.Place place = Resumption.find(advice, rejects, entries, worker);
            files.adviceChannel.truncate(place.adviceEnd()).position(place.adviceEnd());
            files.rejectChannel.truncate(place.rejectsEnd()).position(place.rejectsEnd());
            return files;
        } catch (IOException | RuntimeException e) {
            files.close();
            throw e;
        }
    }

    private static ResultFiles open(Path advice, Path rejects) throws IOException {
        FileChannel first = locked(advice);
        try {
            return new ResultFiles(first, locked(rejects));
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
        file.write((outcome.json() + "\n").getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void close() throws IOException {
        try (adviceChannel;
                rejectChannel) {
            advice.flush();
        }
    }
}
