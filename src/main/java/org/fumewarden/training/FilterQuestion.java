package org.fumewarden.training;

import java.util.ArrayList;
import java.util.HashSet;
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
    static Optional<RoundItem> about(Told told, Respirator device, Random random) {
        FilterQuestion question = new FilterQuestion(told, device);
        return question.supplied || question.needed.isPresent() ? Optional.of(question.item(random)) : Optional.empty();
    }

    private RoundItem item(Random random) {
        String right = supplied ? NONE : device.filter();
        List<String> wrong = new ArrayList<>();
        if (!supplied) {
            wrong.add(NONE);
        }
        wrong.addAll(decoys());
        return new RoundItem(
                "filter",
                told.say("ask.filter", told.name(device)),
                Distractors.of(
                        right,
                        wrong,
                        random,
                        id -> id.equals(NONE) ? told.say("filter.none") : id,
                        id -> mark(id).right()),
                RoundItem.Reads.WORDS,
                told.say(system.equals("en") ? "hint.filter" : "hint.filter.part84"),
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
        String line = Plain.line(answer);
        if (NO_FILTER.contains(line) || line.equals(Plain.line(told.say("filter.none")))) {
            return supplied
                    ? Mark.right(answer).because(told.noFilter())
                    : Mark.wrong(answer, mistake("no-filter-at-all"), shown).because(need());
        }
        Optional<FilterParts> given = FilterParts.read(answer, system);
        boolean foreign = given.isEmpty() && FilterParts.read(answer, other()).isPresent();
        if (given.isEmpty() && !foreign) {
            return Mark.unread(answer, told.say(system.equals("en") ? "unread.filter" : "unread.filter.part84"));
        }
        if (supplied) {
            return Mark.wrong(answer, mistake("filter-on-supplied-air"), shown).because(told.noFilter());
        }
        if (foreign) {
            return Mark.wrong(answer, mistake("class-of-other-rules"), shown).because(need());
        }
        return compare(answer, given.get(), needed.orElseThrow(), shown);
    }

    /** The mark of a filter that an answer names beside a class of device; none when it names but what the class holds anyway. */
    static Optional<Mark> besides(Told told, Respirator device, String answer) {
        FilterQuestion question = new FilterQuestion(told, device);
        Optional<FilterParts> given = FilterParts.read(answer, question.system);
        boolean asked = question.supplied || question.needed.isPresent();
        return asked && given.isPresent() && given.get().namesMoreThanAClass()
                ? Optional.of(question.mark(answer))
                : Optional.empty();
    }

    private String other() {
        return system.equals("en") ? "niosh" : "en";
    }

    private Mark compare(String answer, FilterParts given, FilterParts needed, String shown) {
        List<String> lacking = needed.gasesBeyond(given);
        List<String> absent =
                lacking.stream().filter(g -> !given.gases().containsKey(g)).toList();
        Optional<String> noClass = lacking.stream()
                .filter(g -> given.gases().getOrDefault(g, -1) == 0)
                .findFirst();
        Set<String> mistakes = new HashSet<>(particles(given, needed));
        if (!absent.isEmpty()) {
            mistakes.add(given.gases().isEmpty() ? "particle-filter-for-gas" : "wrong-gas-type");
        } else if (noClass.isPresent()) {
            return Mark.unread(answer, told.say("unread.filter.class", noClass.get()));
        } else if (!lacking.isEmpty()) {
            mistakes.add("weak-filter");
        }
        if (given.foreign(system)) {
            mistakes.add("class-of-other-rules");
        }
        if (!given.units().equals(needed.units())) {
            if (given.units().isEmpty() && given.particles().equals(Set.of("P")) && mistakes.isEmpty()) {
                return Mark.unread(answer, told.say("unread.filter.unit"));
            }
            mistakes.add("filter-of-another-device");
        }
        Optional<Mistake> first = Mistake.first(mistakes, told.words());
        if (first.isPresent()) {
            boolean gas = List.of("particle-filter-for-gas", "wrong-gas-type")
                    .contains(first.get().id());
            return Mark.wrong(answer, first.get(), shown)
                    .saying(gas ? types(absent, given, needed) : "")
                    .because(need());
        }
        boolean more = !needed.gases().keySet().containsAll(given.gases().keySet())
                || given.gasesBeyond(needed).stream().anyMatch(needed.gases()::containsKey);
        return Mark.right(answer).saying(more ? told.say("more") : "").because(need());
    }

    /** The gases that get through, the type that stops them, and what the given one is for. */
    private String types(List<String> absent, FilterParts given, FilterParts needed) {
        List<String> says = new ArrayList<>();
        for (String part : absent) {
            says.add(told.say("through", agents(List.of(part)), stands(part)));
        }
        given.gases().keySet().stream()
                .filter(g -> !needed.gases().containsKey(g))
                .filter(g -> !meaning(g).isEmpty())
                .forEach(g -> says.add(told.say("stands", g, meaning(g))));
        return String.join(" ", says);
    }

    private String stands(String part) {
        return meaning(part).isEmpty() ? part : part + " (" + meaning(part) + ")";
    }

    private String meaning(String part) {
        return FilterParts.meaning(part, told.words().language());
    }

    /** What is wrong with the particle part. */
    private static List<String> particles(FilterParts given, FilterParts needed) {
        if (given.stopsParticlesOf(needed) || needed.particles().isEmpty()) {
            return List.of();
        }
        if (given.particles().isEmpty()) {
            return List.of("no-particle-part");
        }
        boolean nSeries = given.particles().stream().anyMatch(p -> p.startsWith("N"))
                && needed.particles().stream().noneMatch(p -> p.startsWith("N"))
                && needed.particles().stream().anyMatch(p -> p.matches("[RP](95|99|100)"));
        String one = given.particles().iterator().next().replaceAll("[0-9]+", "#");
        boolean alike = needed.particles().stream()
                .anyMatch(p -> p.replaceAll("[0-9]+", "#").equals(one));
        return List.of(nSeries ? "filter-without-oil-proof" : alike ? "weak-filter" : "filter-of-another-device");
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
