package org.fumewarden.engine;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fumewarden.model.Fact;

/** The words that an expression of a rule may hold: those of the model, bindings, texts, numbers, and a few of the language. */
final class RuleTokens {
    /** A few questions that decide nothing but the value they are asked of. */
    private static final Set<String> LANGUAGE = Set.of(
            "and",
            "or",
            "not",
            "in",
            "memberOf",
            "contains",
            "this",
            "null",
            "true",
            "false",
            "new",
            "insert",
            "List",
            "size",
            "isEmpty",
            "isPresent",
            "equals",
            "signum",
            "compareTo",
            "startsWith");

    private static final Pattern COMMENT =
            Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|//[^\\n]*|/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern TOKEN = Pattern.compile(
            "\\s+|\"[^\"\\\\\\n]*\"|\\$[A-Za-z][A-Za-z0-9_]*|[A-Za-z_][A-Za-z0-9_]*|[0-9]+(?:\\.[0-9]+)?[Bb]?|[()\\[\\],.;:=!<>&|+*/-]");
    private static final Pattern WORD = Pattern.compile("[A-Za-z_].*");

    private final Set<String> types;
    private final Set<String> members;

    private RuleTokens(Set<String> types, Set<String> members) {
        this.types = types;
        this.members = members;
    }

    /** The names of all facts, of what they are made of, and of what those can be asked. */
    static RuleTokens ofModel() {
        Set<Class<?>> seen = new HashSet<>();
        gather(Fact.class, seen);
        Set<String> types = new TreeSet<>();
        Set<String> members = new TreeSet<>();
        for (Class<?> type : seen) {
            types.add(type.getSimpleName());
            for (Method method : type.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers())) {
                    members.add(method.getName());
                }
            }
            if (type.isEnum()) {
                Arrays.stream(type.getEnumConstants()).forEach(c -> members.add(((Enum<?>) c).name()));
            }
        }
        return new RuleTokens(types, members);
    }

    private static void gather(Class<?> type, Set<Class<?>> seen) {
        if (type.getPackage() != Fact.class.getPackage() || !seen.add(type)) {
            return;
        }
        if (type.isSealed()) {
            Arrays.stream(type.getPermittedSubclasses()).forEach(t -> gather(t, seen));
        }
        Arrays.stream(type.getInterfaces()).forEach(t -> gather(t, seen));
        Arrays.stream(type.getDeclaredClasses()).forEach(t -> gather(t, seen));
        if (type.isRecord()) {
            Arrays.stream(type.getRecordComponents()).forEach(c -> gather(c.getType(), seen));
        }
        for (Method method : type.getDeclaredMethods()) {
            gather(method.getReturnType(), seen);
            List.of(method.getParameterTypes()).forEach(t -> gather(t, seen));
        }
    }

    boolean isType(String name) {
        return name != null && (types.contains(name) || name.equals("List"));
    }

    static String withoutComments(String text) {
        Matcher matcher = COMMENT.matcher(text);
        return matcher.replaceAll(m -> Matcher.quoteReplacement(m.group().startsWith("\"") ? m.group() : " "));
    }

    /** The first thing in an expression that is none of the allowed words and signs. */
    Optional<String> beyond(String expression) {
        String text = withoutComments(expression);
        Matcher token = TOKEN.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (!token.find(at) || token.start() != at) {
                return Optional.of(text.substring(at, Math.min(text.length(), at + 1)));
            }
            String word = token.group();
            if (WORD.matcher(word).matches()
                    && !types.contains(word)
                    && !members.contains(word)
                    && !LANGUAGE.contains(word)) {
                return Optional.of(word);
            }
            at = token.end();
        }
        return Optional.empty();
    }
}
