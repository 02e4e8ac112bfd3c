package org.fumewarden.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.zip.GZIPInputStream;
import org.fumewarden.Extent;
import org.fumewarden.report.AdviceTree;
import org.junit.jupiter.api.Test;

/** The same advice as two builds wrote it, in format 2 and in format 3: it replays, and nothing that is changed in it does. */
final class OldFormTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int TRIED = Extent.of(40, 200, 200);

    private static JsonNode kept(int format) throws IOException {
        try (InputStream in =
                new GZIPInputStream(AdviceTree.class.getResourceAsStream("format-" + format + ".json.gz"))) {
            return MAPPER.readTree(in);
        }
    }

    private static boolean same(JsonNode old, JsonNode present) {
        Replay replay = new Replay(old, present.toString());
        return replay.same() || replay.sameInOldForm();
    }

    @Test
    void bothFormatsOpenToTheSame() throws IOException {
        ObjectNode old = AdviceTree.opened(kept(2)).deepCopy();
        ObjectNode present = AdviceTree.opened(kept(3)).deepCopy();
        assertEquals("fumewarden-advice/2", old.remove("format").asText());
        assertEquals("fumewarden-advice/3", present.remove("format").asText());
        assertEquals(Canonical.text(old.toString()), Canonical.text(present.toString()));
        assertTrue(same(kept(2), kept(3)));
        assertEquals(List.of(), new Replay(kept(2), kept(3).toString()).changedRulesAndRows());
    }

    /** In canonical form, too, in which the names of objects are in another order. */
    @Test
    void asKeptItReplays() throws IOException {
        assertTrue(same(MAPPER.readTree(Canonical.text(kept(2).toString())), kept(3)));
    }

    @Test
    void nothingInTheOldFileCanBeChangedUnseen() throws IOException {
        JsonNode present = kept(3);
        List<Runnable> changes = new ArrayList<>();
        JsonNode old = kept(2);
        changes(old, changes);
        Random random = new Random(21);
        assertTrue(changes.size() > TRIED, "changes: " + changes.size());
        for (int i = 0; i < TRIED; i++) {
            int which = random.nextInt(changes.size());
            JsonNode fresh = changed(2, which);
            assertFalse(same(fresh, present), () -> "change " + which + " of the old file goes unseen");
        }
    }

    @Test
    void whatIsChangedInThePresentFileIsSeenAndComparedWithoutAFault() throws IOException {
        JsonNode present = kept(3);
        List<Runnable> changes = new ArrayList<>();
        changes(present.deepCopy(), changes);
        Random random = new Random(21);
        for (int i = 0; i < TRIED; i++) {
            int which = random.nextInt(changes.size());
            JsonNode fresh = changed(3, which);
            assertFalse(same(fresh, present), () -> "change " + which + " goes unseen");
            Replay replay = new Replay(fresh, present.toString());
            assertTrue(replay.firstDifference().isPresent());
            replay.changedRulesAndRows();
        }
    }

    /** The kept advice of a format with one of its changes made. */
    private static JsonNode changed(int format, int which) throws IOException {
        JsonNode fresh = kept(format);
        List<Runnable> changes = new ArrayList<>();
        changes(fresh, changes);
        changes.get(which).run();
        return fresh;
    }

    /** Each text, number and word changed, each part put in the place of another kind, and a part more in each object. */
    private static void changes(JsonNode node, List<Runnable> into) {
        if (node instanceof ObjectNode object) {
            into.add(() -> object.put("more", "nobody reads this"));
            object.fieldNames().forEachRemaining(name -> {
                if (object.get(name).isValueNode()) {
                    into.add(() -> object.set(name, other(object.get(name))));
                } else {
                    into.add(() -> object.put(name, "no such part"));
                    changes(object.get(name), into);
                }
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                int at = i;
                if (array.get(i).isValueNode()) {
                    into.add(() -> array.set(at, other(array.get(at))));
                } else {
                    into.add(() -> array.set(at, TextNode.valueOf("no such part")));
                    changes(array.get(i), into);
                }
            }
        }
    }

    private static JsonNode other(JsonNode value) {
        return TextNode.valueOf(value.asText() + "1");
    }
}
