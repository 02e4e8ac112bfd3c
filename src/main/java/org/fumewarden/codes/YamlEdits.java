package org.fumewarden.codes;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** Sets single values in a parsed file, for near misses and what-if questions. */
public final class YamlEdits {
    /** The list of a task whose items are named by their agent; a task may do without it. */
    private static final String EXPOSURES = "exposures";

    private YamlEdits() {}

    /**
     * Sets the value at a path such as {@code wearer.facial-hair} or {@code exposures.manganese-respirable.twa}. Items of a list
     * are named by their number from 0 or by their agent. Names and agents that are missing on the way are made.
     *
     * @return false when the path leads through a single value or to an item that is not there
     */
    public static boolean set(Located root, String path, Located value) {
        Node at = root.node();
        String[] steps = path.split("\\.");
        for (int i = 0; i < steps.length - 1; i++) {
            at = step(at, steps[i], value);
            if (at == null) {
                return false;
            }
        }
        return put(at, steps[steps.length - 1], value.node());
    }

    private static Node step(Node at, String name, Located like) {
        if (at instanceof SequenceNode list) {
            int index = index(list, name);
            return index < 0 ? append(list, name, like) : list.getValue().get(index);
        }
        if (!(at instanceof MappingNode map)) {
            return null;
        }
        for (NodeTuple tuple : map.getValue()) {
            if (named(tuple, name)) {
                return tuple.getValueNode();
            }
        }
        Node made = name.equals(EXPOSURES)
                ? new SequenceNode(
                        Tag.SEQ,
                        true,
                        new ArrayList<>(),
                        like.node().getStartMark(),
                        like.node().getEndMark(),
                        DumperOptions.FlowStyle.BLOCK)
                : new MappingNode(
                        Tag.MAP,
                        true,
                        new ArrayList<>(),
                        like.node().getStartMark(),
                        like.node().getEndMark(),
                        DumperOptions.FlowStyle.BLOCK);
        put(map, name, made);
        return made;
    }

    /** A new entry for an agent that the list does not hold yet; a number names no new entry. */
    private static Node append(SequenceNode list, String agent, Located like) {
        if (agent.chars().allMatch(Character::isDigit)) {
            return null;
        }
        Node start = like.node();
        MappingNode made = new MappingNode(
                Tag.MAP,
                true,
                new ArrayList<>(),
                start.getStartMark(),
                start.getEndMark(),
                DumperOptions.FlowStyle.BLOCK);
        put(
                made,
                "agent",
                new ScalarNode(
                        Tag.STR, agent, start.getStartMark(), start.getEndMark(), DumperOptions.ScalarStyle.PLAIN));
        list.getValue().add(made);
        return made;
    }

    private static boolean put(Node at, String name, Node value) {
        if (at instanceof SequenceNode list) {
            int index = index(list, name);
            if (index < 0) {
                return false;
            }
            list.getValue().set(index, value);
            return true;
        }
        if (!(at instanceof MappingNode map)) {
            return false;
        }
        List<NodeTuple> tuples = new ArrayList<>(map.getValue());
        tuples.removeIf(t -> named(t, name));
        ScalarNode key = new ScalarNode(
                Tag.STR, name, value.getStartMark(), value.getEndMark(), DumperOptions.ScalarStyle.PLAIN);
        tuples.add(new NodeTuple(key, value));
        map.setValue(tuples);
        return true;
    }

    private static int index(SequenceNode list, String name) {
        for (int i = 0; i < list.getValue().size(); i++) {
            boolean agent = list.getValue().get(i) instanceof MappingNode map
                    && map.getValue().stream()
                            .anyMatch(t -> named(t, "agent")
                                    && t.getValueNode() instanceof ScalarNode s
                                    && s.getValue().equals(name));
            if (agent || name.equals(Integer.toString(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean named(NodeTuple tuple, String name) {
        return tuple.getKeyNode() instanceof ScalarNode key && key.getValue().equals(name);
    }
}
