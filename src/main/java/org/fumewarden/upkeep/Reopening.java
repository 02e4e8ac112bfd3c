package org.fumewarden.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Walks through the entries that close or open an item, in the order of their days.
 *
 * <p>A failed check closes it until a repair and then a passed examination (after a failed air test: a passed air test). A
 * withdrawal without a fault asks for the passed examination only. A check that passes does not open what a repair must
 * mend first.
 */
final class Reopening {
    private final Set<String> toPass = new TreeSet<>();
    /** Dated after it was written down: such an entry may close an item and never opens one. */
    private boolean ahead;

    private boolean toRepair;
    private boolean scrapped;
    private Optional<LogEntry> closing = Optional.empty();

    static UnitState of(List<LogEntry> inOrder) {
        Reopening walk = new Reopening();
        inOrder.forEach(walk::read);
        return walk.state();
    }

    private void read(LogEntry entry) {
        ahead = Plausible.ahead(entry);
        Details details = entry.effective().orElse(entry.details());
        if (details instanceof Details.Withdrawal withdrawal) {
            scrapped |= withdrawal.forGood();
            close(entry, "examination", withdrawal.fault());
        } else if (details instanceof Details.Repair || details instanceof Details.Replacement) {
            toRepair &= ahead;
        } else if (details instanceof Details.BeforeUseCheck check) {
            judge(entry, check.result(), "examination", false);
        } else if (details instanceof Examination examination) {
            judge(entry, examination.result(), "examination", true);
        } else if (details instanceof AirTest test) {
            judge(entry, test.result(), test.serves(), true);
        }
    }

    /** A deed in words. */
    private static String words(String serves) {
        return switch (serves) {
            case "before-use-check" -> "check before use";
            case "examination" -> "thorough examination";
            case "air-test/breathing" -> "test of the breathing air";
            default -> serves.replace('/', ' ').replace('-', ' ');
        };
    }

    private void judge(LogEntry entry, Result result, String reopensBy, boolean mayOpen) {
        if (result == Result.FAILED) {
            close(entry, reopensBy, true);
        } else if (result == Result.PASSED && mayOpen && !toRepair && !ahead) {
            toPass.remove(reopensBy);
        }
    }

    private void close(LogEntry entry, String reopensBy, boolean fault) {
        if (toPass.isEmpty() || fault) {
            closing = Optional.of(entry);
        }
        toPass.add(reopensBy);
        toRepair |= fault;
    }

    private UnitState state() {
        if (closing.isEmpty() || (toPass.isEmpty() && !scrapped)) {
            return UnitState.open();
        }
        LogEntry entry = closing.get();
        Details held = entry.effective().orElse(entry.details());
        String why = held instanceof Details.Withdrawal withdrawal
                ? "Withdrawn: " + withdrawal.reason() + "."
                : "Failed: " + words(held.serves())
                        + (held.whyFailed().isEmpty() ? "." : " (" + held.whyFailed() + ").");
        Optional<LocalDate> since = Optional.of(entry.on());
        Optional<Long> number = Optional.of(entry.sequence());
        if (scrapped) {
            return new UnitState(UnitState.Standing.SCRAPPED, since, number, why + " It never returns to use.");
        }
        String passes = toPass.stream().map(Reopening::words).collect(Collectors.joining(" and "));
        String next = toRepair
                ? " Before it is used again it must be repaired and then pass: " + passes + "."
                : " Before it is used again it must pass: " + passes + ".";
        return new UnitState(UnitState.Standing.WITHDRAWN, since, number, why + next);
    }
}
