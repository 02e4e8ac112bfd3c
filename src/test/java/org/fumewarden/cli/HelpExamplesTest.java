package org.fumewarden.cli;

import static java.util.stream.Collectors.joining;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.Extent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Runs every example that the helps show, letter for letter in a shell, in a folder that holds what the repository holds.
 * They run in the order below, in which one may use what an earlier one wrote; the gate runs the first of them, and reads the
 * options of all.
 */
class HelpExamplesTest {
    private static final long PATIENCE_MINUTES = 8;
    private static final Pattern BROKEN = Pattern.compile("[a-z]\\.\\R\\s+[a-z][a-z-]*[=)]");
    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+");

    /** Commands in the order in which their examples run, with the exit codes that are no fault of the example. */
    private static final Map<String, List<Integer>> ORDER = new LinkedHashMap<>();

    static {
        for (String name :
                List.of("fumewarden", "advise", "batch", "compare", "exposure", "sweep", "explain", "drill")) {
            ORDER.put(name, List.of(0));
        }
        for (String name : List.of("endurance", "audit", "schema", "codes", "rules", "check", "new", "new code")) {
            ORDER.put(name, List.of(0));
        }
        for (String name : List.of("new rule", "register", "entry", "record", "calendar", "store", "store verify")) {
            ORDER.put(name, List.of(0));
        }
        for (String name : List.of("store export", "store import", "store salvage", "store retention", "serve")) {
            ORDER.put(name, List.of(0));
        }
        for (String name : List.of("store backup", "store restore", "store merge")) {
            ORDER.put(name, List.of(0));
        }
        ORDER.put("review", List.of(0));
        // 3 says that something moves, or is owed: what the examples are there to show.
        ORDER.put("differences", List.of(3));
        ORDER.put("due", List.of(0, 3));
        ORDER.put("calendar", List.of(0, 3));
        // The item of the example lacks what an examination record must hold, and the record says so.
        ORDER.put("record", List.of(0, 3));
    }

    /** What a reader has done before, by command. */
    private static final Map<String, String> BEFORE = Map.of(
            "audit",
            "fumewarden advise scenarios/tours/stainless-brackets.yaml --keep kept >/dev/null;"
                    + " fumewarden advise scenarios/tours/stainless-brackets.yaml --set wearer.facial-hair=true"
                    + " --keep kept >/dev/null",
            "store merge",
            "fumewarden register unit id=V-1 description=\"belt blower\" --store slipway.db"
                    + " && fumewarden store export slipway.jsonl --store slipway.db",
            "record",
            "fumewarden register wearer id=W-07 name=\"A welder of the yard\"",
            "entry",
            "fumewarden register site id=site employer=\"Tarn Haven Fabrication\" address=\"Quay Road 1, Tarn Haven\""
                    + " code=gb monitoring-needed=false");

    @TempDir
    Path folder;

    @Test
    void everyCommandShowsAnExampleAndEachOfThemRuns() throws Exception {
        copyOfTheRepository();
        Map<String, String[]> examples = new LinkedHashMap<>();
        ManualsTest.all(Main.commandLine()).forEach(command -> examples.put(name(command), examples(command)));
        assertEquals(ORDER.keySet(), examples.keySet(), "every command has its place in the order");
        List<String> broken = new ArrayList<>();
        for (String command : ORDER.keySet().stream()
                .limit(Extent.of(1, Extent.ALL, Extent.ALL))
                .toList()) {
            assertTrue(examples.get(command).length > 0, command + " shows no example");
            for (String example : examples.get(command)) {
                String fault = command.equals("serve") ? served(example) : run(command, example);
                if (!fault.isEmpty()) {
                    broken.add(example + "\n" + fault);
                }
            }
        }
        assertTrue(broken.isEmpty(), String.join("\n", broken));
    }

    /** A key such as kit.unit that breaks at its point reads as the end of a sentence. */
    @Test
    void theHelpBreaksNoKeyAndCountsItsExamples() {
        for (CommandLine command : ManualsTest.all(Main.commandLine()).toList()) {
            String help = command.getUsageMessage();
            assertEquals("", BROKEN.matcher(help).results().map(r -> r.group()).collect(joining()), name(command));
            assertEquals(examples(command).length > 1, help.contains("Examples:"), name(command));
        }
    }

    @Test
    void everyCommandShowsAnExampleThatItsParserTakes() {
        for (CommandLine command : ManualsTest.all(Main.commandLine()).toList()) {
            assertTrue(examples(command).length > 0, name(command) + " shows no example");
            for (String example : examples(command)) {
                List<String> words = WORD.matcher(example.replaceFirst(" [|>].*", ""))
                        .results()
                        .map(word -> word.group().replace("\"", ""))
                        .toList();
                assertEquals("fumewarden", words.get(0), example);
                Main.commandLine().parseArgs(words.subList(1, words.size()).toArray(String[]::new));
            }
        }
    }

    private static String name(CommandLine command) {
        return command.getCommandSpec().qualifiedName().replaceFirst("^fumewarden ", "");
    }

    private static String[] examples(CommandLine command) {
        String footer =
                String.join("\n", command.getCommandSpec().usageMessage().footer());
        return footer.replaceAll("\\\\\n *", "")
                .lines()
                .filter(line -> line.startsWith("  "))
                .map(String::strip)
                .toArray(String[]::new);
    }

    /** The rules are written to by an example, so they are copied; the rest is only read. */
    private void copyOfTheRepository() throws IOException, InterruptedException {
        for (String part : List.of("rules", "scenarios", "docs")) {
            Process copy = new ProcessBuilder(
                            "cp", "-r", Path.of(part).toAbsolutePath().toString(), folder.toString())
                    .start();
            assertEquals(0, copy.waitFor());
        }
    }

    private String run(String command, String example) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Process shell = shell(BEFORE.getOrDefault(command, ":") + "\n" + example, said);
        boolean ended = shell.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES);
        shell.destroyForcibly();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        if (!ended || !ORDER.get(command).contains(shell.exitValue())) {
            return "ended with " + (ended ? shell.exitValue() : "nothing in time") + ":\n"
                    + text.lines().limit(20).reduce("", (a, b) -> a + b + "\n");
        }
        return "";
    }

    private String served(String example) throws IOException, InterruptedException {
        Path said = folder.resolve("served.txt");
        String port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = String.valueOf(free.getLocalPort());
        }
        Process server = shell("exec " + example.replaceFirst("--port \\d+", "--port " + port), said);
        try {
            long until = System.nanoTime() + TimeUnit.MINUTES.toNanos(1);
            while (server.isAlive() && System.nanoTime() < until) {
                Matcher link = Pattern.compile("http://\\S+").matcher(Files.exists(said) ? Files.readString(said) : "");
                if (!link.find()) {
                    Thread.sleep(100);
                    continue;
                }
                try {
                    HttpResponse<String> page = HttpClient.newHttpClient()
                            .send(
                                    HttpRequest.newBuilder(URI.create(link.group()))
                                            .build(),
                                    HttpResponse.BodyHandlers.ofString());
                    assertFalse(page.body().isEmpty());
                    return page.statusCode() == 200 ? "" : "answered with " + page.statusCode();
                } catch (IOException e) {
                    Thread.sleep(100);
                }
            }
            return "did not answer:\n" + Files.readString(said);
        } finally {
            server.destroyForcibly().waitFor();
        }
    }

    /** A shell in which the word fumewarden starts the program, as the launcher does. */
    private Process shell(String script, Path said) throws IOException {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Path launcher = bin.resolve("fumewarden");
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Files.writeString(
                launcher,
                "#!/bin/sh\nexec '" + java + "' -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp '"
                        + System.getProperty("java.class.path") + "' org.fumewarden.cli.Main \"$@\"\n");
        assertTrue(launcher.toFile().setExecutable(true));
        ProcessBuilder shell = new ProcessBuilder("sh", "-c", script)
                .directory(folder.toFile())
                .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        shell.environment().put("PATH", bin + ":" + System.getenv("PATH"));
        shell.environment().remove("FUMEWARDEN_STORE");
        return shell.start();
    }
}
