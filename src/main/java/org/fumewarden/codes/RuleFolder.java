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
import org.apache.commons.lang3.StringUtils;
import org.yaml.snakeyaml.nodes.Node;

/** The files of a rule base, from a folder on disk or from inside the program. Safe to share between threads. */
public final class RuleFolder {
    /** Name of the file in which an organisation types its own values a second time. */
    public static final String TYPED = "typed-apart.csv";
    /** Before the names, in an archive and in what is hashed, of files that lay beside the folder. */
    private static final String BESIDE = "+beside/";
    /** Before the names of the tables that the program had in place of those of the folder. */
    private static final String PROGRAM = "+program/";

    private static final byte[] NOTHING = {'{', '}'};
    private static final RuleFolder SHIPPED = new RuleFolder("rules", RulePlace.INSIDE, ShippedRuleBase.names());

    private final String origin;
    private final RulePlace place;
    private final List<String> names;
    private final Map<String, byte[]> read = new ConcurrentHashMap<>();
    private final Map<String, byte[]> besides = new TreeMap<>();
    private final Map<String, Map<String, Node>> parsed = new ConcurrentHashMap<>();
    private final Map<String, Node> own = new ConcurrentHashMap<>();

    private RuleFolder(String origin, RulePlace place, List<String> names) {
        this.origin = origin;
        this.place = place;
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
        RuleFolder rules = of(folder.toString(), files);
        for (String name : List.of(Affirmations.FILE, TYPED)) {
            Path file = folder.toAbsolutePath().normalize().resolveSibling(name);
            if (Files.isRegularFile(file)) {
                rules.besides.put(BESIDE + name, YamlFiles.bytes(file));
            }
        }
        return rules;
    }

    /** A rule base of files that were read already. */
    public static RuleFolder of(String origin, Map<String, byte[]> files) {
        return of(origin, RulePlace.FOLDER, files);
    }

    private static RuleFolder of(String origin, RulePlace place, Map<String, byte[]> files) {
        Map<String, byte[]> own = new TreeMap<>(files);
        own.keySet().removeIf(name -> name.startsWith("+"));
        RuleFolder rules = new RuleFolder(origin, place, List.copyOf(own.keySet()));
        rules.read.putAll(own);
        rules.besides.putAll(files);
        rules.besides.keySet().removeAll(own.keySet());
        return rules;
    }

    /**
     * A rule base of {@link #kept} files.
     *
     * @param edited true when they were not those of the program that kept them
     */
    public static RuleFolder ofKept(String origin, Map<String, byte[]> files, boolean edited) {
        boolean whole = files.keySet().stream().anyMatch(name -> name.startsWith("+"));
        return of(origin, whole || !edited ? RulePlace.ARCHIVE : RulePlace.BEFORE, files);
    }

    /** True when what lay beside the files may be missing, since programs left it out then. */
    public boolean isBefore() {
        return place == RulePlace.BEFORE;
    }

    /** The files of some of its folders and all that decides beside them, to be kept. */
    public Map<String, byte[]> kept(List<String> parts) {
        Map<String, byte[]> all = only(parts).files();
        Map<String, byte[]> besides = besides(parts);
        if (place == RulePlace.FOLDER && !(besides.isEmpty() && isLikeShipped(parts))) {
            all.put(PROGRAM + "tables.yaml", new byte[0]);
        }
        all.putAll(besides);
        return all;
    }

    /** The same folder under the revision that programs gave it which left out what lay beside it. */
    public RuleFolder asBefore() {
        return as(RulePlace.BEFORE, names);
    }

    /** By name, what decides beside its files: what lies beside the folder, and what the program has in place of its tables. */
    private Map<String, byte[]> besides(List<String> parts) {
        Map<String, byte[]> all = new TreeMap<>(besides);
        all.remove(PROGRAM + "tables.yaml");
        if (place == RulePlace.FOLDER) {
            program().only(parts).files().forEach((name, bytes) -> all.put(PROGRAM + name, bytes));
        }
        return all;
    }

    /** The files of the program under the names of those that somebody changed; nothing in that of one added to its folders. */
    public RuleFolder program() {
        Map<String, byte[]> files = new TreeMap<>();
        if (place == RulePlace.ARCHIVE) {
            besides.keySet().stream()
                    .filter(name -> name.startsWith(PROGRAM))
                    .forEach(name -> files.put(name.substring(PROGRAM.length()), besides.get(name)));
        } else {
            for (String name : only(SHIPPED.folders()).only(n -> !isShipped(n)).names) {
                files.put(name, SHIPPED.names.contains(name) ? SHIPPED.bytes(name) : NOTHING);
            }
        }
        return of(SHIPPED.origin, RulePlace.ARCHIVE, files);
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

    /** The files that stand under the names of another folder. */
    public RuleFolder like(RuleFolder other) {
        return only(other.names::contains);
    }

    /** True when it has the files of the program in some folders, and no other there. */
    public boolean isLikeShipped(List<String> parts) {
        List<String> own = only(parts).names;
        return own.equals(SHIPPED.only(parts).names) && own.stream().allMatch(this::isShipped);
    }

    /** Where it lies, when somebody changed what it has in some folders; empty for the files of the program. */
    public Optional<String> changed(List<String> parts) {
        return isShipped() || isLikeShipped(parts) ? Optional.empty() : Optional.of(origin);
    }

    private RuleFolder only(Predicate<String> some) {
        return as(place, names.stream().filter(some).toList());
    }

    private RuleFolder as(RulePlace other, List<String> some) {
        RuleFolder rules = new RuleFolder(origin, other, some);
        rules.read.putAll(read);
        rules.besides.putAll(besides);
        return rules;
    }

    private static boolean belongs(Path path) {
        return Files.isRegularFile(path) && path.toString().matches(".*\\.(yaml|drl)");
    }

    /** True for the files inside the program, which stay as they are while it runs. */
    public boolean isShipped() {
        return place == RulePlace.INSIDE;
    }

    /** True for files that somebody may edit now: not inside the program, and not kept with an advice. */
    boolean isEdited() {
        return place == RulePlace.FOLDER;
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
        return Optional.ofNullable(besides.get(BESIDE + name))
                .map(bytes -> YamlFiles.parse(name, YamlFiles.text(name, bytes)));
    }

    /** The bytes of a file beside the folder of rules. */
    public Optional<byte[]> bytesBeside(String name) {
        return Optional.ofNullable(besides.get(BESIDE + name));
    }

    /** A YAML file, parsed once. */
    public Located located(String name) {
        String file = origin + "/" + name;
        Node node = shippedNode(name)
                .orElseGet(() -> own.computeIfAbsent(
                        name, n -> YamlFiles.parse(file, text(n)).node()));
        return new Located(file, "", node, new ArrayList<>());
    }

    /** The tree that the build made of a file of the program, which serves for the same bytes in another folder too. */
    private Optional<Node> shippedNode(String name) {
        return Optional.of(name.substring(0, name.indexOf('/')))
                .filter(part -> isShipped() || isShipped(name))
                .map(part -> SHIPPED.parsed
                        .computeIfAbsent(part, ShippedRuleBase::parsed)
                        .get(name));
    }

    /** The revision of the files that decide advice under one code: those of the given folders. */
    String revision(List<String> parts) {
        if (isShipped()) {
            return ShippedRuleBase.revision(parts).orElseGet(() -> Revision.of(files(), parts));
        }
        Map<String, byte[]> all = files();
        List<String> counted = new ArrayList<>(parts);
        if (place == RulePlace.BEFORE) {
            counted.add(Affirmations.FILE);
            bytesBeside(Affirmations.FILE).ifPresent(bytes -> all.put(Affirmations.FILE, bytes));
        } else {
            counted.addAll(List.of(StringUtils.chop(BESIDE), StringUtils.chop(PROGRAM)));
            all.putAll(besides(parts));
        }
        return Revision.of(all, counted);
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
        String remedy = "name the folder that holds shared and a folder for each code.";
        return new Problem(origin, 0, "", "holds no code: no folder in it has a code.yaml.", remedy);
    }

    /** Ids of the codes that can be chosen: the folders that hold a code.yaml. Others are there to be borrowed. */
    public List<String> codes() {
        return names.stream()
                .filter(n -> n.endsWith("/code.yaml") && n.indexOf('/') == n.lastIndexOf('/'))
                .map(n -> n.substring(0, n.indexOf('/')))
                .toList();
    }
}
