package org.fumewarden.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.fumewarden.codes.InputException;

/** The server of the local page. It listens on the loopback address only and keeps nothing. */
public final class WebServer implements AutoCloseable {
    /** Largest request that is read, in bytes: a task is a few thousand. */
    static final int MAX_BYTES = 1_000_000;

    private static final int THREADS = 16;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpServer server;
    private final ExecutorService threads;
    private final TimeLimit limit;
    private final PageFiles files = new PageFiles();
    private final Desk desk;
    private final Gate gate;

    static {
        // Seconds after which a request that trickles in, or a reply that nobody takes, is cut off.
        setUnlessGiven("sun.net.httpserver.maxReqTime", "15");
        setUnlessGiven("sun.net.httpserver.maxRspTime", "120");
        setUnlessGiven("sun.net.httpserver.nodelay", "true");
    }

    private WebServer(HttpServer server, Desk desk, Duration longest) {
        this.server = server;
        this.desk = desk;
        this.limit = new TimeLimit(longest);
        this.gate = new Gate(server.getAddress().getPort());
        this.threads = Executors.newFixedThreadPool(THREADS, work -> {
            Thread thread = new Thread(work, "fumewarden-web");
            thread.setDaemon(true);
            return thread;
        });
        server.setExecutor(threads);
        server.createContext("/", this::serve);
    }

    /**
     * Starts a server.
     *
     * @param port 0 for any free port
     * @param longest time after which the work on one request is stopped
     */
    public static WebServer start(int port, Library library, Duration longest) throws IOException {
        InetSocketAddress loopback = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
        WebServer server = new WebServer(HttpServer.create(loopback, 0), new Desk(library), longest);
        server.server.start();
        return server;
    }

    /** Where the page is. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + "/");
    }

    /** The address it listens on. */
    public InetSocketAddress listening() {
        return server.getAddress();
    }

    private void serve(HttpExchange exchange) throws IOException {
        try (exchange) {
            send(exchange, answer(exchange));
        }
    }

    private Reply answer(HttpExchange exchange) throws IOException {
        Optional<Reply> refusal = gate.refusal(exchange);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        String path = exchange.getRequestURI().getRawPath();
        if (exchange.getRequestMethod().equals("GET")) {
            return files.find(path)
                    .orElseGet(
                            () -> Reply.refuse(404, "asks for a page that is not there.", "the address ending in /."));
        }
        Optional<Desk.Answerer> answerer = desk.find(path);
        if (answerer.isEmpty()) {
            return Reply.refuse(404, "asks for an answer that is not there.", "reload the page.");
        }
        byte[] body = exchange.getRequestBody().readNBytes(MAX_BYTES + 1);
        if (body.length > MAX_BYTES) {
            return Reply.refuse(413, "is larger than " + MAX_BYTES + " bytes.", "a task file is far smaller.");
        }
        return decide(answerer.get(), body);
    }

    private Reply decide(Desk.Answerer answerer, byte[] body) {
        try {
            JsonNode asked = MAPPER.readTree(body);
            if (asked == null || !asked.isObject()) {
                return Reply.refuse(400, "holds no JSON object.", "reload the page.");
            }
            return limit.run(() -> answerer.answer(asked));
        } catch (JsonProcessingException e) {
            return Reply.refuse(400, "is not JSON.", "reload the page.");
        } catch (IOException e) {
            return Reply.refuse(400, "cannot be read.", "reload the page.");
        } catch (ExecutionException e) {
            return fault(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Reply.refuse(503, "was stopped.", "start the command again.");
        }
    }

    private static Reply fault(Throwable cause) {
        if (cause instanceof InputException input) {
            return Reply.problems(422, input.problems());
        }
        return Reply.refuse(
                500,
                "met a fault of the program (" + cause.getClass().getSimpleName() + ").",
                "save the task and report it.");
    }

    private static void send(HttpExchange exchange, Reply reply) throws IOException {
        Headers headers = exchange.getResponseHeaders();
        headers.set("Content-Type", reply.type());
        headers.set("Content-Security-Policy", reply.policy());
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
        exchange.sendResponseHeaders(reply.status(), reply.body().length == 0 ? -1 : reply.body().length);
        if (reply.body().length > 0) {
            try (OutputStream out = exchange.getResponseBody()) {
                out.write(reply.body());
            }
        }
    }

    private static void setUnlessGiven(String name, String value) {
        if (System.getProperty(name) == null) {
            System.setProperty(name, value);
        }
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
        limit.close();
    }
}
