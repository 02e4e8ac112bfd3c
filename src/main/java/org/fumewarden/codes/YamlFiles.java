package org.fumewarden.codes;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** Reads YAML, and JSON as the part of YAML that it is, without building anything but plain values. */
public final class YamlFiles {
    /** Largest file that is read: no task or table comes near it. */
    public static final long MAX_BYTES = 2_000_000;

    private static final int MAX_DEPTH = 30;
    private static final int MAX_ALIASES = 20;

    private YamlFiles() {}

    /** Reads a file from disk. */
    public static Located read(Path path) {
        String name = path.toString();
        return parse(name, text(name, bytes(path)));
    }

    /** Bytes of a file, or the reason why it cannot be read. */
    public static byte[] bytes(Path path) {
        return bytes(path, MAX_BYTES);
    }

    /** Bytes of a file of at most the given size, or the reason why it cannot be read. */
    public static byte[] bytes(Path path, long largest) {
        String name = path.toString();
        try {
            if (Files.isDirectory(path)) {
                throw new InputException(
                        new Problem(name, 0, "", "is a folder, not a file.", "name a file inside it."));
            }
            long size = Files.size(path);
            if (size > largest) {
                throw new InputException(new Problem(
                        name,
                        0,
                        "",
                        "has " + size + " bytes; at most " + largest + " are read.",
                        "it is another kind of file."));
            }
            return Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            throw new InputException(new Problem(name, 0, "", "does not exist.", "check the spelling of the path."));
        } catch (IOException e) {
            throw new InputException(
                    new Problem(name, 0, "", "cannot be read (" + e.getMessage() + ").", "check its permissions."));
        }
    }

    /** Decodes strict UTF-8. */
    public static String text(String name, byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            CharBuffer out = CharBuffer.allocate(bytes.length);
            CoderResult end = StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
            if (end.isError()) {
                end.throwException();
            }
            String text = out.flip().toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            throw new InputException(new Problem(
                    name,
                    line,
                    "",
                    "is not UTF-8 text: a letter of this line was saved in another way.",
                    "save it as UTF-8."));
        }
    }

    /** Parses the text of a file. */
    public static Located parse(String name, String text) {
        try {
            Node node = compose(name, jsonTabs(text));
            if (node == null) {
                throw new InputException(new Problem(name, 0, "", "is empty.", "begin with a line \"title: ...\"."));
            }
            return new Located(name, "", node, new ArrayList<>());
        } catch (MarkedYAMLException e) {
            int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
            boolean json = name.endsWith(".json");
            if (String.valueOf(e.getProblem()).contains("TAB")) {
                throw new InputException(new Problem(
                        name, line, "", "is indented by a tab.", "use spaces in its place, two for each step."));
            }
            throw new InputException(new Problem(
                    name,
                    line,
                    "",
                    "is not " + (json ? "JSON: " : "YAML: ") + e.getProblem() + ".",
                    "check the " + (json ? "comma, the bracket" : "indent, the colon")
                            + " and the quotes on this line and the one before."));
        } catch (YAMLException | StackOverflowError e) {
            throw new InputException(new Problem(
                    name, 0, "", "is not YAML that can be read here.", "nest it less, or check for stray characters."));
        }
    }

    /** The tree without the part of the library that would make objects of it, which is slow to load and not wanted. */
    private static Node compose(String name, String text) {
        LoaderOptions options = options();
        // Parts of one tree may come from several files: each keeps the name of its own.
        StreamReader named = new StreamReader(text) {
            @Override
            public Mark getMark() {
                Mark mark = super.getMark();
                return new Mark(
                        name, mark.getIndex(), mark.getLine(), mark.getColumn(), mark.getBuffer(), mark.getPointer());
            }
        };
        ParserImpl parser = new ParserImpl(named, options);
        return new Composer(parser, new Resolver(), options).getSingleNode();
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(MAX_DEPTH);
        options.setMaxAliasesForCollections(MAX_ALIASES);
        options.setCodePointLimit((int) MAX_BYTES);
        return options;
    }

    /** JSON may be indented with tabs, YAML may not; a raw tab never stands inside a JSON string. */
    private static String jsonTabs(String text) {
        return text.stripLeading().startsWith("{") ? text.replace('\t', ' ') : text;
    }
}
