package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.comments.CommentType;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/** A task between the page, which holds it as a tree of words, and the file that a person keeps. */
final class TaskText {
    private static final int WIDTH = 120;
    private static final int DEEPEST = 20;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private TaskText() {}

    /** The text of the task under a name of the request: written as it came, or as a tree. */
    static String of(JsonNode asked, String name) {
        JsonNode task = asked.path(name);
        if (task.isTextual()) {
            return task.textValue();
        }
        if (task.isObject()) {
            return task.toString();
        }
        throw new InputException(new Problem("request", 0, name, "holds no task.", "reload the page."));
    }

    /** True when a file holds notes behind {@code #}, which its tree does not carry. */
    static boolean hasComments(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setProcessComments(true);
        for (Event event : new Yaml(options).parse(new StringReader(text))) {
            if (event instanceof CommentEvent comment && comment.getCommentType() != CommentType.BLANK_LINE) {
                return true;
            }
        }
        return false;
    }

    /** The tree of a parsed file: every single value is a word. */
    static JsonNode tree(Located place) {
        return tree(place, 0);
    }

    private static JsonNode tree(Located place, int depth) {
        if (place.isMap() && depth < DEEPEST) {
            ObjectNode map = NODES.objectNode();
            place.entries().forEach((name, entry) -> map.set(name, tree(entry, depth + 1)));
            return map;
        }
        if (place.isList() && depth < DEEPEST) {
            ArrayNode list = NODES.arrayNode();
            place.items().forEach(item -> list.add(tree(item, depth + 1)));
            return list;
        }
        return place.isNull() ? NODES.nullNode() : NODES.textNode(place.text());
    }

    /** The file of a tree, in YAML as people write it: plain words where YAML reads them back as the same word. */
    static String yaml(JsonNode tree) {
        DumperOptions options = new DumperOptions();
        options.setWidth(WIDTH);
        options.setAllowUnicode(true);
        options.setSplitLines(false);
        StringWriter out = new StringWriter();
        new Yaml(options).serialize(node(tree, 0), out);
        return out.toString();
    }

    private static Node node(JsonNode tree, int depth) {
        if (depth > DEEPEST) {
            throw new InputException(
                    new Problem("task", 0, "", "is nested too deeply.", "a task as the page makes it."));
        }
        if (tree.isObject()) {
            List<NodeTuple> tuples = new ArrayList<>();
            for (Map.Entry<String, JsonNode> entry : tree.properties()) {
                tuples.add(new NodeTuple(scalar(entry.getKey()), node(entry.getValue(), depth + 1)));
            }
            return new MappingNode(Tag.MAP, true, tuples, null, null, FlowStyle.BLOCK);
        }
        if (tree.isArray()) {
            List<Node> items = new ArrayList<>();
            tree.forEach(item -> items.add(node(item, depth + 1)));
            boolean words = items.stream().allMatch(ScalarNode.class::isInstance);
            return new SequenceNode(Tag.SEQ, true, items, null, null, words ? FlowStyle.FLOW : FlowStyle.BLOCK);
        }
        return tree.isNull() ? new ScalarNode(Tag.NULL, "null", null, null, ScalarStyle.PLAIN) : scalar(tree.asText());
    }

    private static ScalarNode scalar(String text) {
        Tag plain = new Resolver().resolve(org.yaml.snakeyaml.nodes.NodeId.scalar, text, true);
        boolean asItStands = plain.equals(Tag.BOOL) || plain.equals(Tag.TIMESTAMP);
        return new ScalarNode(asItStands ? plain : Tag.STR, text, null, null, ScalarStyle.PLAIN);
    }
}
