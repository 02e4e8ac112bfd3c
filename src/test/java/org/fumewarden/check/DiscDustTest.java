package org.fumewarden.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.RuleFolder;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.Member;
import org.junit.jupiter.api.Test;

/** What an arc turns to fume a disc throws as dust: a metal or coating is silent under neither. */
final class DiscDustTest {
    private static final Set<String> METALS = Set.of("base-metal", "coating");

    /** Their dust has no stricter limit than any dust, or a disc does not break them down (common practice, no source). */
    private static final Set<String> NO_MORE_THAN_DUST =
            Set.of("mild-steel", "cast-iron", "chlorinated-solvent-residue", "phosphated");

    private final CodeBook book = CodeBook.read(RuleFolder.shipped(), "gb");

    @Test
    void aDiscThrowsWhatAnArcMelts() {
        Set<String> ground = rows(Member.class)
                .filter(m -> m.item().equals("grinding"))
                .map(Member::set)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> told = values(e -> ground.contains(e.processes()));
        Set<String> silent = values(e -> true);
        silent.removeAll(told);
        assertEquals(new TreeSet<>(NO_MORE_THAN_DUST), silent);
    }

    private Set<String> values(Predicate<Emitter> wanted) {
        return rows(Emitter.class)
                .filter(e -> METALS.contains(e.question()))
                .filter(wanted)
                .map(Emitter::value)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private <T> Stream<T> rows(Class<T> kind) {
        return book.tables().stream()
                .flatMap(t -> t.rows().stream())
                .map(row -> row.row())
                .filter(kind::isInstance)
                .map(kind::cast);
    }
}
