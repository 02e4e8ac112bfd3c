package org.fumewarden.codes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeParseException;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** A place in a YAML or JSON file: its value, the path that leads to it and the line it stands on. */
public final class Located {
    /** No answer and no reason comes near it. */
    private static final int LONGEST = 10_000;

    private static final Pattern DAY = Pattern.compile("(\\d{4})-(0[1-9]|1[0-2])-(\\d{2})");

    private final String file;
    private final String path;
    private final Node node;
    private final List<Problem> problems;
    private final int line;

    Located(String file, String path, Node node, List<Problem> problems) {
        this(file, path, node, problems, node);
    }

    /** A place that begins where its name stands, which may be lines above its value. */
    private Located(String file, String path, Node node, List<Problem> problems, Node start) {
        String own = start.getStartMark().getName();
        this.file = own.isEmpty() ? file : own;
        this.path = path;
        this.node = node;
        this.problems = problems;
        this.line = start.getStartMark().getLine() + 1;
    }

    public String file() {
        return file;
    }

    public String path() {
        return path;
    }

    Node node() {
        return node;
    }

    public int line() {
        return line;
    }

    /** Everything found wrong so far in the whole file, in the order it was found. */
    public List<Problem> problems() {
        return problems;
    }

    /** Notes that this place is wrong. */
    public void complain(String message, String maybe) {
        complain(Fault.OTHER, message, maybe);
    }

    /** Notes that this place is wrong, and in which way. */
    public void complain(Fault fault, String message, String maybe) {
        complain(fault, message, maybe, List.of());
    }

    /**
     * Notes that this place is wrong, and in which way.
     *
     * @param ready words that would do in its place
     */
    public void complain(Fault fault, String message, String maybe, List<String> ready) {
        String given = node instanceof ScalarNode scalar ? shown(scalar.getValue()) : "";
        problems.add(new Problem(file, line(), path, message, maybe, fault, given, ready));
    }

    /** That this place is wrong. */
    public Problem problem(String message, String maybe) {
        return new Problem(file, line(), path, message, maybe);
    }

    /** Stops when anything was found wrong. */
    public void settle() {
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    public boolean isMap() {
        return node instanceof MappingNode;
    }

    public boolean isList() {
        return node instanceof SequenceNode;
    }

    public boolean isScalar() {
        return node instanceof ScalarNode;
    }

    public boolean isNull() {
        return node instanceof ScalarNode && node.getTag().equals(Tag.NULL);
    }

    /** The entries of a map in file order; a complaint and nothing when this is no map. */
    public Map<String, Located> entries() {
        Map<String, Located> entries = new LinkedHashMap<>();
        if (!(node instanceof MappingNode map)) {
            complain(
                    Fault.AMOUNT,
                    "must be a set of \"name: value\" lines but is " + kind() + ".",
                    "indent its entries below it.");
            return entries;
        }
        for (NodeTuple tuple : map.getValue()) {
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                complain("has a name that is not a word.", "quote the name.");
                continue;
            }
            String name = key.getValue();
            String below = path.isEmpty() ? name : path + "." + name;
            Located entry = new Located(file, below, tuple.getValueNode(), problems, key);
            if (entries.putIfAbsent(name, entry) != null) {
                entry.complain(Fault.TWICE, "is given twice.", "keep one of the two.");
            }
        }
        return entries;
    }

    /** The entries of a map, with a complaint for every name that is not expected. */
    public Map<String, Located> entries(Set<String> expected) {
        Map<String, Located> entries = entries();
        entries.forEach((name, entry) -> {
            if (!expected.contains(name)) {
                entry.unexpected(name, Nearest.remedy(name, expected));
            }
        });
        return entries;
    }

    /** Complains about a name that is not expected: a figure that begins with digits was parted by its decimal comma. */
    public void unexpected(String name, String remedy) {
        if (name.matches("[0-9].*")) {
            complain(
                    "stands behind a comma and is no name: \"" + shown(name) + "\".",
                    "a decimal comma parts two entries here. Use a decimal point.");
        } else {
            complain(Fault.NAME, "is not a name used here.", remedy);
        }
    }

    /** The items of a list; a complaint and nothing when this is no list. */
    public List<Located> items() {
        List<Located> items = new ArrayList<>();
        if (!(node instanceof SequenceNode sequence)) {
            complain(Fault.AMOUNT, "must be a list but is " + kind() + ".", "start each item with \"- \".");
            return items;
        }
        for (Node item : sequence.getValue()) {
            items.add(new Located(file, path + "." + items.size(), item, problems));
        }
        return items;
    }

    /** The plain words of this place; empty text with a complaint when it holds a map or a list. */
    public String text() {
        if (node instanceof ScalarNode scalar && !isNull()) {
            if (scalar.getValue().length() > LONGEST) {
                complain(
                        "has " + scalar.getValue().length() + " characters; at most " + LONGEST + " are read.",
                        "keep long papers beside the file and name them here.");
                return "";
            }
            String text = scalar.getValue().replace('\u00a0', ' ').strip();
            Hidden.first(text)
                    .ifPresent(hidden -> complain(
                            "holds a character that is not seen or moves the text, " + hidden + ".",
                            "type the words anew, in one line, with letters, digits and signs that are seen."));
            return text;
        }
        complain(
                Fault.AMOUNT,
                "must be a single value but is " + kind() + ".",
                "write one word or number, or \"unknown\".");
        return "";
    }

    /** True when the value stands in quotes, so that it is a word whatever it looks like. */
    public boolean quoted() {
        return node instanceof ScalarNode scalar && !scalar.isPlain();
    }

    /** The value as a decimal number. */
    public Optional<BigDecimal> decimal() {
        String text = text();
        try {
            return Optional.of(Numbers.decimal(text));
        } catch (NumberFormatException e) {
            complain(
                    Fault.AMOUNT,
                    "must be a number but is \"" + shown(text) + "\".",
                    "write it with digits and a point, such as 0.5.");
            return Optional.empty();
        }
    }

    /** The value as a calendar day. */
    public Optional<LocalDate> day() {
        String text = text();
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            complain(
                    Fault.DAY,
                    "must be a day but is \"" + shown(text) + "\".",
                    noSuchDay(text).orElse("write it as year-month-day, such as 2026-03-02."));
            return Optional.empty();
        }
    }

    /** That a month has no such day, of a day that is well written. */
    public static Optional<String> noSuchDay(String text) {
        Matcher day = DAY.matcher(text);
        return day.matches()
                ? Optional.of(Month.of(Integer.parseInt(day.group(2))).getDisplayName(TextStyle.FULL, Locale.UK) + " "
                        + day.group(1) + " has no day " + Integer.parseInt(day.group(3)) + ".")
                : Optional.empty();
    }

    /** One of the allowed words. */
    public Optional<String> oneOf(Set<String> allowed) {
        return oneOf(allowed, Nearest::remedy);
    }

    /** One of the allowed words, with what would do for another one. */
    public Optional<String> oneOf(Set<String> allowed, BiFunction<String, Set<String>, String> remedy) {
        String text = text();
        if (allowed.contains(text)) {
            return Optional.of(text);
        }
        complain(Fault.CHOICE, "cannot be \"" + shown(text) + "\".", remedy.apply(text, allowed));
        return Optional.empty();
    }

    /** The whole place as plain maps, lists and words, in file order; empty values are left out. */
    public Object plain() {
        if (isMap()) {
            Map<String, Object> map = new LinkedHashMap<>();
            entries().forEach((name, entry) -> {
                if (!entry.isNull()) {
                    map.put(name, entry.plain());
                }
            });
            return map;
        }
        return isList() ? items().stream().map(Located::plain).toList() : text();
    }

    /** A list of words, or one word standing for a list of one. */
    public List<String> words() {
        if (isList()) {
            return items().stream().map(Located::text).toList();
        }
        return List.of(text());
    }

    /** A value cut to a length that is safe to print, with characters that are not seen shown by their number. */
    public static String shown(String text) {
        return StringUtils.abbreviate(Hidden.shown(text.replaceAll("\\p{Cntrl}", " ")), 60);
    }

    private String kind() {
        if (node instanceof MappingNode) {
            return "a set of names";
        }
        if (node instanceof SequenceNode) {
            return "a list";
        }
        return isNull() ? "empty" : "a single value";
    }
}
