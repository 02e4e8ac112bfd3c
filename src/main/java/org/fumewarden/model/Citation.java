package org.fumewarden.model;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The place that orders or states something: a source of rules/shared/sources.yaml, a clause of it, its edition, and how well it was read. */
public record Citation(String source, String clause, String edition, Confidence confidence) {
    /** The clause of what was seen in a document whose place was not noted. */
    public static final String NO_PLACE = "-";

    /** How the clause of a value begins that an organisation typed from a document of its own, which no list of sources holds. */
    public static final String OF_ORGANISATION = "value of this organisation";

    /** Why a benchmark holds that an organisation put in the place of ours, and of whose reason it kept no word. */
    public static final String REASON = "this organisation has it in the place of that of the program";

    public Citation {
        Checks.text("source", source);
        Checks.text("clause", clause);
        Checks.present("confidence", confidence);
    }

    /** The clause with the edition, as far as they were noted; empty when neither was. */
    public String place() {
        return Stream.of(clause, edition)
                .filter(words -> !words.isEmpty() && !words.equals(NO_PLACE))
                .collect(Collectors.joining(", "));
    }

    public boolean isOfOrganisation() {
        return clause.startsWith(OF_ORGANISATION);
    }

    /** The same, with the place in whose stead it stands. */
    public Citation insteadOf(String place) {
        return new Citation(source, clause + ", in the place of " + place, edition, confidence);
    }

    /** Both places together, known as well as the worse. */
    public Citation and(Citation other) {
        return new Citation(
                source.equals(other.source) ? source : source + "; " + other.source,
                clause + ", " + other.clause,
                edition,
                confidence.weaker(other.confidence));
    }

    /** The name of the document with its clause, where one was noted. */
    public String cited(String name, String between) {
        return clause.equals(NO_PLACE) ? name : name + between + clause;
    }
}
