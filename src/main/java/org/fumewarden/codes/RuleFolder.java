package org.fumewarden.codes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.yaml.snakeyaml.nodes.Node;

/** The files of a rule base, from a folder on disk or from inside the program. Safe to share between threads. */
public final class RuleFolder {
    /** Name of the file in which an organisation types its own values a second time. */
    public static final String TYPED = "typed-apart.csv";

    private static final RuleFolder SHIPPED = new RuleFolder("rules", true, ShippedRuleBase.names());

    private final String origin;
    private final boolean shipped;
    private final List<String> names;
    private final Map<String, byte[]> read = new ConcurrentHashMap<>();
    private final Map<String, byte[]> besides = new TreeMap<>();
    private final Map<String, Map<String, Node>> parsed = new ConcurrentHashMap<>();
    private final Map<String, Node> own = new ConcurrentHashMap<>();

    private RuleFolder(String origin, boolean shipped, List<String> names) {
        this.origin = origin;
        this.shipped = shipped;
        this.names = names;
    }

    /** The rule base that ships with the program. */
    public static RuleFolder shipped() {
        return SHIPPED;
    }

    /** A rule base that somebody edits, as it is now. */
    public static RuleFolder at(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(new Problem(
                    folder.toString(), 0, "", "is not a folder.", "name the folder that holds shared and the codes."));
        }
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(RuleFolder::belongs).toList()) {
                files.put(folder.relativize(path).toString().replace('\\', '/'), YamlFiles.bytes(path));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        RuleFolder rules = new RuleFolder(folder.toString(), false, List.copyOf(files.keySet()));
        rules.read.putAll(files);
        for (String name : List.of(Affirmations.FILE, TYPED)) {
            Path file = folder.toAbsolutePath().normalize().resolveSibling(name);
            if (Files.isRegularFile(file)) {
                rules.besides.put(name, YamlFiles.bytes(file));
            }
        }
        return rules;
    }

    /** A rule base of files that were read already. */
    public static RuleFolder of(String origin, Map<String, byte[]> files) {
        RuleFolder rules = new RuleFolder(origin, false, List.copyOf(new TreeMap<>(files).keySet()));
        rules.read.putAll(files);
        return rules;
    }

    /** The files of some of its folders. */
    public RuleFolder only(List<String> parts) {
        return only(name -> parts.contains(name.substring(0, Math.max(0, name.indexOf('/')))));
    }

    /** The files but for those that problems name. */
    public RuleFolder without(Collection<Problem> problems) {
        Set<String> files = problems.stream().map(Problem::file).collect(Collectors.toSet());
        return only(name -> !files.contains(origin + "/" + name));
    }

    /** The tables that the program ships under the same name and with other bytes. */
    RuleFolder edited() {
        return only(name -> name.contains("/tables/") && SHIPPED.names.contains(name) && !isShipped(name));
    }

    /** The files that stand under the names of another folder. */
    RuleFolder like(RuleFolder other) {
        return only(other.names::contains);
    }

    /** True when it has the files of the program in some folders, and no other there. */
    public boolean isLikeShipped(List<String> parts) {
        List<String> own = only(parts).names;
        return own.equals(SHIPPED.only(parts).names) && own.stream().allMatch(this::isShipped);
    }

    /** Where it lies, when somebody changed what it has in some folders; empty for the files of the program. */
    public Optional<String> changed(List<String> parts) {
        return shipped || isLikeShipped(parts) ? Optional.empty() : Optional.of(origin);
    }

    private RuleFolder only(Predicate<String> some) {
        RuleFolder rules =
                new RuleFolder(origin, shipped, names.stream().filter(some).toList());
        rules.read.putAll(read);
        rules.besides.putAll(besides);
        return rules;
    }

    private static boolean belongs(Path path) {
        String name = path.toString();
        return Files.isRegularFile(path) && (name.endsWith(".yaml") || name.endsWith(".drl"));
    }

    /** True for the files inside the program, which stay as they are while it runs. */
    public boolean isShipped() {
        return shipped;
    }

    /** Where the files come from, for messages. */
    public String origin() {
        return origin;
    }

    /** The bytes of every file by relative path, sorted. */
    public Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        names.forEach(name -> files.put(name, bytes(name)));
        return files;
    }

    private byte[] bytes(String name) {
        return read.computeIfAbsent(name, ShippedRuleBase::bytes);
    }

    /** True when the program ships the file under this name, byte for byte. */
    public boolean isShipped(String name) {
        return SHIPPED.names.contains(name) && Arrays.equals(bytes(name), SHIPPED.bytes(name));
    }

    /** Relative paths that begin and end as given, sorted. */
    public List<String> names(String start, String end) {
        return names.stream()
                .filter(n -> n.startsWith(start) && n.endsWith(end))
                .toList();
    }

    /** The text of a file. */
    public String text(String name) {
        return YamlFiles.text(origin + "/" + name, bytes(name));
    }

    /** A file that an organisation keeps beside the folder of rules; empty when there is none, or no folder. */
    Optional<Located> beside(String name) {
        return Optional.ofNullable(besides.get(name)).map(bytes -> YamlFiles.parse(name, YamlFiles.text(name, bytes)));
    }

    /** The bytes of a file beside the folder of rules. */
    public Optional<byte[]> bytesBeside(String name) {
        return Optional.ofNullable(besides.get(name));
    }

    /** A YAML file, parsed once. */
    public Located located(String name) {
        String file = origin + "/" + name;
        Node node = shippedNode(name)
                .orElseGet(() -> own.computeIfAbsent(
                        name, n -> YamlFiles.parse(file, text(n)).node()));
        return new Located(file, "", node, new ArrayList<>());
    }

    private Optional<Node> shippedNode(String name) {
        String part = name.substring(0, name.indexOf('/'));
        return shipped
                ? Optional.ofNullable(
                        parsed.computeIfAbsent(part, ShippedRuleBase::parsed).get(name))
                : Optional.empty();
    }

    /** The revision of the files that decide advice under one code: those of the given folders. */
    String revision(List<String> parts) {
        if (shipped) {
            return ShippedRuleBase.revision(parts).orElseGet(() -> Revision.of(files(), parts));
        }
        Map<String, byte[]> files = files();
        List<String> all = new ArrayList<>(parts);
        bytesBeside(Affirmations.FILE).ifPresent(bytes -> {
            files.put(Affirmations.FILE, bytes);
            all.add(Affirmations.FILE);
        });
        return Revision.of(files, all);
    }

    /** The folders of this rule base: shared, the codes, and those that codes borrow. */
    public List<String> folders() {
        return names.stream()
                .filter(n -> n.indexOf('/') > 0)
                .map(n -> n.substring(0, n.indexOf('/')))
                .distinct()
                .toList();
    }

    /** That no code is here to be chosen. */
    public Problem codeless() {
        return new Problem(
                origin,
                0,
                "",
                "holds no code: no folder in it has a code.yaml.",
                "name the folder that holds shared and a folder for each code.");
    }

    /** Ids of the codes that can be chosen: the folders that hold a code.yaml. Others are there to be borrowed. */
    public List<String> codes() {
        return names.stream()
                .filter(n -> n.endsWith("/code.yaml") && n.indexOf('/') == n.lastIndexOf('/'))
                .map(n -> n.substring(0, n.indexOf('/')))
                .toList();
    }
}
