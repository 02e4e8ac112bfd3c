package org.fumewarden.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.fumewarden.assessment.ExposureTables;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.Bar;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.Condition;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Doubt;
import org.fumewarden.model.FactorInForce;
import org.fumewarden.model.FilterNeed;
import org.fumewarden.model.Offer;
import org.fumewarden.model.Ruling;
import org.fumewarden.trail.Step;
import org.fumewarden.trail.Trail;

/** Gathers what the trail says of each class of respirator that the code knows. */
final class RespiratorWriter {
    private static final Set<String> NO_TYPES = Set.of("none", "ask", "beyond");

    private final CodeBook book;
    private final ExposureTables figures;
    private final Trail trail;
    private final String gas;
    private final String marks;
    private final Map<String, String> known;
    private final FilterWords words;

    RespiratorWriter(CodeBook book, ExposureTables figures, Trail trail) {
        this.book = book;
        this.figures = figures;
        this.trail = trail;
        List<FilterNeed> needs = trail.all(FilterNeed.class);
        this.known = book.vocabulary().catalogues().getOrDefault("particle-marks", Map.of());
        List<String> gases = types(needs, t -> !known.containsKey(t) && !NO_TYPES.contains(t));
        this.gas = String.join(" + ", gases);
        this.marks = String.join("+", types(needs, known::containsKey));
        this.words = new FilterWords(gases);
    }

    /** Every class with a factor in the code, in ranking order, suitable ones first. */
    List<Respirator> write() {
        Set<String> known = figures.all(AssignedFactor.class)
                .map(AssignedFactor::deviceClass)
                .collect(Collectors.toCollection(TreeSet::new));
        Map<String, List<Step>> bars = by(Bar.class);
        Map<String, List<Step>> doubts = by(Doubt.class);
        Map<String, List<Step>> offers = by(Offer.class);
        Map<String, List<Step>> conditions = by(Condition.class);
        Map<String, BigDecimal> factors = trail.concluding(FactorInForce.class)
                .map(s -> (FactorInForce) s.conclusion())
                .collect(Collectors.toMap(FactorInForce::deviceClass, FactorInForce::factor, BigDecimal::min));
        Set<String> recommended = trail.all(Ruling.class).stream()
                .filter(r -> r.topic().equals("recommended"))
                .map(Ruling::value)
                .collect(Collectors.toSet());
        return figures.all(DeviceClass.class)
                .filter(d -> known.contains(d.id()))
                .sorted(Comparator.comparingInt(DeviceClass::order))
                .map(d -> {
                    Suitability verdict = verdict(d.id(), bars, doubts, offers, recommended);
                    List<Step> why = new ArrayList<>(offers.getOrDefault(d.id(), List.of()));
                    why.addAll(bars.getOrDefault(d.id(), List.of()));
                    why.addAll(doubts.getOrDefault(d.id(), List.of()));
                    return new Respirator(
                            d.id(),
                            d.name(),
                            Optional.ofNullable(factors.get(d.id())),
                            verdict,
                            filter(d),
                            Reason.once(why),
                            Reason.once(conditions.getOrDefault(d.id(), List.of())));
                })
                .toList();
    }

    private static Suitability verdict(
            String id,
            Map<String, List<Step>> bars,
            Map<String, List<Step>> doubts,
            Map<String, List<Step>> offers,
            Set<String> recommended) {
        boolean suitable = offers.getOrDefault(id, List.of()).stream()
                .anyMatch(s -> ((Offer) s.conclusion()).verdict().equals("suitable"));
        if (suitable) {
            return recommended.contains(id) ? Suitability.RECOMMENDED : Suitability.SUITABLE;
        }
        return bars.containsKey(id) || !doubts.containsKey(id) ? Suitability.BARRED : Suitability.UNDECIDED;
    }

    private <C extends Conclusion> Map<String, List<Step>> by(Class<C> type) {
        return trail.concluding(type)
                .collect(Collectors.groupingBy(s -> s.conclusion().subject(), LinkedHashMap::new, Collectors.toList()));
    }

    /** The filter to fit: gas types, then the particle class the device carries, then marks that this class must bear. */
    private String filter(DeviceClass device) {
        if (!device.filters()) {
            return Respirator.SUPPLIED_AIR;
        }
        String particle = device.particle().equals("none") ? "" : particle(device);
        if (device.gas().equals("none") || gas.isEmpty()) {
            return particle.isEmpty() ? gas : particle;
        }
        return words.combined(device.particle(), particle).orElse(particle.isEmpty() ? gas : gas + " with " + particle);
    }

    /** The marks that the filter must bear, where the code words them; else the class of the device. */
    private String particle(DeviceClass device) {
        String key = device.pressure().equals("powered") ? "powered-" + marks : marks;
        return book.vocabulary().name(known.containsKey(key) ? key : device.particle());
    }

    private static List<String> types(List<FilterNeed> needs, Predicate<String> wanted) {
        return needs.stream()
                .map(FilterNeed::type)
                .filter(wanted)
                .distinct()
                .sorted()
                .toList();
    }
}
