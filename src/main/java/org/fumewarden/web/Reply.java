package org.fumewarden.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.fumewarden.codes.Fault;
import org.fumewarden.codes.Problem;
import org.fumewarden.model.Sha256;

/**
 * What goes back to the page.
 *
 * @param policy content security policy of this reply
 * @param file name under which a browser keeps it; empty when it is shown
 */
record Reply(int status, String type, byte[] body, String policy, Optional<String> file) {
    /** The page may run its own scripts and styles and talk to its own server: nothing else, and nothing inline. */
    static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "connect-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Reply(int status, String type, byte[] body, String policy) {
        this(status, type, body, policy, Optional.empty());
    }

    static Reply of(String type, byte[] body) {
        return new Reply(200, type, body, PAGE_POLICY);
    }

    static Reply text(String text) {
        return text(200, text);
    }

    static Reply text(int status, String text) {
        return new Reply(status, "text/plain; charset=utf-8", text.getBytes(StandardCharsets.UTF_8), PAGE_POLICY);
    }

    /** A file to keep. */
    static Reply file(String name, String type, String text) {
        return new Reply(200, type, text.getBytes(StandardCharsets.UTF_8), PAGE_POLICY, Optional.of(name));
    }

    /** A sheet with one style of its own inside: that style may apply, and nothing else. */
    static Reply styled(String html) {
        int start = html.indexOf("<style>") + "<style>".length();
        String style = html.substring(start, html.indexOf("</style>", start));
        String policy = "default-src 'none'; style-src 'sha256-"
                + Base64.getEncoder().encodeToString(Sha256.of(style.getBytes(StandardCharsets.UTF_8)))
                + "'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
        return new Reply(200, "text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8), policy);
    }

    static Reply json(String json) {
        return of("application/json", json.getBytes(StandardCharsets.UTF_8));
    }

    static Reply json(JsonNode node) {
        return json(200, node);
    }

    static Reply json(int status, JsonNode node) {
        try {
            return new Reply(status, "application/json", MAPPER.writeValueAsBytes(node), PAGE_POLICY);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A request that cannot be served, in one sentence with what would do. */
    static Reply refuse(int status, String message, String maybe) {
        return problems(status, List.of(new Problem("request", 0, "", message, maybe)));
    }

    /** A request that the server had no time for. */
    static Reply busy(String message, String maybe) {
        return problems(503, List.of(new Problem("request", 0, "", message, maybe, Fault.SLOW)));
    }

    /** Everything wrong with a task, field by field. */
    static Reply problems(int status, List<Problem> problems) {
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("problems");
        for (Problem problem : problems) {
            ObjectNode node = list.addObject();
            node.put("file", problem.file());
            node.put("line", problem.line());
            node.put("field", problem.field());
            node.put("message", problem.message());
            node.put("given", problem.given());
            problem.ready().forEach(node.putArray("ready")::add);
            node.put("fault", problem.fault().key());
        }
        return json(status, root);
    }
}
