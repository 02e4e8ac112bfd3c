package org.fumewarden.web;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** Response times of the page, with the server as a process of its own; run by hand, holds no limit. */
public final class PageBenchmark {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private PageBenchmark() {}

    /**
     * Measures.
     *
     * @param arguments none, or the launcher of the distribution to start instead of the classes
     */
    public static void main(String[] arguments) throws Exception {
        long start = System.nanoTime();
        Process server = start(arguments);
        try {
            URI address = address(server);
            ObjectNode task = JsonNodeFactory.instance.objectNode();
            task.put("task", Starts.text("bench-stainless"));
            say("start until it listens", millis(start));
            say("codes, first", ask(address, "codes", "{}"));
            say("advice, first", ask(address, "advise", task.toString()));
            Thread.sleep(15_000);
            say("advice, median of 41 after 15 s", median(address, "advise", task, 41));
            say("which questions matter, median of 11 new tasks", median(address, "matters", task, 11));
            ask(address, "matters", task.toString());
            say("the same task again", ask(address, "matters", task.toString()));
        } finally {
            server.destroy();
        }
    }

    private static Process start(String[] arguments) throws Exception {
        String java = System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
        String[] command = arguments.length > 0
                ? new String[] {arguments[0], "serve", "--port", "0"}
                : new String[] {
                    java,
                    "-cp",
                    System.getProperty("java.class.path"),
                    "org.fumewarden.cli.Main",
                    "serve",
                    "--port",
                    "0"
                };
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    private static URI address(Process server) throws Exception {
        BufferedReader said =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            int at = line.indexOf("http://");
            if (at >= 0) {
                return URI.create(line.substring(at).split(" ")[0]);
            }
        }
        throw new IllegalStateException("the server did not start");
    }

    /** Each round asks about another title, so that nothing kept from before answers. */
    private static double median(URI address, String path, ObjectNode task, int rounds) throws Exception {
        double[] times = new double[rounds];
        for (int i = 0; i < rounds; i++) {
            ObjectNode other = task.deepCopy();
            other.put("task", task.path("task").asText().replaceFirst("title: ", "title: round " + i + " "));
            times[i] = ask(address, path, other.toString());
        }
        Arrays.sort(times);
        return times[rounds / 2];
    }

    private static double ask(URI address, String path, String body) throws Exception {
        long start = System.nanoTime();
        HttpResponse<byte[]> reply = CLIENT.send(
                HttpRequest.newBuilder(address.resolve("api/" + path))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofByteArray());
        if (reply.statusCode() != 200) {
            throw new IllegalStateException(path + " gave " + reply.statusCode());
        }
        return millis(start);
    }

    private static double millis(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static void say(String what, double millis) {
        System.out.printf(Locale.ROOT, "%-50s %8.1f ms%n", what, millis);
    }
}
