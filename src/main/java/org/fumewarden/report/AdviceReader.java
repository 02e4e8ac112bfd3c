package org.fumewarden.report;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.ByStatistic;
import org.fumewarden.advice.Check;
import org.fumewarden.advice.CodeUsed;
import org.fumewarden.advice.OpenQuestion;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.RequiredFactor;
import org.fumewarden.advice.Respirator;
import org.fumewarden.advice.Status;
import org.fumewarden.advice.ToCompare;
import org.fumewarden.advice.UnitInHand;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.model.Confidence;
import org.fumewarden.task.RegisterNote;
import org.fumewarden.trail.Trail;

/** Reads advice back from JSON, for comparing; inputs and trail stay behind in the file. */
public final class AdviceReader {
    private static final long LARGEST = 20_000_000;
    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    private AdviceReader() {}

    /** Reads a file that holds advice, or kept advice. */
    public static Advice read(Path file) {
        try {
            JsonNode root = MAPPER.readTree(YamlFiles.bytes(file, LARGEST));
            JsonNode advice = root.has("advice") ? root.get("advice") : root;
            if (AdviceTree.readable(advice)) {
                return advice(AdviceTree.opened(advice));
            }
        } catch (IOException e) {
            throw problem(file, "is not JSON.");
        } catch (DateTimeException | IllegalArgumentException | NoSuchElementException e) {
            throw problem(file, "holds advice in which something is not what it should be.");
        }
        throw problem(
                file, "holds no advice in the format " + AdviceJson.FORMAT + " or " + AdviceTree.SPELLED_OUT + ".");
    }

    private static InputException problem(Path file, String message) {
        return new InputException(
                new Problem(file.toString(), 0, "", message, "a file from advise --format json, or from --keep."));
    }

    private static Advice advice(JsonNode node) {
        JsonNode code = node.path("codes").path(0);
        return new Advice(
                text(node, "title"),
                text(node, "code"),
                LocalDate.parse(text(node, "on")),
                named(Status.values(), Status::key, text(node, "status")),
                factor(node.path("required-factor")),
                list(node.path("accounts"), AccountJson::read),
                reasons(node, "interim"),
                reasons(node, "by-choice"),
                list(node.path("respirators"), AdviceReader::respirator),
                Optional.of(node.path("unit")).filter(JsonNode::isObject).map(AdviceReader::unit),
                reasons(node, "stops"),
                reasons(node, "controls-first"),
                reasons(node, "hazards"),
                reasons(node, "filters"),
                list(node.path("checks"), AdviceReader::check),
                reasons(node, "cautions"),
                list(
                        node.path("questions"),
                        q -> new OpenQuestion(text(q, "question"), text(q, "ask"), reasons(q, "reasons"))),
                reasons(node, "conflicts"),
                list(
                        node.path("compare-before-signing"),
                        v -> new ToCompare(
                                text(v, "row"),
                                text(v, "value"),
                                text(v, "document"),
                                text(v, "place"),
                                text(v, "matters"))),
                list(node.path("register"), n -> new RegisterNote(text(n, "about"), text(n, "says"))),
                new CodeUsed(
                        text(code, "id"),
                        text(code, "name"),
                        text(code, "edition"),
                        text(code, "checked-on"),
                        list(code.path("lacks"), JsonNode::asText),
                        Optional.of(text(code, "values-until"))
                                .filter(day -> !day.isEmpty())
                                .map(LocalDate::parse)),
                text(node, "revision"),
                List.of(),
                new Trail(List.of()));
    }

    private static RequiredFactor factor(JsonNode node) {
        return new RequiredFactor(
                decimal(node.path("value")),
                node.path("open").asBoolean(),
                text(node, "agent"),
                text(node, "basis"),
                text(node, "statistic"),
                list(node.path("without-limit"), JsonNode::asText),
                list(
                        node.path("by-statistic"),
                        s -> new ByStatistic(
                                text(s, "statistic"), decimal(s.path("level")), decimal(s.path("factor")))),
                reasons(node, "reasons"));
    }

    private static Respirator respirator(JsonNode node) {
        return new Respirator(
                text(node, "class"),
                text(node, "name"),
                node.path("factor").isNumber() ? Optional.of(decimal(node.path("factor"))) : Optional.empty(),
                text(node, "verdict"),
                text(node, "filter"),
                reasons(node, "reasons"),
                reasons(node, "conditions"));
    }

    private static UnitInHand unit(JsonNode node) {
        return new UnitInHand(
                text(node, "id"),
                text(node, "class"),
                text(node, "condition"),
                reasons(node, "reasons"),
                list(node.path("heals"), JsonNode::asText));
    }

    private static Check check(JsonNode node) {
        return new Check(
                text(node, "id"),
                text(node, "what"),
                text(node, "who"),
                text(node, "when"),
                node.path("record").asBoolean(),
                list(node.path("fields"), JsonNode::asText),
                text(node, "keep"),
                text(node, "force"),
                text(node, "source"),
                text(node, "clause"),
                confidence(node),
                text(node, "step"));
    }

    private static List<Reason> reasons(JsonNode node, String name) {
        return list(
                node.path(name),
                r -> new Reason(
                        text(r, "step"),
                        text(r, "rule"),
                        text(r, "subject"),
                        text(r, "says"),
                        text(r, "source"),
                        text(r, "clause"),
                        text(r, "edition"),
                        confidence(r)));
    }

    static Confidence confidence(JsonNode node) {
        return named(Confidence.values(), Confidence::key, text(node, "confidence"));
    }

    private static <T> T named(T[] values, Function<T, String> key, String wanted) {
        return Arrays.stream(values)
                .filter(v -> key.apply(v).equals(wanted))
                .findFirst()
                .orElse(values[values.length - 1]);
    }

    private static <T> List<T> list(JsonNode array, Function<JsonNode, T> each) {
        List<T> items = new ArrayList<>();
        array.forEach(n -> items.add(each.apply(n)));
        return items;
    }

    private static BigDecimal decimal(JsonNode node) {
        BigDecimal value = node.decimalValue().stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0) : value;
    }

    private static String text(JsonNode node, String name) {
        return node.path(name).asText();
    }
}
