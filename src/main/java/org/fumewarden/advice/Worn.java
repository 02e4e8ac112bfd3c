package org.fumewarden.advice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Row;
import org.fumewarden.model.Ruling;

/** What the wearer of the page has on: the class to wear, and the one in hand unless it is barred. */
final class Worn {
    private static final String KEY = "worn:";

    /** Why a wearer puts on nothing by choice either. */
    private static final Set<String> UNFIT = Set.of("medically-cleared", "trained");

    /** What lies ready is of a class that is ruled out: nothing mends it for this work. */
    static final String BARRED = "inhand:barred";

    private Worn() {}

    /** Keys such as {@code worn:powered}, for the acts that only such a class calls for. */
    static Set<String> keys(Advice advice, List<Row> rows) {
        Set<String> classes = classes(advice);
        Set<String> keys = new TreeSet<>();
        advice.inHand().filter(r -> r.verdict() == Suitability.BARRED).ifPresent(r -> keys.add(BARRED));
        rows.stream()
                .filter(r -> r instanceof DeviceClass d && classes.contains(d.id()))
                .map(DeviceClass.class::cast)
                .forEach(d -> {
                    keys.add(KEY + d.supply());
                    keys.add(KEY + d.seal());
                    if (d.powered()) {
                        keys.add(KEY + "powered");
                    }
                    if (d.escape().equals("auxiliary")) {
                        keys.add(KEY + "scba");
                    }
                });
        return keys;
    }

    /** While questions are open, the class for air that nobody knows stands in for the one to wear; in a conflict none is worn. */
    private static Set<String> classes(Advice advice) {
        if (advice.status() == Status.CONFLICT) {
            return Set.of();
        }
        Set<String> classes = new LinkedHashSet<>();
        advice.recommended().map(Respirator::deviceClass).ifPresent(classes::add);
        if (classes.isEmpty() && advice.status() == Status.INCOMPLETE) {
            advice.interim().stream().map(Reason::subject).forEach(classes::add);
        } else if (classes.isEmpty()) {
            advice.trail().all(Ruling.class).stream()
                    .filter(r -> r.topic().equals("provisional"))
                    .map(Ruling::value)
                    .forEach(classes::add);
        }
        advice.inHand()
                .filter(r -> advice.byChoice().stream().map(Reason::subject).noneMatch(UNFIT::contains))
                .filter(r -> r.verdict() != Suitability.BARRED)
                .map(Respirator::deviceClass)
                .ifPresent(classes::add);
        return classes;
    }
}
