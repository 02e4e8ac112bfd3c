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
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.fumewarden.codes.InputException;
import org.fumewarden.report.html.Words;

/** The server of the local page. It listens on the loopback address only and keeps nothing. */
public final class WebServer implements AutoCloseable {
    /** Largest request that is read, in bytes: two pieces of advice of an older format, with every quote escaped. */
    static final int MAX_BYTES = 8_000_000;

    /** A client that takes its time holds one; as many as forty of them hold nobody up. They work little: TimeLimit bounds the work. */
    private static final int THREADS = 256;

    private static final String PAPER = "/paper/";
    private static final String ITEM = "item=";
    private static final String LANGUAGE = "language=";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpServer server;
    private final ThreadPoolExecutor threads;
    private final TimeLimit limit;
    private final PageFiles files = new PageFiles();
    private final Desk desk;
    private final Papers papers;
    private final LinkGate gate;

    static {
        // Seconds after which a request that trickles in, or a reply that nobody takes, is cut off.
        setUnlessGiven("sun.net.httpserver.maxReqTime", "15");
        setUnlessGiven("sun.net.httpserver.maxRspTime", "120");
        setUnlessGiven("sun.net.httpserver.nodelay", "true");
    }

    private WebServer(HttpServer server, Desk desk, Papers papers, Duration longest) {
        this.papers = papers;
        this.server = server;
        this.desk = desk;
        this.limit = new TimeLimit(longest);
        this.gate = new LinkGate(server.getAddress().getPort());
        this.threads =
                new ThreadPoolExecutor(THREADS, THREADS, 30, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                    Thread thread = new Thread(work, "fumewarden-web");
                    thread.setDaemon(true);
                    return thread;
                });
        this.threads.allowCoreThreadTimeOut(true);
        server.setExecutor(threads);
        server.createContext("/", this::serve);
    }

    /**
     * Starts a server without a register.
     *
     * @param port 0 for any free port
     * @param longest time after which the work on one request is stopped
     */
    public static WebServer start(int port, Library library, Duration longest) throws IOException {
        return start(port, library, Optional.empty(), longest);
    }

    /** Starts a server, with the register and log of a workshop when there is one. */
    public static WebServer start(int port, Library library, Optional<Workshop> workshop, Duration longest)
            throws IOException {
        InetSocketAddress loopback = new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
        UpkeepDesk upkeep = new UpkeepDesk(library, workshop);
        WebServer server =
                new WebServer(HttpServer.create(loopback, 0), new Desk(library, upkeep), new Papers(upkeep), longest);
        server.server.start();
        return server;
    }

    /** Where the page is: an address with a secret, without which nothing is answered. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + server.getAddress().getPort() + gate.start() + "/");
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
        Optional<String> behind = gate.behind(exchange.getRequestURI().getRawPath());
        if (behind.isEmpty()) {
            return Reply.text(403, "Open the link that the command printed when it was started.\n");
        }
        String path = behind.get();
        if (exchange.getRequestMethod().equals("GET")) {
            return files.find(path)
                    .or(() -> paper(path, exchange.getRequestURI().getRawQuery()))
                    .orElseGet(() ->
                            Reply.refuse(404, "asks for a page that is not there.", "open the address ending in /."));
        }
        Optional<Desk.Answerer> answerer = desk.find(path);
        if (answerer.isEmpty()) {
            return Reply.refuse(404, "asks for an answer that is not there.", "reload the page.");
        }
        byte[] body = exchange.getRequestBody().readNBytes(MAX_BYTES + 1);
        if (body.length > MAX_BYTES) {
            return Reply.refuse(
                    413, "is larger than " + MAX_BYTES + " bytes.", "use a smaller file: a task file is far smaller.");
        }
        return decide(answerer.get(), body);
    }

    /** A paper that the browser opens to print or keep: paper/card?item=U-014&language=de. */
    private Optional<Reply> paper(String path, String query) {
        String sheet = path.startsWith(PAPER) ? path.substring(PAPER.length()) : "";
        if (!papers.has(sheet)) {
            return Optional.empty();
        }
        try {
            String id = asked(query, ITEM);
            Words words = Words.in(asked(query, LANGUAGE));
            return Optional.of(limited(() -> papers.write(sheet, id, words)));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static String asked(String query, String name) {
        return Arrays.stream(query == null ? new String[0] : query.split("&"))
                .filter(part -> part.startsWith(name))
                .map(part -> URLDecoder.decode(part.substring(name.length()), StandardCharsets.UTF_8))
                .findFirst()
                .orElse("");
    }

    private Reply decide(Desk.Answerer answerer, byte[] body) {
        try {
            JsonNode asked = MAPPER.readTree(body);
            if (asked == null || !asked.isObject()) {
                return Reply.refuse(400, "holds no JSON object.", "reload the page.");
            }
            return limited(() -> answerer.answer(asked));
        } catch (JsonProcessingException e) {
            return Reply.refuse(400, "is not JSON.", "reload the page.");
        } catch (IOException e) {
            return Reply.refuse(400, "cannot be read.", "reload the page.");
        }
    }

    private Reply limited(Callable<Reply> work) {
        try {
            return limit.run(work);
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
                "met an internal error (" + cause.getClass().getSimpleName() + ").",
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
        reply.file().ifPresent(name -> headers.set("Content-Disposition", "attachment; filename=\"" + name + "\""));
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
