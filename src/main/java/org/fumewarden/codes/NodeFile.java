package org.fumewarden.codes;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * Parsed YAML files as bytes that load faster than text: the words once each, then the trees, with the lines that the
 * words stand on. Written at build, read by the program of the same build, so it carries no version.
 */
final class NodeFile {
    private static final byte EMPTY = 0;
    private static final byte PLAIN = 1;
    private static final byte QUOTED = 2;
    private static final byte LIST = 3;
    private static final byte MAP = 4;

    private NodeFile() {}

    /** The bytes of parsed files by name. */
    static byte[] write(Map<String, Node> files) {
        Map<String, Integer> words = new LinkedHashMap<>();
        files.forEach((name, node) -> {
            index(name, words);
            gather(node, words);
        });
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(words.size());
            for (String word : words.keySet()) {
                out.writeUTF(word);
            }
            out.writeInt(files.size());
            for (Map.Entry<String, Node> file : files.entrySet()) {
                out.writeInt(words.get(file.getKey()));
                write(file.getValue(), words, out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void gather(Node node, Map<String, Integer> words) {
        if (node instanceof ScalarNode scalar) {
            index(scalar.getValue(), words);
        } else if (node instanceof SequenceNode list) {
            list.getValue().forEach(item -> gather(item, words));
        } else if (node instanceof MappingNode map) {
            map.getValue().forEach(entry -> {
                gather(entry.getKeyNode(), words);
                gather(entry.getValueNode(), words);
            });
        }
    }

    private static void index(String word, Map<String, Integer> words) {
        words.putIfAbsent(word, words.size());
    }

    private static void write(Node node, Map<String, Integer> words, DataOutputStream out) throws IOException {
        if (node instanceof ScalarNode scalar) {
            out.writeByte(scalar.getTag().equals(Tag.NULL) ? EMPTY : scalar.isPlain() ? PLAIN : QUOTED);
            out.writeShort(node.getStartMark().getLine());
            out.writeInt(words.get(scalar.getValue()));
        } else if (node instanceof SequenceNode list) {
            out.writeByte(LIST);
            out.writeShort(node.getStartMark().getLine());
            out.writeInt(list.getValue().size());
            for (Node item : list.getValue()) {
                write(item, words, out);
            }
        } else if (node instanceof MappingNode map) {
            out.writeByte(MAP);
            out.writeShort(node.getStartMark().getLine());
            out.writeInt(map.getValue().size());
            for (NodeTuple entry : map.getValue()) {
                write(entry.getKeyNode(), words, out);
                write(entry.getValueNode(), words, out);
            }
        } else {
            throw new IllegalStateException("a node of an unknown kind: " + node);
        }
    }

    /** The parsed files by name. */
    static Map<String, Node> read(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            String[] words = new String[in.readInt()];
            for (int i = 0; i < words.length; i++) {
                words[i] = in.readUTF();
            }
            Map<String, Node> files = new LinkedHashMap<>();
            for (int left = in.readInt(); left > 0; left--) {
                String name = words[in.readInt()];
                files.put(name, node(in, words));
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Node node(DataInputStream in, String[] words) throws IOException {
        byte kind = in.readByte();
        Mark mark = new Mark("", 0, in.readUnsignedShort(), 0, new int[0], 0);
        int number = in.readInt();
        if (kind == LIST) {
            List<Node> items = new ArrayList<>(number);
            for (int i = 0; i < number; i++) {
                items.add(node(in, words));
            }
            return new SequenceNode(Tag.SEQ, true, items, mark, mark, FlowStyle.BLOCK);
        }
        if (kind == MAP) {
            List<NodeTuple> entries = new ArrayList<>(number);
            for (int i = 0; i < number; i++) {
                entries.add(new NodeTuple(node(in, words), node(in, words)));
            }
            return new MappingNode(Tag.MAP, true, entries, mark, mark, FlowStyle.BLOCK);
        }
        ScalarStyle style = kind == QUOTED ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN;
        return new ScalarNode(kind == EMPTY ? Tag.NULL : Tag.STR, words[number], mark, mark, style);
    }
}
