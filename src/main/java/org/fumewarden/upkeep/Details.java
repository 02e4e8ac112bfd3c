package org.fumewarden.upkeep;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What an entry of the log says. Amounts: flow l/min, pressure bar, oxygen %, gases ppm, oil mg/m3. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
    @JsonSubTypes.Type(value = Details.Registration.class, name = "registration"),
    @JsonSubTypes.Type(value = Details.BeforeUseCheck.class, name = "before-use-check"),
    @JsonSubTypes.Type(value = Examination.class, name = "examination"),
    @JsonSubTypes.Type(value = FitTest.class, name = "fit-test"),
    @JsonSubTypes.Type(value = Details.Medical.class, name = "medical"),
    @JsonSubTypes.Type(value = Details.Training.class, name = "training"),
    @JsonSubTypes.Type(value = AirTest.class, name = "air-test"),
    @JsonSubTypes.Type(value = Details.Repair.class, name = "repair"),
    @JsonSubTypes.Type(value = Details.Replacement.class, name = "replacement"),
    @JsonSubTypes.Type(value = Details.Withdrawal.class, name = "withdrawal"),
    @JsonSubTypes.Type(value = Details.Performed.class, name = "performed"),
    @JsonSubTypes.Type(value = Details.Correction.class, name = "correction")
})
public sealed interface Details
        permits Examination,
                Details.Registration,
                Details.BeforeUseCheck,
                FitTest,
                Details.Medical,
                Details.Training,
                AirTest,
                Details.Repair,
                Details.Replacement,
                Details.Withdrawal,
                Details.Performed,
                Details.Correction {
    /** What this discharges: the word that a duty names as done-by. */
    default String serves() {
        return Kinds.of(this);
    }

    default Result result() {
        return Result.DONE;
    }

    /** Why it failed, was withdrawn or is not judged, in words; empty when it counts, or when nothing tells. */
    default String whyFailed() {
        return "";
    }

    /** The sequence number of the entry that this one takes the place of. */
    default Optional<Long> corrects() {
        return Optional.empty();
    }

    /** The item as it stands from now on. */
    record Registration(Item item) implements Details {
        public Registration {
            Given.present("item", item);
        }
    }

    /** One point of a before-use check. */
    record Point(String id, Result result, String remark) {
        public Point {
            id = Given.needed("point id", id);
            Result.ofCheck("result of point " + id, result);
            remark = Given.optional("remark", remark);
        }

        /** What was checked, and what was remarked about it. */
        String words() {
            String what =
                    switch (id) {
                        case "pu-user-allowed" -> "wearer";
                        case "pu-exam-in-date" -> "dates";
                        case "pu-headtop" -> "visor, seal and straps";
                        case "pu-filter-right" -> "filters";
                        case "pu-flow" -> "air flow";
                        case "pu-don-clean" -> "flow and seal when put on";
                        case "pa-air-in-date" -> "air test and coupling";
                        default -> id.replaceFirst("^p[ua]-", "").replace('-', ' ');
                    };
            return remark.isEmpty() ? what : what + ": " + remark;
        }
    }

    /** The wearer's check before use; it fails when a point fails or the flow is below the maker's minimum. */
    record BeforeUseCheck(
            Result result,
            List<Point> points,
            Optional<BigDecimal> flow,
            Optional<BigDecimal> minimumFlow,
            String remarks)
            implements Details {
        public BeforeUseCheck {
            points = Given.list(points);
            flow = Given.amount("flow", flow);
            minimumFlow = Given.amount("minimum-flow", minimumFlow);
            remarks = Given.optional("remarks", remarks);
            result = Flows.judged(Result.ofCheck("result", result), points, flow, minimumFlow);
        }

        @Override
        public String whyFailed() {
            return result == Result.FAILED ? Flows.reasons(Flows.why(result, flow, minimumFlow), points, remarks) : "";
        }
    }

    /**
     * A medical evaluation, surveillance or biological sample.
     *
     * @param topic clearance, surveillance, lead-blood, ...; the second half of the duty's done-by word
     * @param particulars of the person, as the authority has approved them for health records
     * @param exposureHistory work with the substance and for how long, or where that is kept
     */
    record Medical(
            Result result,
            String topic,
            String limits,
            String followUp,
            Optional<Boolean> copyGiven,
            String particulars,
            String exposureHistory)
            implements Details {
        public Medical {
            Result.ofCheck("result", result);
            topic = Given.needed("topic", topic);
            limits = Given.optional("limits", limits);
            followUp = Given.optional("follow-up", followUp);
            copyGiven = Given.maybe(copyGiven);
            particulars = Given.optional("particulars", particulars);
            exposureHistory = Given.optional("exposure-history", exposureHistory);
        }

        @Override
        public String serves() {
            return "medical/" + topic;
        }
    }

    /** Information, instruction and training. */
    record Training(Result result, String content, String signature) implements Details {
        public Training {
            Result.ofCheck("result", result);
            content = Given.needed("content", content);
            signature = Given.optional("signature", signature);
        }
    }

    /** A repair. */
    record Repair(String work, String parts) implements Details {
        public Repair {
            work = Given.needed("work", work);
            parts = Given.optional("parts", parts);
        }
    }

    /** A part replaced. */
    record Replacement(String part, String lot, String reason, Optional<LocalDate> expiry) implements Details {
        public Replacement {
            part = Given.needed("part", part);
            lot = Given.optional("lot", lot);
            reason = Given.optional("reason", reason);
            expiry = Given.maybe(expiry);
        }
    }

    /**
     * Taken out of use.
     *
     * @param fault true when something is wrong with it, so that a repair must come first
     * @param forGood true when it never comes back
     */
    record Withdrawal(String reason, boolean fault, boolean forGood) implements Details {
        public Withdrawal {
            reason = Given.needed("reason", reason);
        }

        @Override
        public Result result() {
            return Result.WITHDRAWN;
        }

        @Override
        public String whyFailed() {
            return reason;
        }
    }

    /** Any other duty done, named by its done-by word: cleaning, programme, evaluation, ... */
    record Performed(String task, String remarks) implements Details {
        public Performed {
            task = Given.needed("task", task);
            remarks = Given.optional("remarks", remarks);
        }

        @Override
        public String serves() {
            return task;
        }
    }

    /**
     * A later entry that takes the place of an earlier one, which stays in the log.
     *
     * @param entry sequence number of the earlier entry
     * @param instead what holds instead; nothing when the earlier entry should not have been made
     */
    record Correction(long entry, String reason, Optional<Details> instead) implements Details {
        public Correction {
            reason = Given.needed("reason", reason);
            instead = Given.maybe(instead);
            if (instead.isPresent() && (instead.get() instanceof Correction || instead.get() instanceof Registration)) {
                throw StoreException.refused(
                        "a correction cannot put a " + instead.get().serves() + " in place of entry " + entry + ".",
                        "register the item again, or correct the entry itself.");
            }
        }

        @Override
        public String serves() {
            return instead.map(Details::serves).orElse("correction");
        }

        @Override
        public Result result() {
            return instead.map(Details::result).orElse(Result.VOID);
        }

        @Override
        public String whyFailed() {
            return instead.map(Details::whyFailed).orElse("");
        }

        @Override
        public Optional<Long> corrects() {
            return Optional.of(entry);
        }
    }
}
