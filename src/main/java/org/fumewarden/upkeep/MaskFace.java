package org.fumewarden.upkeep;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether the mask of a fit test is a half or a full mask.
 *
 * <p>The register decides; where it does not say, an earlier test of the same person in the same model; then the form.
 */
public final class MaskFace {
    /** What is known, and who says so. */
    private record Known(String face, String by) {}

    private MaskFace() {}

    /** The masks of the register that are this model. */
    public static List<Item.Mask> masks(Store store, String model) {
        return store.items(Item.Mask.class).stream()
                .filter(m -> m.model().strip().equals(model.strip()))
                .toList();
    }

    /**
     * The test with its face: half, full, or empty when nobody said.
     *
     * @throws StoreException when the form says another than is known
     */
    public static FitTest told(Store store, String wearer, FitTest test) {
        Optional<Known> known = registered(masks(store, test.model()), test).or(() -> earlier(store, wearer, test));
        String face = known.map(Known::face).orElse(test.face());
        if (!test.face().isEmpty() && !test.face().equals(face)) {
            throw StoreException.about(
                    "face",
                    "is " + test.face() + ", but " + known.map(Known::by).orElse("") + " says " + face + " mask.",
                    "leave face out, or register the mask again with the right face.");
        }
        return test.judged(test.result(), face, test.fitFactor(), test.passFactor(), "");
    }

    private static Optional<Known> registered(List<Item.Mask> masks, FitTest test) {
        return masks.stream()
                .map(m -> new Known(
                        m.face().isEmpty() ? inWords(m.model() + " " + m.description()) : m.face(),
                        "the register of " + m.id()))
                .filter(k -> !k.face().isEmpty())
                .findFirst()
                .or(() -> Optional.of(new Known(inWords(test.model()), "the model"))
                        .filter(k -> !k.face().isEmpty()));
    }

    /** Only what stands: an entry that a later one took the place of says nothing. */
    private static Optional<Known> earlier(Store store, String wearer, FitTest test) {
        List<Long> superseded = store.superseded(wearer);
        return store.entriesOf(wearer).stream()
                .filter(e -> !superseded.contains(e.sequence()))
                .flatMap(e -> e
                        .effective()
                        .filter(FitTest.class::isInstance)
                        .map(d -> (FitTest) d)
                        .filter(t ->
                                t.serves().equals(test.serves()) && !t.face().isEmpty())
                        .map(t -> new Known(t.face(), by(e)))
                        .stream())
                .reduce((a, b) -> b);
    }

    private static String by(LogEntry entry) {
        return "entry " + entry.sequence() + " of this wearer in this model";
    }

    private static String inWords(String text) {
        String words = text.toLowerCase(Locale.ROOT);
        boolean full = words.matches("(?s).*\\b(full|voll).*");
        boolean half = words.matches("(?s).*(\\b(half|halb|ffp)|filtering facepiece).*");
        return full == half ? "" : full ? "full" : "half";
    }
}
