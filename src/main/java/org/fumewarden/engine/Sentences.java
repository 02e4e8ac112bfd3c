package org.fumewarden.engine;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.Tongue;
import org.fumewarden.codes.Vocabulary;
import org.fumewarden.model.Answer;
import org.fumewarden.model.Averaging;
import org.fumewarden.model.Conclusion;
import org.fumewarden.model.CountedAs;
import org.fumewarden.model.Fact;
import org.fumewarden.model.Figures;
import org.fumewarden.model.Kept;
import org.fumewarden.model.Measure;
import org.fumewarden.model.Need;
import org.fumewarden.model.Ratio;
import org.fumewarden.model.Row;
import org.fumewarden.model.RowRef;
import org.fumewarden.model.Settlement;
import org.fumewarden.model.Threshold;
import org.fumewarden.model.Unit;
import org.fumewarden.trail.Premise;
import org.fumewarden.trail.Sentence;

/** Words for facts: fills the sentence of a rule and describes premises. */
final class Sentences {
    /** More figures than anybody tells; a number with more was reckoned. */
    private static final int AS_TOLD = 9;

    private static final int ABSENT = 4_000;

    private record Asked(Absence absence, String subject) {}

    private final Vocabulary vocabulary;
    private final AbsenceWords absences;
    private final Kept<Asked, Premise> absent = new Kept<>(ABSENT);
    private final Map<Class<?>, Template> spoken = new ConcurrentHashMap<>();

    /** Sentences in another language, by id of the rule, and words that stand in their places. */
    private final Map<String, Template> own;

    private final Map<String, String> words;

    Sentences(Vocabulary vocabulary) {
        this(vocabulary, new Tongue("", false, Map.of(), Map.of()));
    }

    Sentences(Vocabulary vocabulary, Tongue tongue) {
        this(
                vocabulary,
                tongue.words(),
                tongue.sentences().entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, e -> Template.of(e.getValue()))));
    }

    private Sentences(Vocabulary vocabulary, Map<String, String> words, Map<String, Template> own) {
        this.vocabulary = vocabulary;
        this.absences = new AbsenceWords(vocabulary, this::own, this::name);
        this.words = words;
        this.own = own;
    }

    /** The same sentences with other names of ids. */
    Sentences naming(Vocabulary other) {
        return new Sentences(other, words, own);
    }

    /** The sentence of a rule, filled. */
    Sentence fill(SpokenRule rule, Conclusion conclusion, Map<String, Object> bindings) {
        return fill(own.getOrDefault(rule.card().id(), rule.sentence()), conclusion, bindings);
    }

    /** Fills {name} from the conclusion's parts or else the rule's bindings, and {binding.part} from a bound fact. */
    Sentence fill(Template template, Conclusion conclusion, Map<String, Object> bindings) {
        List<String> filled = filled(template, conclusion, bindings);
        if (template.fixed().get(0).isEmpty() && !filled.isEmpty()) {
            filled.set(0, StringUtils.capitalize(filled.get(0)));
        }
        return new Sentence(template.begun(), filled);
    }

    private List<String> filled(Template template, Fact fact, Map<String, Object> bindings) {
        List<String> filled = new ArrayList<>(template.pieces().size());
        for (Template.Piece piece : template.pieces()) {
            if (!piece.name().isEmpty()) {
                Object value = value(piece, fact, bindings);
                Object of = piece.part().isEmpty() ? fact : bindings.get(piece.name());
                boolean told = of instanceof Measure || of instanceof Row;
                filled.add(told && value instanceof BigDecimal number ? asTold(number) : words(value));
            }
        }
        return filled;
    }

    /** A figure that a person told, or a table, stands as it was written, so that it never reads like the border it missed. */
    private static String asTold(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return plain.precision() <= AS_TOLD ? plain.toPlainString() : Figures.shown(number);
    }

    private Object value(Template.Piece piece, Fact fact, Map<String, Object> bindings) {
        if (piece.part().isEmpty()) {
            return FactPart.in(fact, piece.name())
                    .map(value -> asSaid(fact, piece.name(), value))
                    .orElseGet(() -> bindings.getOrDefault(piece.name(), piece.written()));
        }
        if (bindings.get(piece.name()) instanceof Ratio ratio && piece.part().equals(Ratio.COMPARED)) {
            return compared(ratio);
        }
        return bindings.get(piece.name()) instanceof Record bound
                ? FactPart.in(bound, piece.part())
                        .map(value -> asSaid(bound, piece.part(), value))
                        .orElse(piece.written())
                : piece.written();
    }

    /** A level beside its limit; one that the law presumes is no level that anybody found, so no figure stands for it. */
    private String compared(Ratio ratio) {
        return ratio.presumed()
                ? own("not measured; until it is, the law presumes that much is needed")
                : words(ratio.level()) + " " + words(ratio.unit()) + " " + own("against a limit of") + " "
                        + words(ratio.limit()) + " " + words(ratio.unit()) + ", " + words(ratio.averaging());
    }

    /** A required factor is said as the page says it, an answer by the name that its own question gives it. */
    private Object asSaid(Object fact, String part, Object value) {
        if (fact instanceof Answer answer && part.equals("value")) {
            return vocabulary.answer(answer.question(), answer.value());
        }
        Optional<BigDecimal> pressure = fact instanceof Measure m && Figures.inKilopascals(m.value(), m.unit())
                ? Optional.of(m.value())
                : fact instanceof Threshold t && Figures.inKilopascals(t.value(), t.unit())
                        ? Optional.of(t.value())
                        : Optional.empty();
        if (pressure.isPresent() && part.equals("value")) {
            return Figures.kilopascals(pressure.get());
        }
        if (pressure.isPresent() && part.equals("unit")) {
            return "kPa";
        }
        return fact instanceof Need && part.equals("value") && value instanceof BigDecimal number
                ? new BigDecimal(Figures.factor(number))
                : value;
    }

    /** What the program says in English, in the language of these sentences. */
    private String own(String english) {
        return words.getOrDefault(english, english);
    }

    /** The name of an id; in another language an id without a name there stays as it is. */
    private String name(String id) {
        String english = vocabulary.name(id);
        String said = own(english);
        boolean unnamed = said.equals(english) && !vocabulary.names().containsKey(id);
        return unnamed && !words.isEmpty() ? id : said;
    }

    /** One value in words. */
    String words(Object value) {
        if (value instanceof List<?> many) {
            return many.stream().map(this::words).collect(Collectors.joining(" " + own("or") + " "));
        }
        // Only an id has a name; a sentence keeps its hyphens.
        return value instanceof String text && text.indexOf(' ') < 0 ? name(text) : own(english(value));
    }

    private String english(Object value) {
        if (value instanceof BigDecimal number) {
            return Figures.shown(number);
        }
        if (value instanceof Averaging averaging) {
            return averaging.words();
        }
        if (value instanceof Settlement settlement) {
            return settlement.key();
        }
        if (value instanceof Unit unit) {
            return unit.symbol();
        }
        if (value instanceof CountedAs basis) {
            return basis.after();
        }
        if (value instanceof RowRef ref) {
            return ref.address();
        }
        return value instanceof Optional<?> optional ? optional.map(this::words).orElse("none") : String.valueOf(value);
    }

    /** A fact in words, without its address. */
    Sentence describe(Fact fact) {
        Template template = spoken.computeIfAbsent(fact.getClass(), this::template);
        Sentence said = template.names().isEmpty()
                ? Sentence.plain(parts(template.fixed().get(0), fact))
                : new Sentence(template.fixed(), filled(template, fact, Map.of()));
        String provenance = provenance(fact);
        return provenance.isEmpty() ? said : said.and(provenance);
    }

    /** How facts of a type are told; without places, what comes before their parts. */
    private Template template(Class<?> type) {
        String kind = AbsenceWords.kebab(type.getSimpleName());
        String told = vocabulary.names().getOrDefault("fact-" + kind, "");
        return Template.of(own(told.contains("{") ? told : kind.replace('-', ' ') + ": "));
    }

    private String parts(String kind, Fact fact) {
        StringBuilder words = new StringBuilder(kind);
        String between = "";
        for (FactPart part : FactPart.of(fact)) {
            Object value = part.read(fact);
            if (!(value instanceof RowRef) && !part.name().equals("path")) {
                words.append(between).append(own(part.words())).append(' ').append(words(value));
                between = ", ";
            }
        }
        return words.toString();
    }

    /** Where documents differ about a row, and who answers for it. */
    private String provenance(Fact fact) {
        if (!(fact instanceof Row row)) {
            return "";
        }
        List<String> beside = row.ref().beside();
        String affirmed = row.ref().affirmed();
        String changed = row.ref().changed();
        return (beside.isEmpty()
                        ? ""
                        : "; " + own("another document gives") + " " + String.join(" " + own("or") + " ", beside))
                + (affirmed.isEmpty() ? "" : "; " + own("affirmed by") + " " + affirmed)
                + (changed.isEmpty() ? "" : "; " + changed);
    }

    /** What a rule found missing when it concluded something of a subject. */
    Premise absent(Absence absence, String subject) {
        return absent.of(new Asked(absence, subject), a -> absences.premise(absence, subject));
    }
}
