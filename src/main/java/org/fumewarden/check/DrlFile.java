package org.fumewarden.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.fumewarden.codes.RuleFolder;

/**
 * One rule file as text.
 *
 * @param folder rule folder, {@code shared} or a code
 * @param phase name of the file without its ending
 */
record DrlFile(String file, String folder, String phase, DrlText text, List<DrlRule> rules) {
    private static final Pattern RULE = Pattern.compile("(?m)^[ \\t]*rule\\b\\s*(\"[^\"\\n]*\"?)?");
    private static final Pattern END = Pattern.compile("(?m)^[ \\t]*(end)\\b");
    private static final Pattern WHEN = Pattern.compile("(?m)^[ \\t]*(when)\\b");
    private static final Pattern THEN = Pattern.compile("(?m)^[ \\t]*(then)\\b");
    private static final Pattern META = Pattern.compile("@(\\w+)\\s*\\(\\s*\"((?:[^\"\\\\]|\\\\.)*)\"\\s*\\)");

    /** Reads every rule file of a rule base. */
    static List<DrlFile> readAll(RuleFolder base) {
        return base.names("", ".drl").stream().map(name -> read(base, name)).toList();
    }

    private static DrlFile read(RuleFolder base, String name) {
        DrlText text = DrlText.of(base.text(name));
        String file = base.origin() + "/" + name;
        String folder = StringUtils.substringBefore(name, "/");
        String phase = StringUtils.removeEnd(StringUtils.substringAfterLast(name, "/"), ".drl");
        List<DrlRule> rules = new ArrayList<>();
        Matcher start = RULE.matcher(text.masked());
        int from = 0;
        while (start.find(from)) {
            int end = find(END, text, start.end(), text.masked().length());
            rules.add(rule(file, folder, phase, text, start, end));
            from = Math.max(end, start.end());
        }
        return new DrlFile(file, folder, phase, text, List.copyOf(rules));
    }

    private static DrlRule rule(String file, String folder, String phase, DrlText text, Matcher start, int end) {
        String name = start.group(1) == null
                ? ""
                : StringUtils.unwrap(text.plain().substring(start.start(1), start.end(1)), '"');
        int when = find(WHEN, text, start.end(), end);
        int then = find(THEN, text, when, end);
        DrlText head = text.part(start.end(), when);
        Map<String, String> meta = new LinkedHashMap<>();
        Matcher matcher = META.matcher(head.plain());
        while (matcher.find()) {
            meta.put(matcher.group(1), matcher.group(2));
        }
        int line = lineAt(text, start.start());
        DrlText consequence = text.part(Math.min(then + 4, end), end);
        return new DrlRule(
                file,
                folder,
                phase,
                name,
                line,
                lineAt(text, end) - line + 1,
                meta,
                head,
                text.part(Math.min(when + 4, then), then),
                consequence,
                lineAt(text, when),
                DrlRule.concluded(consequence));
    }

    /** The place of the keyword itself, or the limit when it is not there. */
    private static int find(Pattern keyword, DrlText text, int from, int limit) {
        Matcher matcher = keyword.matcher(text.masked());
        boolean found = matcher.find(Math.min(from, text.masked().length()));
        return found && matcher.start() < limit ? matcher.start(1) : limit;
    }

    /** The line of a place, 1 for the first. */
    static int lineAt(DrlText text, int place) {
        return 1 + StringUtils.countMatches(text.masked().substring(0, place), '\n');
    }
}
