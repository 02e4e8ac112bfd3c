package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fumewarden.model.Anchor;

/**
 * A person or thing in the register.
 *
 * <p>The id is the distinguishing number or mark that the user gives. Facts are circumstances of the duty vocabulary, each
 * with every value known to hold.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Item.Wearer.class, name = "wearer"),
    @JsonSubTypes.Type(value = Item.Unit.class, name = "unit"),
    @JsonSubTypes.Type(value = Item.Mask.class, name = "mask"),
    @JsonSubTypes.Type(value = Item.Filter.class, name = "filter"),
    @JsonSubTypes.Type(value = Item.Battery.class, name = "battery"),
    @JsonSubTypes.Type(value = Item.Plant.class, name = "plant"),
    @JsonSubTypes.Type(value = Item.AirSupply.class, name = "air-supply"),
    @JsonSubTypes.Type(value = Item.Site.class, name = "site")
})
public sealed interface Item {
    String id();

    default ItemKind kind() {
        return Given.one(ItemKind.class, "kind", Kinds.of(this));
    }

    /** The words by which people know it. */
    String label();

    Map<String, List<String>> facts();

    /** Id of the wearer to whom it is handed out. */
    default Optional<String> wearer() {
        return Optional.empty();
    }

    /** Day from which a duty with this anchor counts, for the anchors that the register keeps. */
    default Optional<LocalDate> anchored(Anchor anchor) {
        return Optional.empty();
    }

    /** A thing with a description. */
    sealed interface Described extends Item permits Part, Plant, AirSupply {
        String description();

        @Override
        default String label() {
            return description();
        }
    }

    /** A thing that is made and fitted, from which days periods may count. */
    sealed interface Part extends Described permits Unit, Mask, Battery {
        Optional<LocalDate> manufactured();

        Optional<LocalDate> firstFitted();

        /** The manufacture date counts unless the first fitting is documented: BGR/GUV-R 190 (2011) section 3.3.2. */
        @Override
        default Optional<LocalDate> anchored(Anchor anchor) {
            return Given.dayOfPart(anchor, manufactured(), firstFitted());
        }
    }

    /**
     * A person who wears respirators.
     *
     * @param masks ids of the masks this person wears
     */
    record Wearer(
            String id,
            String name,
            String team,
            Optional<LocalDate> exposureStart,
            Optional<LocalDate> employmentEnd,
            List<String> masks,
            Map<String, List<String>> facts)
            implements Item {
        public Wearer {
            id = Given.needed("id", id);
            name = Given.needed("name", name);
            team = Given.optional("team", team);
            exposureStart = Given.maybe(exposureStart);
            employmentEnd = Given.maybe(employmentEnd);
            masks = Given.list(masks);
            facts = Given.facts(facts);
        }

        @Override
        public String label() {
            return name;
        }

        @Override
        public Optional<LocalDate> anchored(Anchor anchor) {
            return switch (anchor) {
                case EXPOSURE_START -> exposureStart;
                case EMPLOYMENT_END -> employmentEnd;
                default -> Optional.empty();
            };
        }
    }

    /**
     * A blower unit, airline set or self-contained set.
     *
     * @param minimumFlow the maker's minimum flow as the user reads it, in litres per minute
     * @param cylinderFullPressure pressure of its full cylinder as the maker gives it, in bar; for self-contained sets
     */
    record Unit(
            String id,
            String description,
            String maker,
            Optional<BigDecimal> minimumFlow,
            Optional<BigDecimal> cylinderFullPressure,
            Optional<String> wearer,
            Optional<LocalDate> manufactured,
            Optional<LocalDate> firstFitted,
            Map<String, List<String>> facts)
            implements Part {
        public Unit {
            id = Given.needed("id", id);
            description = Given.needed("description", description);
            maker = Given.optional("maker", maker);
            minimumFlow = Given.amount("minimum-flow", minimumFlow);
            cylinderFullPressure = Given.amount("cylinder-full-pressure", cylinderFullPressure);
            wearer = Given.text("wearer", wearer);
            manufactured = Given.maybe(manufactured);
            firstFitted = Given.maybe(firstFitted);
            facts = Given.facts(facts);
        }
    }

    /**
     * A facepiece, hood or helmet.
     *
     * @param model maker, model, style and size in one line; a fit test holds for exactly these words
     * @param face {@code half}, filtering facepieces included, or {@code full}; empty when nobody said
     */
    record Mask(
            String id,
            String description,
            String model,
            String face,
            Optional<String> wearer,
            Optional<LocalDate> manufactured,
            Optional<LocalDate> firstFitted,
            Map<String, List<String>> facts)
            implements Part {
        public Mask {
            id = Given.needed("id", id);
            description = Given.optional("description", description);
            model = Given.needed("model", model);
            face = Given.face(face);
            wearer = Given.text("wearer", wearer);
            manufactured = Given.maybe(manufactured);
            firstFitted = Given.maybe(firstFitted);
            facts = Given.facts(facts);
        }

        @Override
        public String label() {
            return description.isEmpty() ? model : description;
        }
    }

    /** A filter, or a set of filters changed together. */
    record Filter(
            String id,
            String type,
            String lot,
            Optional<LocalDate> expiry,
            Optional<LocalDate> opened,
            Optional<LocalDate> manufactured,
            Optional<String> unit,
            Map<String, List<String>> facts)
            implements Item {
        public Filter {
            id = Given.needed("id", id);
            type = Given.needed("type", type);
            lot = Given.optional("lot", lot);
            expiry = Given.maybe(expiry);
            opened = Given.maybe(opened);
            manufactured = Given.maybe(manufactured);
            unit = Given.text("unit", unit);
            facts = Given.facts(facts);
        }

        @Override
        public String label() {
            return type;
        }

        @Override
        public Optional<LocalDate> anchored(Anchor anchor) {
            return anchor == Anchor.MARKED_EXPIRY ? expiry : Given.dayOfPart(anchor, manufactured, opened);
        }
    }

    /** A battery pack. */
    record Battery(
            String id,
            String description,
            Optional<LocalDate> manufactured,
            Optional<LocalDate> firstFitted,
            Optional<String> unit,
            Map<String, List<String>> facts)
            implements Part {
        public Battery {
            id = Given.needed("id", id);
            description = Given.needed("description", description);
            manufactured = Given.maybe(manufactured);
            firstFitted = Given.maybe(firstFitted);
            unit = Given.text("unit", unit);
            facts = Given.facts(facts);
        }
    }

    /** A plant that extracts fume at its source. */
    record Plant(
            String id,
            String description,
            String place,
            String process,
            String substances,
            Map<String, List<String>> facts)
            implements Described {
        public Plant {
            id = Given.needed("id", id);
            description = Given.needed("description", description);
            place = Given.optional("place", place);
            process = Given.optional("process", process);
            substances = Given.optional("substances", substances);
            facts = Given.facts(facts);
        }
    }

    /** A compressor, cylinder bank or other source of breathing air. */
    record AirSupply(String id, String description, String place, Map<String, List<String>> facts)
            implements Described {
        public AirSupply {
            id = Given.needed("id", id);
            description = Given.needed("description", description);
            place = Given.optional("place", place);
            facts = Given.facts(facts);
        }
    }

    /**
     * The site and its employer, as records must name them.
     *
     * @param code id of the code under which the site works; empty when none is set
     */
    record Site(
            String id,
            String employer,
            String address,
            String administrator,
            String code,
            Map<String, List<String>> facts)
            implements Item {
        public Site {
            id = Given.needed("id", id);
            employer = Given.needed("employer", employer);
            address = Given.needed("address", address);
            administrator = Given.optional("administrator", administrator);
            code = Given.optional("code", code);
            facts = Given.facts(facts);
        }

        @Override
        public String label() {
            return employer;
        }
    }
}
