package org.fumewarden.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Lets in only requests of our own page on this machine. Other sites that the browser shows can neither read nor send; other
 * accounts of the machine do not know the secret with which every address begins.
 */
final class LinkGate {
    private static final Set<String> METHODS = Set.of("GET", "POST");

    private static final int SECRET_BYTES = 18;

    private final String secret = secret();
    private final Set<String> hosts;
    private final Set<String> origins;

    LinkGate(int port) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        this.origins = Set.copyOf(hosts.stream().map(h -> "http://" + h).toList());
    }

    private static String secret() {
        byte[] bytes = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** What the path of every address begins with; made anew at each start. */
    String start() {
        return "/" + secret;
    }

    /** The path behind the secret; empty when it does not begin with it. */
    Optional<String> behind(String path) {
        int end = path.indexOf('/', 1);
        byte[] given = path.substring(Math.min(1, path.length()), end < 0 ? path.length() : end)
                .getBytes(StandardCharsets.UTF_8);
        boolean known = end > 0 && MessageDigest.isEqual(given, secret.getBytes(StandardCharsets.UTF_8));
        return known ? Optional.of(path.substring(end)) : Optional.empty();
    }

    /** Why the request is refused; empty when it may pass. */
    Optional<Reply> refusal(HttpExchange exchange) {
        Headers headers = exchange.getRequestHeaders();
        List<String> named = headers.getOrDefault("Host", List.of());
        if (named.size() != 1 || !hosts.contains(named.get(0))) {
            return Optional.of(Reply.refuse(403, "names another host.", "open the address that the command printed."));
        }
        boolean foreign = Stream.of("Origin")
                .flatMap(h -> headers.getOrDefault(h, List.of()).stream())
                .anyMatch(o -> !origins.contains(o));
        boolean elsewhere = headers.getOrDefault("Sec-Fetch-Site", List.of()).stream()
                .anyMatch(s -> s.equals("cross-site") || s.equals("same-site"));
        if (foreign || elsewhere) {
            return Optional.of(Reply.refuse(403, "comes from another site.", "use the page of this server."));
        }
        if (!METHODS.contains(exchange.getRequestMethod())) {
            return Optional.of(Reply.refuse(405, "uses a method that is not served.", "GET or POST."));
        }
        String type = Optional.ofNullable(headers.getFirst("Content-Type")).orElse("");
        if (exchange.getRequestMethod().equals("POST")
                && !type.split(";")[0].strip().equals("application/json")) {
            return Optional.of(Reply.refuse(415, "is not sent as JSON.", "the header Content-Type: application/json."));
        }
        return Optional.empty();
    }
}
