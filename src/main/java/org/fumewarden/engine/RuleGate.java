package org.fumewarden.engine;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.AnnotatedBaseDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.ImportDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.OrDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.RuleFolder;

/**
 * Lets through rule files that hold only the language of rules here: conditions over the words of the model, and the insert of
 * conclusions. A compiled rule is a program that may do whatever its author may; so a file is read, by the parser of the engine,
 * and refused before anything of it is compiled.
 */
final class RuleGate {
    private static final Pattern RULE_NAME = Pattern.compile("[A-Z][A-Z0-9-]* [^\"\\\\\\p{Cntrl}]*");
    private static final Pattern PACKAGE = Pattern.compile("rules\\.[a-z0-9_]+\\.[a-z]+");
    private static final Set<String> ACCUMULATED = Set.of("collectList", "count", "max", "min");
    private static final Pattern CONSEQUENCE = Pattern.compile("(\\s*insert\\s*\\(.*\\)\\s*;\\s*)+", Pattern.DOTALL);

    private final String file;
    private final RuleTokens words;
    private final List<Problem> problems = new ArrayList<>();

    private RuleGate(String file, RuleTokens words) {
        this.file = file;
        this.words = words;
    }

    /**
     * Reads files, and stops at what is beyond the language.
     *
     * @throws InputException with each thing that is, by file and line
     */
    static void admit(RuleFolder folder, List<String> files) {
        List<Problem> problems = WrittenFile.read(folder, files).stream()
                .flatMap(file -> file.refused().stream())
                .toList();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    /** What the parser read of a file; empty when it is not in the language. What is beyond it goes to the problems. */
    static Optional<PackageDescr> read(String file, String text, RuleTokens words, List<Problem> problems) {
        RuleGate gate = new RuleGate(file, words);
        Optional<PackageDescr> parsed = gate.parsed(text);
        parsed.ifPresent(gate::file);
        problems.addAll(new LinkedHashSet<>(gate.problems));
        return parsed;
    }

    private Optional<PackageDescr> parsed(String text) {
        // Java reads such a sign as the letter it names before it looks for the end of a text in quotes.
        int escape = text.indexOf("\\u");
        if (escape >= 0) {
            int line = 1
                    + (int) text.substring(0, escape)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            refuse(line, "", "holds an escape \\u.", "write the letter itself.");
            return Optional.empty();
        }
        try {
            DrlParser parser = new DrlParser();
            PackageDescr parsed = parser.parse(false, new StringReader(text));
            if (parser.hasErrors() || parsed == null) {
                for (DroolsError error : parser.getErrors()) {
                    int[] lines = error.getLines();
                    refuse(
                            lines.length > 0 ? Math.max(lines[0], 0) : 0,
                            "",
                            "is not in the language of rules: "
                                    + Located.shown(error.getMessage().replaceAll("\\s+", " ")),
                            "compare it with a neighbouring rule of the same phase.");
                }
                if (problems.isEmpty()) {
                    refuse(0, "", "holds no rule.", "compare it with a neighbouring file of the same phase.");
                }
                return Optional.empty();
            }
            return Optional.of(parsed);
        } catch (DroolsParserException e) {
            refuse(0, "", "cannot be parsed.", "compare it with a neighbouring rule of the same phase.");
            return Optional.empty();
        }
    }

    private void file(PackageDescr parsed) {
        if (!PACKAGE.matcher(parsed.getName()).matches()) {
            refuse(
                    1,
                    "",
                    "is in the package " + Located.shown(parsed.getName()) + ".",
                    "package rules.<code>.<phase>;");
        }
        for (ImportDescr imported : parsed.getImports()) {
            if (!Set.of("org.fumewarden.model.*", "java.util.List").contains(imported.getTarget())) {
                refuse(
                        imported.getLine(),
                        "",
                        "imports " + Located.shown(imported.getTarget()) + ".",
                        "import org.fumewarden.model.*; rules know nothing else.");
            }
        }
        List<BaseDescr> beyond = new ArrayList<>(parsed.getFunctionImports());
        beyond.addAll(parsed.getAccumulateImports());
        beyond.addAll(parsed.getGlobals());
        beyond.addAll(parsed.getFunctions());
        beyond.addAll(parsed.getAttributes());
        beyond.addAll(parsed.getClassAndEnumDeclarationDescrs());
        beyond.addAll(parsed.getEntryPointDeclarations());
        beyond.addAll(parsed.getWindowDeclarations());
        if (parsed.getUnit() != null) {
            beyond.add(parsed.getUnit());
        }
        for (BaseDescr part : beyond) {
            refuse(part.getLine(), "", "holds " + kind(part) + ".", "keep package, import and rules alone.");
        }
        parsed.getRules().forEach(this::rule);
    }

    private static String kind(BaseDescr part) {
        return "a part that is not a rule ("
                + part.getClass()
                        .getSimpleName()
                        .replace("Descr", "")
                        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                        .toLowerCase(java.util.Locale.ROOT)
                + ")";
    }

    private void rule(RuleDescr rule) {
        int line = rule.getLine();
        String id = rule.getName().replaceFirst(" .*", "");
        if (!RULE_NAME.matcher(rule.getName()).matches()) {
            refuse(
                    line,
                    id,
                    "has a name with a sign that no name has.",
                    "an id and a sentence, such as GB-NEED-010 ...");
        }
        if (rule.isQuery()
                || !rule.getAttributes().isEmpty()
                || rule.getParentName() != null
                || !rule.getNamedConsequences().isEmpty()) {
            refuse(line, id, "has a part beyond when and then.", "keep annotations, conditions and one insert.");
        }
        annotations(rule, id);
        condition(rule.getLhs(), id, line);
        String then = String.valueOf(rule.getConsequence());
        int at = Math.max(rule.getConsequenceLine(), line);
        if (!CONSEQUENCE.matcher(RuleTokens.withoutComments(then)).matches()) {
            refuse(at, id, "does something else than conclude.", "only insert( new Conclusion( ... ) ); in then.");
        }
        text(then, id, at);
    }

    private void annotations(AnnotatedBaseDescr part, String id) {
        part.getAnnotations()
                .forEach(annotation -> annotation.getValueMap().values().forEach(value -> {
                    String text = String.valueOf(value);
                    Matcher quoted = Pattern.compile("\"[^\"\\\\]*\"").matcher(text);
                    if (!quoted.matches() && text.matches(".*[\"\\\\\\p{Cntrl}].*")) {
                        refuse(annotation.getLine(), id, "has an annotation that is no plain text.", "@name(\"...\").");
                    }
                }));
    }

    private void condition(BaseDescr part, String id, int above) {
        int line = part.getLine() > 0 ? part.getLine() : above;
        if (part instanceof PatternDescr pattern) {
            pattern(pattern, id, line);
        } else if (part instanceof AndDescr
                || part instanceof OrDescr
                || part instanceof NotDescr
                || part instanceof ExistsDescr) {
            ((ConditionalElementDescr) part).getDescrs().forEach(inner -> condition((BaseDescr) inner, id, line));
        } else {
            refuse(line, id, "has a condition that is " + kind(part) + ".", "patterns, not, exists and accumulate.");
        }
        if (part instanceof AnnotatedBaseDescr annotated
                && !annotated.getAnnotations().isEmpty()) {
            refuse(line, id, "has an annotation within a condition.", "put it between the name and when.");
        }
    }

    private void pattern(PatternDescr pattern, String id, int line) {
        if (!words.isType(pattern.getObjectType())) {
            refuse(
                    line,
                    id,
                    "asks for " + Located.shown(pattern.getObjectType()) + ", which is no fact.",
                    "a type of the model, such as Answer or Exposure.");
        }
        if (pattern.isQuery()
                || (pattern.getBehaviors() != null && !pattern.getBehaviors().isEmpty())) {
            refuse(
                    line,
                    id,
                    "has a pattern with more than constraints.",
                    "drop what follows over, or the question mark.");
        }
        for (BaseDescr constraint : pattern.getDescrs()) {
            if (constraint instanceof ExprConstraintDescr expression) {
                text(expression.getExpression(), id, Math.max(expression.getLine(), line));
            } else {
                refuse(line, id, "has a constraint that is " + kind(constraint) + ".", "field == value, and the like.");
            }
        }
        if (pattern.getSource() instanceof AccumulateDescr accumulate) {
            accumulate(accumulate, id, line);
        } else if (pattern.getSource() != null) {
            refuse(line, id, "takes facts from elsewhere.", "from accumulate( ... ) alone.");
        }
    }

    private void accumulate(AccumulateDescr accumulate, String id, int line) {
        if (!accumulate.isExternalFunction() || accumulate.getInitCode() != null) {
            refuse(line, id, "accumulates with code of its own.", "collectList, count, max or min.");
        }
        accumulate.getFunctions().forEach(function -> {
            if (!ACCUMULATED.contains(function.getFunction())) {
                refuse(
                        line,
                        id,
                        "accumulates with " + Located.shown(function.getFunction()) + ".",
                        "collectList, count, max or min.");
            }
            for (String parameter : function.getParams()) {
                text(parameter, id, line);
            }
        });
        condition(accumulate.getInput(), id, line);
    }

    private void text(String expression, String id, int line) {
        words.beyond(expression)
                .ifPresent(
                        word -> refuse(
                                line,
                                id,
                                "uses " + Located.shown(word) + ", which is no word of the model.",
                                "what a fact of the model says, and insert( new Conclusion( ... ) ); rules run no other code."));
    }

    private void refuse(int line, String id, String message, String maybe) {
        problems.add(new Problem(file, Math.max(line, 0), id, message, maybe));
    }
}
