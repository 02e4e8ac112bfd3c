package org.fumewarden.check.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fumewarden.advice.Advice;
import org.fumewarden.model.Band;
import org.fumewarden.model.Exposure;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Unit;

/**
 * Each gas above its limit has its type in the filter of each filtering class that is offered, within the concentration that the
 * standard or law allows; a gas that no filter is relied on for never goes with one; particles above a limit or under a floor
 * have a particle filter. Not known here: gases within their limits, oil mist, times of use, low boilers by group, cover of two
 * gases by one filter.
 */
record Filters(Case facts, Levels levels, Floors floors) implements Family {
    private static final Pattern PARTICLE = Pattern.compile("\\bT[HM][1-3]\\b.*\\bP\\b|P[1-3]\\b|\\bHE\\b|[NRP]95|100");

    @Override
    public List<String> objections(Advice advice) {
        List<String> found = new ArrayList<>();
        boolean particles = floors.least().compareTo(BigDecimal.ONE) > 0
                || levels.compared().stream().anyMatch(c -> !facts.gas(c.agent()) && levels.above(c.agent()));
        for (Case.Offered offered : facts.offered(advice)) {
            if (offered.device().filters()) {
                String mark = offered.respirator().filter();
                if (particles && !PARTICLE.matcher(mark).find()) {
                    found.add(offered.id() + " has no particle filter: " + mark);
                }
                levels.gasesAbove().forEach(gas -> wrong(gas, mark, offered)
                        .ifPresent(why -> found.add(offered.id() + " with filter " + mark + ": " + why)));
            }
        }
        return found;
    }

    private Optional<String> wrong(String gas, String mark, Case.Offered offered) {
        Optional<FilterMatch> row = facts.tables().all(FilterMatch.class).stream()
                .filter(f -> f.agent().equals(gas) && facts.in("systems", f.system()))
                .findFirst();
        if (row.isEmpty() || row.get().type().equals("none") || row.get().type().equals("ask")) {
            return Optional.of("no filter is relied on for " + gas);
        }
        String type = row.get().type();
        BigDecimal ppm = facts.said(Exposure.class).stream()
                .filter(x -> x.agent().equals(gas))
                .map(x -> facts.in(Unit.PPM, x))
                .reduce(BigDecimal.ZERO, BigDecimal::max);
        if (!facts.in("classed-gas-types", type)) {
            return !mark.contains(letters(type))
                    ? Optional.of("nothing holds " + gas + ", type " + type)
                    : row.get()
                            .highest()
                            .filter(highest -> ppm.compareTo(highest) > 0)
                            .map(highest -> gas + " is above " + highest + " ppm");
        }
        int least = leastClass(offered, ppm);
        return least > 0
                        && Pattern.compile(letters(type) + "[" + least + "-3]")
                                .matcher(mark)
                                .find()
                ? Optional.empty()
                : Optional.of(gas + " at " + ppm + " ppm needs class " + least + " of type " + type);
    }

    /** The lowest class of gas filter for the concentration; 0 when there is none. */
    private int leastClass(Case.Offered offered, BigDecimal ppm) {
        String own = offered.device().powered() ? "gas-class-powered" : "gas-class-unpowered";
        return facts.tables().all(Band.class).stream()
                .filter(b -> b.band().equals(own) || b.band().equals("gas-class-1"))
                .filter(b -> b.holds(ppm))
                .mapToInt(b -> b.value().intValue())
                .findFirst()
                .orElse(0);
    }

    private static String letters(String type) {
        return type.replaceAll("-P3$|(?<=^[A-Z])[1-3]$", "");
    }
}
