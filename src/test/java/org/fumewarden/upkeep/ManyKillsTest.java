package org.fumewarden.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.zip.GZIPInputStream;
import org.fumewarden.Extent;
import org.fumewarden.cli.CommandRun;
import org.fumewarden.web.Library;
import org.fumewarden.web.WebServer;
import org.fumewarden.web.Workshop;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills the program at moments of chance while it writes the register, the log, advice that is kept, and entries from the page,
 * and looks whether all that it had confirmed is there. The build server kills a few times, the long run many.
 */
class ManyKillsTest {
    private static final int KILLS = Extent.of(8, 8, 1000);
    private static final long SEED = Extent.SEED;
    private static final int LONGEST_MILLIS = 1_500;
    private static final List<String> WORKS = List.of("register", "log", "keep", "serve");
    private static final String TOUR = "scenarios/tours/stainless-brackets.yaml";

    @TempDir
    Path folder;

    /** Does one thing over and over with the program itself, and says so each time it was confirmed. */
    static final class Worker {
        private Worker() {}

        public static void main(String[] arguments) {
            PrintStream said = System.out;
            Path folder = Path.of(arguments[1]);
            String store = folder.resolve("log.db").toString();
            said.println("ready");
            for (int i = 0; ; i++) {
                String mark = arguments[2] + "-" + i;
                CommandRun run =
                        switch (arguments[0]) {
                            case "register" ->
                                CommandRun.of(
                                        "register", "unit", "id=U-" + mark, "description=" + mark, "--store", store);
                            case "log" ->
                                CommandRun.of(
                                        "log",
                                        "repair",
                                        "item=U-0",
                                        "by=" + mark,
                                        "work=hose " + mark,
                                        "--store",
                                        store);
                            case "serve" -> posted(served(store), mark);
                            default ->
                                CommandRun.of(
                                        "advise",
                                        TOUR,
                                        "--set",
                                        "title=" + mark,
                                        "--keep",
                                        folder.resolve("kept").toString());
                        };
                if (run.exit() == 1 || run.exit() == 2) {
                    said.println("failed: " + run.err());
                    return;
                }
                said.println("done " + mark);
                said.flush();
            }
        }
    }

    private static URI server;

    /** Kept, so that it is not taken away while the process works. */
    private static WebServer page;

    /** The page of this process, started once. */
    private static URI served(String store) {
        if (server == null) {
            try {
                page = WebServer.start(
                        0,
                        Library.shipped(LocalDate::now),
                        Optional.of(Workshop.at(Path.of(store), Clock.systemDefaultZone())),
                        Duration.ofSeconds(60));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            server = page.address().resolve("api/log");
        }
        return server;
    }

    private static CommandRun posted(URI page, String mark) {
        String entry = "{\"kind\":\"repair\",\"item\":\"U-0\",\"on\":\"2026-03-02\",\"sure\":true,\"by\":\"" + mark
                + "\",\"values\":{\"work\":\"hose\"}}";
        HttpRequest request = HttpRequest.newBuilder(page)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(entry))
                .build();
        while (true) {
            try {
                HttpResponse<String> reply =
                        HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
                return new CommandRun(reply.statusCode() == 200 ? 0 : 2, "", reply.body());
            } catch (ConnectException e) {
                // It does not listen yet.
                Thread.onSpinWait();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @Test
    @Tag("ci")
    void nothingConfirmedIsLost() throws Exception {
        Random random = new Random(SEED);
        String store = folder.resolve("log.db").toString();
        assertEquals(
                0,
                CommandRun.of("register", "unit", "id=U-0", "description=first", "--store", store)
                        .exit());
        List<String> confirmed = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            String work = WORKS.get(kill % WORKS.size());
            confirmed.addAll(killed(work, kill, random.nextInt(LONGEST_MILLIS)));
            assertEquals(0, CommandRun.of("store", "verify", "--store", store).exit(), "after kill " + kill);
        }
        String export = folder.resolve("all.jsonl").toString();
        assertEquals(
                0, CommandRun.of("store", "export", export, "--store", store).exit());
        String entries = Files.readString(Path.of(export));
        String kept = kept();
        int lost = 0;
        for (String one : confirmed) {
            boolean there = one.startsWith("keep") ? kept.contains(one) : entries.contains("\"" + one + "\"");
            lost += there ? 0 : 1;
        }
        System.out.println(
                "kills: " + KILLS + " from seed " + SEED + ", confirmed " + confirmed.size() + ", lost " + lost);
        assertEquals(0, lost);
        if (Files.isDirectory(folder.resolve("kept"))) {
            CommandRun audit =
                    CommandRun.of("audit", "--chain", folder.resolve("kept").toString());
            assertTrue(audit.exit() == 0 || audit.exit() == 3, audit.err());
        }
    }

    private List<String> killed(String work, int kill, int millis) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Worker.class.getName(),
                        work,
                        folder.toString(),
                        work + kill)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> done = new ArrayList<>();
        try (BufferedReader lines = process.inputReader()) {
            assertEquals("ready", lines.readLine());
            // The first confirmation takes the start of a machine; a moment of chance after it, or within it.
            if (kill / WORKS.size() % 2 == 0) {
                read(lines.readLine(), done);
            }
            Thread.sleep(millis);
            process.toHandle().destroyForcibly();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                read(line, done);
            }
        }
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return done;
    }

    private static void read(String line, List<String> done) {
        assertTrue(line == null || !line.startsWith("failed"), line);
        if (line != null && line.matches("done \\S+-\\d+")) {
            done.add(line.substring("done ".length()));
        }
    }

    private String kept() throws IOException {
        StringBuilder all = new StringBuilder();
        Path chain = folder.resolve("kept");
        if (Files.isDirectory(chain)) {
            try (var files = Files.walk(chain)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    all.append(text(Files.readAllBytes(file))).append('\n');
                }
            }
        }
        return all.toString();
    }

    private static String text(byte[] bytes) throws IOException {
        boolean packed = bytes.length > 1 && (bytes[0] & 0xff) == 0x1f && (bytes[1] & 0xff) == 0x8b;
        if (!packed) {
            return new String(bytes, StandardCharsets.UTF_8);
        }
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (EOFException e) {
            // Torn by the kill, and never named as kept.
            return "";
        }
    }
}
