package org.fumewarden.engine;

import com.github.javaparser.ParseProblemException;
import com.github.javaparser.StaticJavaParser;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.StringLiteralExpr;
import com.github.javaparser.ast.stmt.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.AnnotationDescr;
import org.drools.drl.ast.descr.AtomicExprDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.BindingDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ConstraintConnectiveDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RelationalExprDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlExprParserFactory;
import org.kie.internal.builder.conf.LanguageLevelOption;

/** Turns what the parser of the engine read into rules as they are written. */
final class RuleDescriptions {
    private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"|(?<![\\w$.])\\d+(?:\\.\\d+)?");

    private final List<WrittenRule.Asked> patterns = new ArrayList<>();
    private final TreeSet<String> bindings = new TreeSet<>();

    private RuleDescriptions() {}

    static WrittenRule rule(String file, String folder, String phase, String text, RuleDescr rule) {
        RuleDescriptions found = new RuleDescriptions();
        found.condition(rule.getLhs(), rule.getLine(), false);
        int from = rule.getStartCharacter();
        String own = text.substring(from, rule.getEndCharacter() + 1).stripTrailing();
        int conditions = Math.max(0, rule.getLhs().getStartCharacter() - from);
        return new WrittenRule(
                file,
                folder,
                phase,
                rule.getName(),
                rule.getLine(),
                1 + StringUtils.countMatches(own, '\n'),
                rule.getAnnotations().stream().map(RuleDescriptions::note).toList(),
                found.patterns,
                found.bindings,
                made(String.valueOf(rule.getConsequence())),
                own,
                new WrittenRule.Span(
                        conditions, Math.max(conditions, rule.getLhs().getEndCharacter() + 1 - from)));
    }

    private static WrittenRule.Note note(AnnotationDescr note) {
        String value = note.getSingleValue() == null
                ? ""
                : note.getSingleValue().toString().strip();
        return new WrittenRule.Note(
                note.getName(), StringUtils.unwrap(value, '"'), value.startsWith("\""), note.isDuplicated());
    }

    private void condition(BaseDescr part, int above, boolean hidden) {
        int line = part.getLine() > 0 ? part.getLine() : above;
        if (part instanceof PatternDescr pattern) {
            pattern(pattern, line, hidden);
        } else if (part instanceof ConditionalElementDescr element) {
            boolean inside = hidden || part instanceof NotDescr || part instanceof ExistsDescr;
            element.getDescrs().forEach(inner -> condition((BaseDescr) inner, line, inside));
        }
    }

    private void pattern(PatternDescr pattern, int line, boolean hidden) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        List<String> literals = new ArrayList<>();
        bind(pattern.getIdentifier(), hidden);
        for (BaseDescr constraint : pattern.getDescrs()) {
            if (constraint instanceof ExprConstraintDescr written) {
                String text = written.getExpression();
                expression(
                        DrlExprParserFactory.getDrlExprParser(LanguageLevelOption.DRL6)
                                .parse(text),
                        words,
                        hidden);
                literals.addAll(literals(text));
            }
        }
        String binding = StringUtils.defaultString(pattern.getIdentifier()).replace("$", "");
        patterns.add(new WrittenRule.Asked(binding, pattern.getObjectType(), words, literals, line, hidden));
        if (pattern.getSource() instanceof AccumulateDescr accumulate) {
            condition(accumulate.getInput(), line, true);
        }
    }

    private void expression(BaseDescr part, Map<String, List<String>> words, boolean hidden) {
        if (part instanceof ConstraintConnectiveDescr several) {
            several.getDescrs().forEach(one -> expression(one, words, hidden));
        } else if (part instanceof BindingDescr binding) {
            bind(binding.getVariable(), hidden);
        } else if (part instanceof RelationalExprDescr compared
                && List.of("==", "!=").contains(compared.getOperator())
                && compared.getRight() instanceof AtomicExprDescr right
                && right.getExpression().matches("\"[^\"]*\"")) {
            words.computeIfAbsent(left(compared.getLeft()), k -> new ArrayList<>())
                    .add(StringUtils.unwrap(right.getExpression(), '"'));
        }
    }

    private static String left(BaseDescr part) {
        return part instanceof BindingDescr binding
                ? binding.getExpression()
                : part instanceof AtomicExprDescr atom ? atom.getExpression() : "";
    }

    private void bind(String name, boolean hidden) {
        if (name != null && !hidden) {
            bindings.add(name.replace("$", ""));
        }
    }

    private static List<String> literals(String expression) {
        return LITERAL.matcher(expression).results().map(MatchResult::group).toList();
    }

    /** What the consequence concludes, when it is one insert of a new fact or of one from a factory. */
    private static Optional<WrittenRule.Made> made(String consequence) {
        try {
            List<Statement> all =
                    StaticJavaParser.parseBlock("{" + consequence + "}").getStatements();
            if (all.size() != 1
                    || !all.get(0).isExpressionStmt()
                    || !(all.get(0).asExpressionStmt().getExpression() instanceof MethodCallExpr insert)
                    || !insert.getNameAsString().equals("insert")
                    || insert.getArguments().size() != 1) {
                return Optional.empty();
            }
            Expression fact = insert.getArgument(0);
            List<String> literals = literals(fact.toString());
            if (fact.isObjectCreationExpr()) {
                return Optional.of(new WrittenRule.Made(
                        fact.asObjectCreationExpr().getType().getNameAsString(),
                        fact.asObjectCreationExpr().getArguments().stream()
                                .map(a -> a.toStringLiteralExpr().map(StringLiteralExpr::asString))
                                .toList(),
                        literals));
            }
            return fact.toMethodCallExpr()
                    .flatMap(MethodCallExpr::getScope)
                    .map(type -> new WrittenRule.Made(type.toString(), List.of(), literals));
        } catch (ParseProblemException e) {
            return Optional.empty();
        }
    }
}
