package org.fumewarden.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fumewarden.codes.CodeBook;
import org.fumewarden.codes.CodeSummary;
import org.fumewarden.codes.DatedRow;
import org.fumewarden.codes.Nearest;
import org.fumewarden.codes.Overlaps;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.Question;
import org.fumewarden.codes.TableFile;
import org.fumewarden.model.Agent;
import org.fumewarden.model.AssignedFactor;
import org.fumewarden.model.ClauseFor;
import org.fumewarden.model.Confidence;
import org.fumewarden.model.DangerLevel;
import org.fumewarden.model.DeviceClass;
import org.fumewarden.model.Duty;
import org.fumewarden.model.DutyCondition;
import org.fumewarden.model.Emitter;
import org.fumewarden.model.EyeShade;
import org.fumewarden.model.FilterMatch;
import org.fumewarden.model.Limit;
import org.fumewarden.model.Member;
import org.fumewarden.model.NoneListed;
import org.fumewarden.model.Row;
import org.fumewarden.model.Term;
import org.fumewarden.model.Threshold;

/** The rows of one code's tables: what they name must exist, and no two may answer the same question. */
final class TableLint {
    private static final Set<String> HOLDINGS = Set.of("particles", "gas", "combined", "any");

    private final CodeBook book;
    private final Set<String> rules;
    private final Set<String> agents = new TreeSet<>();
    private final Set<String> classes = new TreeSet<>();
    private final Set<String> sets = new TreeSet<>();
    private final Set<String> words = new TreeSet<>();
    private final Set<String> neverOpen = new TreeSet<>();
    private final Set<String> unless = new TreeSet<>();
    private final Set<String> questions = new TreeSet<>();
    /** What a member of a set may be. */
    private final Set<String> anything = new TreeSet<>();

    private final Set<Problem> problems = new LinkedHashSet<>();

    private TableLint(CodeBook book, Set<String> rules) {
        this.book = book;
        this.rules = rules;
        book.tables().stream()
                .flatMap(t -> t.rows().stream())
                .map(DatedRow::row)
                .forEach(this::index);
        for (Question question : book.vocabulary().questions()) {
            questions.add(question.id());
            words.add(question.id());
            words.addAll(book.vocabulary().choices(question).keySet());
        }
        Stream.of(agents, classes, sets, words).forEach(anything::addAll);
    }

    /** Checks the tables of a code; {@code rules} are the ids of those that may decide under it. */
    static Set<Problem> check(CodeBook book, Set<String> rules, SourceList sources) {
        TableLint lint = new TableLint(book, rules);
        Map<String, String> ids = new HashMap<>();
        for (TableFile table : book.tables()) {
            String other = ids.putIfAbsent(table.id(), table.file());
            if (other != null) {
                lint.say(table, 1, "id", "is the id of " + other + " too.", "choose another id.");
            }
            List<Problem> cited = new ArrayList<>();
            sources.require(table.citation().source(), table.file(), 1, "source", cited);
            for (DatedRow row : table.rows()) {
                if (!row.source().equals(table.citation().source())) {
                    sources.require(row.source(), table.file(), row.line(), "source", cited);
                }
                row.also().forEach(also -> sources.require(also, table.file(), row.line(), "also", cited));
                lint.row(table, row);
            }
            lint.problems.addAll(cited);
        }
        lint.problems.addAll(Overlaps.in(book.tables()));
        Overlaps.alike(book.tables()).forEach(lint::gaps);
        lint.problems.addAll(EveryAgent.check(book));
        return lint.problems;
    }

    private void index(Row row) {
        if (row instanceof Agent agent) {
            agents.add(agent.id());
        } else if (row instanceof DeviceClass device) {
            classes.add(device.id());
        } else if (row instanceof Member member) {
            sets.add(member.set());
            if (member.set().equals("circumstances-never-open")) {
                neverOpen.add(member.item());
            }
        } else if (row instanceof Term term) {
            (term.catalogue().equals("unless") ? unless : words).add(term.id());
        } else if (row instanceof FilterMatch filter) {
            words.add(filter.system());
        } else if (row instanceof EyeShade shade) {
            words.add(shade.table());
        } else if (row instanceof Duty duty) {
            words.add(duty.id());
        }
    }

    /** A duty on a circumstance that may be open must say what would make it go away, or it would drop out unseen. */
    private void condition(TableFile table, int line, DutyCondition condition) {
        if (!neverOpen.contains(condition.circumstance())) {
            known(table, line, "when", condition.spelled(), unless);
        }
    }

    /** Two documents that agree are two names; one reviewer's check is a name as well. */
    private void secondCopy(TableFile table, DatedRow dated) {
        if (dated.row().ref().citation().confidence() == Confidence.CROSS_CHECKED
                && dated.also().isEmpty()
                && dated.affirmations().isEmpty()) {
            say(
                    table,
                    dated.line(),
                    "confidence",
                    "is cross-checked without the second document.",
                    "name it, also: [DOCUMENT], or say read where one was seen and memory where none was.");
        }
    }

    private void row(TableFile table, DatedRow dated) {
        Row row = dated.row();
        int line = dated.line();
        secondCopy(table, dated);
        if (row instanceof Agent agent) {
            known(table, line, "peaks", agent.highest(), Agent.PEAKS);
        } else if (row instanceof Limit limit) {
            known(table, line, "agent", limit.agent(), agents);
        } else if (row instanceof DangerLevel danger) {
            known(table, line, "agent", danger.agent(), agents);
        } else if (row instanceof NoneListed none) {
            known(table, line, "list", none.list(), EveryAgent.LISTS);
            if (!none.agent().equals(NoneListed.EVERY_OTHER)) {
                known(table, line, "agents", none.agent(), agents);
            }
        } else if (row instanceof FilterMatch filter) {
            known(table, line, "agent", filter.agent(), agents);
        } else if (row instanceof Emitter emitter) {
            known(table, line, "agent", emitter.agent(), agents);
            known(table, line, "with", emitter.processes(), sets);
            emitter(table, line, emitter);
        } else if (row instanceof AssignedFactor factor) {
            known(table, line, "class", factor.deviceClass(), classes);
            known(table, line, "against", factor.against(), HOLDINGS);
            if (!factor.provided().equals("always")) {
                known(table, line, "provided", factor.provided(), words);
            }
        } else if (row instanceof Member member) {
            for (String part : member.item().split("/")) {
                known(table, line, "items", part, anything);
            }
        } else if (row instanceof ClauseFor clause) {
            known(table, line, "rule", clause.rule(), rules);
        } else if (row instanceof DutyCondition condition) {
            condition(table, line, condition);
        }
    }

    private void emitter(TableFile table, int line, Emitter emitter) {
        known(table, line, "of", emitter.question(), questions);
        book.vocabulary()
                .question(emitter.question())
                .ifPresent(q -> known(
                        table,
                        line,
                        "is",
                        emitter.value(),
                        book.vocabulary().choices(q).keySet()));
    }

    private void known(TableFile table, int line, String cell, String word, Set<String> known) {
        if (!known.contains(word)) {
            say(table, line, cell, "names \"" + word + "\", which is not there.", Nearest.remedy(word, known));
        }
    }

    /** Days between a row that ends and the row that follows it. */
    private void gaps(List<Overlaps.Placed> same) {
        for (Overlaps.Placed ended : same) {
            LocalDate end = ended.row().until();
            if (end.isBefore(CodeSummary.NEVER)
                    && same.stream().noneMatch(p -> p.row().inForce(end))) {
                same.stream()
                        .map(p -> p.row().from())
                        .filter(from -> from.isAfter(end))
                        .min(LocalDate::compareTo)
                        .ifPresentOrElse(
                                from -> ends(
                                        ended,
                                        ", and the row that follows begins on " + from + ".",
                                        "write until: " + from
                                                + "; until names the first day on which a row no longer holds."),
                                () -> {
                                    if (ended.row().row() instanceof Threshold) {
                                        ends(
                                                ended,
                                                ", and nothing follows: what is compared with it falls silent.",
                                                "add the row that follows, or take until away.");
                                    }
                                });
            }
        }
    }

    private void ends(Overlaps.Placed row, String message, String maybe) {
        say(
                row.table(),
                row.row().line(),
                row.row().row().ref().key(),
                "ends on " + row.row().until() + message,
                maybe);
    }

    private void say(TableFile table, int line, String field, String message, String maybe) {
        problems.add(new Problem(table.file(), line, field, message, maybe));
    }
}
