package org.fumewarden.cli;

import java.util.Collections;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fumewarden.report.html.Speech;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The help of commands in another language: each of its sentences is said by the phrases of that language. */
final class HelpWords {
    private final Speech speech;
    private final Map<String, Object> words = new LinkedHashMap<>();

    private HelpWords(Speech speech) {
        this.speech = speech;
    }

    /** Gives a command line and all its commands their help in the language of a speech. */
    static CommandLine of(CommandLine line, Speech speech) {
        if (!speech.words().ofRuleBase()) {
            HelpWords help = new HelpWords(speech);
            help.take(line);
            line.setResourceBundle(new Said(help.words));
        }
        return line;
    }

    private void take(CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        String name = spec.qualifiedName(".") + ".";
        UsageMessageSpec usage = spec.usageMessage();
        for (int i = 0; i < usage.description().length; i++) {
            words.put(name + "usage.description." + i, said(usage.description()[i]));
        }
        words.put(name + "usage.footer", said(usage.footer()));
        words.put(name + "usage.synopsisHeading", speech.quoting("Usage:") + " ");
        words.put(name + "usage.commandListHeading", speech.quoting("Commands:") + "%n");
        words.put(name + "usage.exitCodeListHeading", speech.quoting("Exit codes:") + "%n");
        int at = 0;
        for (Map.Entry<String, String> code : usage.exitCodeList().entrySet()) {
            words.put(name + "usage.exitCodeList." + at++, code.getKey() + ":" + speech.quoting(code.getValue()));
        }
        for (OptionSpec option : spec.options()) {
            String key = option.longestName().replaceFirst("^-+", "");
            words.put(name + key, said(option.description()));
        }
        for (PositionalParamSpec given : spec.positionalParameters()) {
            words.put(name + given.paramLabel() + "[" + given.index() + "]", said(given.description()));
        }
        line.getSubcommands().values().forEach(this::take);
    }

    /** Each line in the language; a line of an example stays. */
    private String said(String... lines) {
        return Stream.of(lines)
                .map(line -> line.isBlank() || line.startsWith("  ") ? line : speech.quoting(line))
                .collect(Collectors.joining("%n"));
    }

    /** Words by their keys. */
    private static final class Said extends ResourceBundle {
        private final Map<String, Object> words;

        Said(Map<String, Object> words) {
            this.words = words;
        }

        @Override
        protected Object handleGetObject(String key) {
            return words.get(key);
        }

        @Override
        public Enumeration<String> getKeys() {
            return Collections.enumeration(words.keySet());
        }
    }
}
