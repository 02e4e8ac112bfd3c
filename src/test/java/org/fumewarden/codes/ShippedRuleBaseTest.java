package org.fumewarden.codes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.nodes.Node;

/** What the build works out of the rule base is what a start would have worked out. */
final class ShippedRuleBaseTest {
    private static final RuleFolder SHIPPED = RuleFolder.shipped();
    private static final RuleFolder WRITTEN = RuleFolder.at(Path.of("rules"));

    @Test
    void everyParsedFileIsTheFileAsWritten() {
        List<String> files = WRITTEN.names("", ".yaml");
        assertTrue(files.size() > 50, "the rule base has tables");
        assertEquals(files, SHIPPED.names("", ".yaml"));
        for (String file : files) {
            assertEquals(spelled(WRITTEN.located(file)), spelled(SHIPPED.located(file)), file);
        }
    }

    @Test
    void everyRevisionIsThatOfTheFilesAsWritten() {
        for (String code : WRITTEN.codes()) {
            List<String> parts = CodeBook.folders(WRITTEN, code);
            assertEquals(Optional.of(Revision.of(WRITTEN.files(), parts)), ShippedRuleBase.revision(parts), code);
        }
    }

    @Test
    void aBookOfEitherIsTheSame() {
        CodeBook shipped = CodeBook.read(SHIPPED, "gb");
        CodeBook written = CodeBook.read(WRITTEN, "gb");
        assertEquals(written.tables(), shipped.tables());
        assertEquals(written.vocabulary(), shipped.vocabulary());
        assertEquals(written.revision(), shipped.revision());
    }

    /** Each place of a file with its path, line, kind and words. */
    private static List<String> spelled(Located place) {
        List<String> spelled = new ArrayList<>();
        spell(place, spelled);
        return spelled;
    }

    private static void spell(Located place, List<String> into) {
        String words = place.isScalar() && !place.isNull() ? place.text() : kind(place.node());
        into.add(place.path() + "|" + place.line() + "|" + words + "|" + place.quoted());
        if (place.isMap()) {
            place.entries().values().forEach(below -> spell(below, into));
        } else if (place.isList()) {
            place.items().forEach(below -> spell(below, into));
        }
    }

    private static String kind(Node node) {
        return node.getClass().getSimpleName();
    }
}
