package org.fumewarden.training;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.fumewarden.advice.Reason;
import org.fumewarden.advice.Respirator;
import org.fumewarden.model.FilterNeed;
import org.fumewarden.model.Member;

/** Which filter goes into a device, marked by the parts of its mark. */
final class FilterQuestion {
    private static final String NONE = "none";
    private static final Set<String> NO_FILTER = Set.of(
            "none",
            "no filter",
            "no",
            "supplied air",
            "none supplied air",
            "keiner",
            "kein filter",
            "keine",
            "zugefuehrte luft",
            "ohne");

    private final Told told;
    private final Respirator device;
    private final boolean supplied;
    private final String system;
    private final Optional<FilterParts> needed;

    private FilterQuestion(Told told, Respirator device) {
        this.told = told;
        this.device = device;
        this.supplied = device.filter().equals(Respirator.SUPPLIED_AIR);
        this.system = told.all(Member.class).stream()
                .filter(m -> m.set().equals("systems"))
                .map(Member::item)
                .findFirst()
                .orElse("en");
        this.needed = supplied ? Optional.empty() : FilterParts.read(device.filter(), system);
    }

    /** The question about a device; none where the advice names a filter by anything but its mark. */
    static Optional<Item> about(Told told, Respirator device, Random random) {
        FilterQuestion question = new FilterQuestion(told, device);
        return question.supplied || question.needed.isPresent() ? Optional.of(question.item(random)) : Optional.empty();
    }

    private Item item(Random random) {
        String right = supplied ? NONE : device.filter();
        List<String> wrong = new ArrayList<>();
        if (!supplied) {
            wrong.add(NONE);
        }
        wrong.addAll(decoys());
        return new Item(
                "filter",
                told.say("ask.filter", told.name(device)),
                Choices.of(
                        right,
                        wrong,
                        random,
                        id -> id.equals(NONE) ? told.say("filter.none") : id,
                        id -> mark(id).right()),
                false,
                told.say("hint.filter"),
                this::mark);
    }

    /** Marks that differ in one part each, and those of other devices. */
    private List<String> decoys() {
        Set<String> decoys = new LinkedHashSet<>();
        needed.ifPresent(parts -> {
            String mark = device.filter();
            if (system.equals("en")) {
                parts.gases()
                        .keySet()
                        .forEach(gas -> decoys.add(mark.replaceAll(gas + "[1-3]?", "")
                                .replaceAll("^[-\\s]+|^ *with ", "")
                                .replaceAll("\\s+", " ")
                                .strip()));
                String unit = parts.units().stream().findFirst().orElse("");
                decoys.add(unit.isEmpty() ? "A1" : unit + " A1 P");
                decoys.add(unit.isEmpty() ? "P1" : "P3");
                decoys.add(unit.isEmpty() ? "B1-P1" : unit + " B1 P");
            } else {
                if (!parts.gases().isEmpty()) {
                    decoys.add(mark.replaceAll("^.* with ", ""));
                }
                decoys.addAll(List.of("organic vapour cartridge", "ammonia cartridge"));
            }
        });
        told.said().respirators().stream()
                .map(Respirator::filter)
                .filter(f -> !f.isEmpty() && !f.equals(Respirator.SUPPLIED_AIR))
                .forEach(decoys::add);
        return List.copyOf(decoys);
    }

    private Mark mark(String answer) {
        String shown = supplied ? told.say("filter.none") : device.filter();
        if (NO_FILTER.contains(Plain.line(answer))) {
            return supplied
                    ? Mark.right(answer)
                    : Mark.wrong(answer, mistake("no-filter-at-all"), shown).because(need());
        }
        Optional<FilterParts> given = FilterParts.read(answer, system);
        if (given.isEmpty()) {
            return Mark.unread(answer, told.say(system.equals("en") ? "unread.filter" : "unread.filter.part84"));
        }
        if (supplied) {
            return Mark.wrong(answer, mistake("filter-on-supplied-air"), shown).because(told.stop());
        }
        return compare(answer, given.get(), needed.orElseThrow(), shown);
    }

    private Mark compare(String answer, FilterParts given, FilterParts needed, String shown) {
        List<String> lacking = needed.gasesBeyond(given);
        Optional<String> noClass = given.gases().entrySet().stream()
                .filter(g -> g.getValue() == 0 && needed.gases().getOrDefault(g.getKey(), 1) > 0)
                .map(java.util.Map.Entry::getKey)
                .findFirst();
        List<String> absent =
                lacking.stream().filter(g -> !given.gases().containsKey(g)).toList();
        if (!absent.isEmpty()) {
            return Mark.wrong(answer, mistake("particle-filter-for-gas"), shown)
                    .saying(told.say("through", agents(absent)))
                    .because(need());
        }
        if (noClass.isPresent() && needed.gases().containsKey(noClass.get())) {
            return Mark.unread(answer, told.say("unread.filter.class", noClass.get()));
        }
        if (!lacking.isEmpty()) {
            return Mark.wrong(answer, mistake("weak-filter"), shown).because(need());
        }
        if (given.particles().isEmpty() && !needed.particles().isEmpty()) {
            return Mark.wrong(answer, mistake("no-particle-part"), shown).because(need());
        }
        if (!needed.units().isEmpty()
                && given.units().isEmpty()
                && given.particles().equals(Set.of("P"))) {
            return Mark.unread(answer, told.say("unread.filter.unit"));
        }
        if (!given.units().equals(needed.units())) {
            return Mark.wrong(answer, mistake("filter-of-another-device"), shown);
        }
        if (!given.stopsParticlesOf(needed)) {
            return Mark.wrong(answer, mistake(weaker(given, needed)), shown).because(need());
        }
        boolean more = !needed.gases().keySet().containsAll(given.gases().keySet());
        return more
                ? Mark.wrong(answer, mistake("more-than-needed"), shown)
                : Mark.right(answer).because(need());
    }

    private static String weaker(FilterParts given, FilterParts needed) {
        boolean nSeries = given.particles().stream().anyMatch(p -> p.startsWith("N"))
                && needed.particles().stream().noneMatch(p -> p.startsWith("N"));
        String one = given.particles().iterator().next().replaceAll("[0-9]", "");
        boolean alike = needed.particles().stream()
                .anyMatch(p -> p.replaceAll("[0-9]", "").equals(one));
        return nSeries ? "filter-without-oil-proof" : alike ? "weak-filter" : "filter-of-another-device";
    }

    /** The substances behind gas parts, in words. */
    private String agents(List<String> parts) {
        return told.said().trail().all(FilterNeed.class).stream()
                .filter(n -> FilterParts.read(n.type(), system)
                        .filter(p -> p.gases().keySet().stream().anyMatch(parts::contains))
                        .isPresent())
                .map(n -> told.words()
                        .sayOr("agent." + n.agent(), told.vocabulary().name(n.agent())))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private Optional<Reason> need() {
        return told.said().filters().stream().findFirst();
    }

    private Mistake mistake(String id) {
        return Mistake.of(id, told.words());
    }
}
