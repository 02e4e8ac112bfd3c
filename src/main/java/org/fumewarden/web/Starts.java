package org.fumewarden.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.task.TaskTree;

/** The tasks that a person may start from. */
final class Starts {
    static final List<String> NAMES = List.of(
            "bench-stainless", "bench-mild-steel", "aluminium-tig", "galvanised-rail", "double-bottom", "plasma-table");

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Starts() {}

    static String text(String name) {
        String file = "starts/" + name + ".yaml";
        return YamlFiles.text(file, PageFiles.bytes(file));
    }

    static ObjectNode json() {
        ObjectNode root = NODES.objectNode();
        ArrayNode list = root.putArray("starts");
        for (String name : NAMES) {
            Located tree = TaskTree.parse(name, text(name));
            ObjectNode each = list.addObject();
            each.put("id", name);
            each.put("title", TaskTree.top(tree, "title").orElse(name));
            each.set("task", TaskText.tree(tree));
        }
        return root;
    }
}
