package org.fumewarden.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Arrows between packages point one way, and only the edge knows the clock, the console and the network. */
final class PackageArrowsTest {
    private static final String BASE = "org.fumewarden.";

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.fumewarden");

    /** The floor of each package: a package may use only packages on lower floors. */
    private static final Map<String, Integer> FLOORS = Map.ofEntries(
            Map.entry("model", 0),
            Map.entry("exposure", 1),
            Map.entry("endurance", 1),
            Map.entry("codes", 1),
            Map.entry("trail", 1),
            Map.entry("upkeep", 2),
            Map.entry("task", 2),
            Map.entry("duties", 3),
            Map.entry("assessment", 3),
            Map.entry("engine", 3),
            Map.entry("shift", 3),
            Map.entry("advice", 4),
            Map.entry("whatif", 5),
            Map.entry("check", 6),
            Map.entry("report", 7),
            Map.entry("audit", 8),
            Map.entry("batch", 8),
            Map.entry("register", 5),
            Map.entry("training", 8),
            Map.entry("cli", 10),
            Map.entry("web", 9));

    private static final Set<String> CLOCKS = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.time.Clock.systemUTC",
            "java.time.Clock.systemDefaultZone",
            "java.time.Clock.system");

    @Test
    void arrowsPointOneWay() {
        ArchRule rule = classes()
                .that()
                .resideInAPackage("org.fumewarden..")
                .should(useOnlyLowerFloors())
                .because("model <- codes <- task <- engine <- advice <- whatif <- check <- report <- web <- cli");
        rule.check(MAIN);
    }

    @Test
    void noCycles() {
        ArchRule rule = slices().matching(BASE + "(*)..").should().beFreeOfCycles();
        rule.check(MAIN);
    }

    @Test
    void onlyTheEngineKnowsDrools() {
        ArchRule rule = noClasses()
                .that()
                .resideInAPackage("org.fumewarden..")
                .and()
                .resideOutsideOfPackage(BASE + "engine..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.drools..", "org.kie..");
        rule.check(MAIN);
    }

    @Test
    void onlyTheEdgeKnowsTheClock() {
        ArchRule rule = noClasses()
                .that()
                .resideOutsideOfPackages(BASE + "cli..", BASE + "web..")
                .should(new ReadTheClock());
        rule.check(MAIN);
    }

    @Test
    void onlyTheEdgeKnowsTheConsole() {
        ArchRule rule = noClasses()
                .that()
                .resideOutsideOfPackages(BASE + "cli..", BASE + "web..")
                .should()
                .accessField(System.class, "in")
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class);
        rule.check(MAIN);
    }

    @Test
    void onlyTheEdgeKnowsTheNetwork() {
        ArchRule rule = noClasses()
                .that()
                .resideOutsideOfPackages(BASE + "cli..", BASE + "web..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net.http..", "com.sun.net.httpserver..")
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.net\\.(Server|Datagram)?Socket|java\\.net\\.URL(Connection)?");
        rule.check(MAIN);
    }

    @Test
    void arithmeticIsPure() {
        ArchRule rule = noClasses()
                .that()
                .resideInAnyPackage(BASE + "model..", BASE + "exposure..", BASE + "endurance..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "com.fasterxml..", "org.yaml..")
                .allowEmptyShould(true);
        rule.check(MAIN);
    }

    private static ArchCondition<JavaClass> useOnlyLowerFloors() {
        return new ArchCondition<>("use only packages on lower floors") {
            @Override
            public void check(JavaClass from, ConditionEvents events) {
                for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                    JavaClass to = dependency.getTargetClass();
                    if (to.getPackageName().startsWith(BASE) && !part(to).equals(part(from))) {
                        boolean down = floor(to) < floor(from);
                        events.add(new SimpleConditionEvent(dependency, down, dependency.getDescription()));
                    }
                }
            }
        };
    }

    private static String part(JavaClass type) {
        return type.getPackageName().substring(BASE.length()).split("\\.")[0];
    }

    private static int floor(JavaClass type) {
        Integer floor = FLOORS.get(part(type));
        if (floor == null) {
            throw new IllegalStateException("give the package " + part(type) + " a floor");
        }
        return floor;
    }

    /** Calls that read the clock, by whatever type of the time library. */
    private static final class ReadTheClock extends ArchCondition<JavaClass> {
        private static final DescribedPredicate<JavaAccess<?>> READS = DescribedPredicate.describe(
                "read the clock",
                access -> CLOCKS.contains(access.getTargetOwner().getName() + "." + access.getName())
                        || access.getTargetOwner().getPackageName().equals("java.time")
                                && access.getName().equals("now"));

        ReadTheClock() {
            super("read the clock");
        }

        @Override
        public void check(JavaClass type, ConditionEvents events) {
            type.getAccessesFromSelf()
                    .forEach(a -> events.add(new SimpleConditionEvent(a, READS.test(a), a.getDescription())));
        }
    }
}
