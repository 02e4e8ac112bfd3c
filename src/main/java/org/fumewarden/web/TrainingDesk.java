package org.fumewarden.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Problem;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.training.Handout;
import org.fumewarden.training.HandsOn;
import org.fumewarden.training.Mark;
import org.fumewarden.training.Round;
import org.fumewarden.training.RoundItem;
import org.fumewarden.training.RoundMaker;
import org.fumewarden.training.Scores;
import org.fumewarden.training.Topic;

/** The training room of the page. Nothing is kept: a round is made anew from its topic, difficulty and seed each time it is asked about. */
final class TrainingDesk {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String TASK = "task";
    private static final int MOST_ROUNDS = 12;

    private final Desk desk;
    private final Library library;

    TrainingDesk(Desk desk, Library library) {
        this.desk = desk;
        this.library = library;
    }

    /** The questions of a round; with {@code room}, the mark of each choice as well, for the trainer's screen. */
    Reply round(JsonNode asked) {
        Words words = words(asked);
        Round round = made(asked, words);
        ObjectNode root = NODES.objectNode();
        root.put("title", round.title());
        root.put("story", round.story());
        root.put("code", round.code());
        ArrayNode facts = root.putArray("facts");
        round.facts().forEach(facts::add);
        ArrayNode items = root.putArray("items");
        round.items().forEach(i -> items.add(item(i, words, asked.path("room").asBoolean(false))));
        return Reply.json(root);
    }

    private static ObjectNode item(RoundItem item, Words words, boolean room) {
        ObjectNode node = NODES.objectNode();
        node.put("kind", item.kind());
        node.put("ask", item.ask());
        node.put("words", item.reads() != RoundItem.Reads.CHOICE);
        node.put("hint", item.hint());
        ArrayNode choices = node.putArray("choices");
        item.choices().forEach(c -> choices.add(c.says()));
        if (room) {
            ArrayNode marks = node.putArray("marks");
            item.choices().forEach(c -> marks.add(mark(item.pick(c), words)));
        }
        return node;
    }

    /** Marks one answer: {@code item} counts from 0; {@code choice} from 0, or {@code answer} in words. */
    Reply mark(JsonNode asked) {
        Words words = words(asked);
        List<RoundItem> items = made(asked, words).items();
        int at = asked.path("item").asInt(-1);
        if (at < 0 || at >= items.size()) {
            throw wrong("item", "is no question of this round.", "use 0 to " + (items.size() - 1) + ".");
        }
        RoundItem item = items.get(at);
        int choice = asked.path("choice").asInt(-1);
        boolean picked = choice >= 0 && choice < item.choices().size();
        String answer = asked.path("answer").asText("");
        Mark mark =
                picked ? item.pick(item.choices().get(choice)) : answer.isBlank() ? Mark.skipped() : item.mark(answer);
        return Reply.json(mark(mark, words));
    }

    private static ObjectNode mark(Mark mark, Words words) {
        ObjectNode node = NODES.objectNode();
        node.put("verdict", mark.verdict().name().toLowerCase(java.util.Locale.ROOT));
        node.put("right", mark.right());
        node.put("unread", mark.says());
        node.put("mistake", mark.mistake().map(m -> m.says()).orElse(""));
        node.put("instead", mark.instead());
        node.put("because", mark.because());
        node.put("clause", mark.clause());
        ArrayNode lines = node.putArray("lines");
        Scores.spoken(mark, words).forEach(lines::add);
        return node;
    }

    /** The handout or the certificate of some rounds, as PDF. */
    Reply paper(JsonNode asked) {
        Words words = words(asked);
        List<Round> rounds =
                new ArrayList<>(StreamSupport.stream(asked.path("rounds").spliterator(), false)
                        .limit(MOST_ROUNDS)
                        .map(each -> made(each, words))
                        .toList());
        if (rounds.isEmpty()) {
            rounds.add(made(asked, words));
        }
        boolean handout = asked.path("kind").asText("handout").equals("handout");
        return Reply.of(
                "application/pdf",
                PdfSheet.write(HtmlForm.write(
                        handout
                                ? Handout.of(rounds, words)
                                : Handout.certificate(
                                        rounds, words, library.today().toString()))));
    }

    private Round made(JsonNode asked, Words words) {
        RoundMaker maker = new RoundMaker(library::advisor, words);
        String topic = asked.path("topic").asText("");
        long seed = asked.path("seed").asLong(1);
        if (topic.equals(TASK)) {
            return maker.of(desk.bench(asked), asked.path("story").asText(""), seed);
        }
        String code = asked.path("code").asText("");
        if (!library.codes().contains(code)) {
            throw wrong("code", "cannot be \"" + code + "\".", Nearest.remedy(code, library.codes()));
        }
        if (topic.startsWith(HandsOn.TOPIC)) {
            String kind = topic.substring(HandsOn.TOPIC.length());
            return HandsOn.round(library.advisor(code).base().book(), library.today(), kind, words, seed);
        }
        int level = asked.path("difficulty").asInt(RoundMaker.EASIEST);
        if (level < RoundMaker.EASIEST || level > RoundMaker.HARDEST) {
            throw wrong("difficulty", "cannot be " + level + ".", "use 1, 2 or 3.");
        }
        return maker.made(
                code,
                library.today(),
                Topic.of(topic)
                        .orElseThrow(() ->
                                wrong("topic", "cannot be \"" + topic + "\".", Nearest.remedy(topic, Topic.keys()))),
                level,
                seed);
    }

    private static InputException wrong(String field, String message, String remedy) {
        return new InputException(new Problem("the request", 0, field, message, remedy));
    }

    private static Words words(JsonNode asked) {
        return Words.in(asked.path("language").asText("en"));
    }
}
