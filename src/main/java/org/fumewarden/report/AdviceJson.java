package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.Citation;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Step;

/** The advice as JSON: stable names, stable order, one format number. */
public final class AdviceJson {
    /** Name and number of the format; the number grows when a name changes its meaning. */
    public static final String FORMAT = "fumewarden-advice/1";

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

    private AdviceJson() {}

    /** Writes the advice, with a line feed at the end. */
    public static String write(Advice advice) {
        try {
            return MAPPER.writeValueAsString(tree(advice)).replace("\r\n", "\n") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes a tree on one line, without a line end. */
    public static String line(ObjectNode tree) {
        try {
            return MAPPER.writer().without(SerializationFeature.INDENT_OUTPUT).writeValueAsString(tree);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The advice as a tree. */
    public static ObjectNode tree(Advice advice) {
        ObjectNode root = NODES.objectNode();
        root.put("format", FORMAT);
        root.put("title", advice.title());
        root.put("code", advice.code());
        root.put("on", advice.on().toString());
        root.put("status", advice.status().key());
        root.set("required-factor", factor(advice.requiredFactor()));
        ArrayNode respirators = root.putArray("respirators");
        advice.respirators().forEach(r -> respirators.add(respirator(r)));
        root.set("stops", reasons(advice.stops()));
        root.set("controls-first", reasons(advice.controlsFirst()));
        root.set("hazards", reasons(advice.hazards()));
        root.set("filters", reasons(advice.filters()));
        ArrayNode checks = root.putArray("checks");
        advice.checks().forEach(c -> checks.add(check(c)));
        root.set("cautions", reasons(advice.cautions()));
        ArrayNode questions = root.putArray("questions");
        advice.questions().forEach(q -> questions.add(question(q)));
        root.set("conflicts", reasons(advice.conflicts()));
        ObjectNode code = root.putArray("codes").addObject();
        code.put("id", advice.codeUsed().id());
        code.put("name", advice.codeUsed().name());
        code.put("edition", advice.codeUsed().edition());
        code.put("checked-on", advice.codeUsed().checkedOn());
        ArrayNode lacks = code.putArray("lacks");
        advice.codeUsed().lacks().forEach(lacks::add);
        root.put("revision", advice.revision());
        root.put("decides", Advice.CLOSING);
        ArrayNode steps = root.putObject("trail").putArray("steps");
        advice.trail().steps().forEach(s -> steps.add(step(s)));
        return root;
    }

    private static ObjectNode factor(RequiredFactor factor) {
        ObjectNode node = NODES.objectNode();
        number(node, "value", factor.value());
        node.put("open", factor.open());
        node.put("agent", factor.agent());
        node.put("basis", factor.basis());
        node.put("statistic", factor.statistic());
        ArrayNode others = node.putArray("by-statistic");
        factor.byStatistic().forEach(other -> {
            ObjectNode each = others.addObject();
            each.put("statistic", other.statistic());
            number(each, "level", other.level());
            number(each, "factor", other.factor());
        });
        node.set("reasons", reasons(factor.reasons()));
        return node;
    }

    private static ObjectNode respirator(Respirator respirator) {
        ObjectNode node = NODES.objectNode();
        node.put("class", respirator.deviceClass());
        node.put("name", respirator.name());
        if (respirator.factor().isPresent()) {
            number(node, "factor", respirator.factor().get());
        } else {
            node.putNull("factor");
        }
        node.put("verdict", respirator.verdict());
        node.put("filter", respirator.filter());
        node.set("reasons", reasons(respirator.reasons()));
        node.set("conditions", reasons(respirator.conditions()));
        return node;
    }

    private static ObjectNode check(Check check) {
        ObjectNode node = NODES.objectNode();
        node.put("id", check.id());
        node.put("what", check.what());
        node.put("who", check.who());
        node.put("when", check.when());
        node.put("record", check.recorded());
        ArrayNode fields = node.putArray("fields");
        check.fields().forEach(fields::add);
        node.put("keep", check.keep());
        node.put("force", check.force());
        node.put("source", check.source());
        node.put("clause", check.clause());
        node.put("confidence", check.confidence().key());
        node.put("unverified", check.confidence().unverified());
        node.put("step", check.step());
        return node;
    }

    private static ObjectNode question(OpenQuestion question) {
        ObjectNode node = NODES.objectNode();
        node.put("question", question.question());
        node.put("ask", question.ask());
        node.set("reasons", reasons(question.reasons()));
        return node;
    }

    private static ArrayNode reasons(List<Reason> reasons) {
        ArrayNode array = NODES.arrayNode();
        for (Reason reason : reasons) {
            ObjectNode node = array.addObject();
            node.put("step", reason.step());
            node.put("rule", reason.rule());
            node.put("subject", reason.subject());
            node.put("says", reason.says());
            node.put("source", reason.source());
            node.put("clause", reason.clause());
            node.put("edition", reason.edition());
            node.put("confidence", reason.confidence().key());
            node.put("unverified", reason.confidence().unverified());
        }
        return array;
    }

    private static ObjectNode step(Step step) {
        ObjectNode node = NODES.objectNode();
        node.put("id", step.id());
        node.put("phase", step.phase());
        node.put("rule", step.rule());
        node.put("title", step.title());
        node.put("says", step.says());
        node.put("concludes", step.conclusion().getClass().getSimpleName());
        node.put("subject", step.conclusion().subject());
        citation(node, step.citation());
        node.put("overall-confidence", step.confidence().key());
        step.overriddenBy().ifPresent(rule -> node.put("overridden-by", rule));
        ArrayNode premises = node.putArray("premises");
        for (Premise premise : step.premises()) {
            ObjectNode each = premises.addObject();
            each.put("kind", premise.kind());
            each.put("address", premise.address());
            each.put("words", premise.words());
            premise.citation().ifPresent(c -> citation(each, c));
        }
        return node;
    }

    private static void citation(ObjectNode node, Citation citation) {
        node.put("source", citation.source());
        node.put("clause", citation.clause());
        node.put("edition", citation.edition());
        node.put("confidence", citation.confidence().key());
    }

    private static void number(ObjectNode node, String name, BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        node.put(name, plain.scale() < 0 ? plain.setScale(0) : plain);
    }
}
