package org.fumewarden.cli;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.fumewarden.codes.InputException;
import org.fumewarden.codes.Located;
import org.fumewarden.codes.Problem;
import org.fumewarden.codes.YamlFiles;
import org.fumewarden.report.upkeep.CsvSheet;
import org.fumewarden.upkeep.StoreException;

/** Forms from a YAML or CSV file, or from words like {@code field=value}. */
final class FormSource {
    /**
     * A form not yet understood.
     *
     * @param place where it stands, for complaints
     */
    record Form(String place, Map<String, String> values) {
        /** What is made of the form; a complaint about a value says where the form stands. */
        <T> T placed(Supplier<T> made) {
            try {
                return made.get();
            } catch (StoreException e) {
                if (e.reason() != StoreException.Cause.REFUSED) {
                    throw e;
                }
                throw new InputException(new Problem(place, 0, e.field(), e.saying(), e.remedy()));
            }
        }
    }

    private FormSource() {}

    /**
     * What each form becomes.
     *
     * @throws InputException with what is wrong in all of them
     */
    static <T> List<T> each(List<Form> forms, Function<Form, T> reading) {
        List<T> made = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Form form : forms) {
            try {
                made.add(reading.apply(form));
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return made;
    }

    static Form words(List<String> words) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals <= 0) {
                throw new InputException(new Problem(
                        "command line:", 0, "", "holds \"" + Located.shown(word) + "\".", "write it as field=value."));
            }
            if (values.put(
                            word.substring(0, equals).strip(),
                            word.substring(equals + 1).strip())
                    != null) {
                throw new InputException(new Problem(
                        "command line:", 0, word.substring(0, equals), "is given twice.", "keep one of the two."));
            }
        }
        return new Form("command line:", values);
    }

    /** The forms of a file, else of the words, else of the answers at a terminal. */
    static List<Form> given(
            Path file,
            List<String> words,
            Supplier<Optional<Prompts>> terminal,
            Function<Prompts, Form> asked,
            Problem nothing) {
        if (file != null) {
            return file(file);
        }
        if (!words.isEmpty()) {
            return List.of(words(words));
        }
        return List.of(asked.apply(terminal.get().orElseThrow(() -> new InputException(nothing))));
    }

    static List<Form> file(Path path) {
        String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".csv") ? csv(path) : yaml(path);
    }

    private static List<Form> csv(Path path) {
        String text = YamlFiles.text(path.toString(), YamlFiles.bytes(path));
        String heads = text.lines().findFirst().orElse("");
        if (heads.isBlank()) {
            throw new InputException(new Problem(
                    path.toString(), 1, "", "has no heads of columns.", "name each column once, in the first line."));
        }
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(heads))
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreEmptyLines(true)
                .setTrim(true)
                .get();
        List<Form> forms = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord row : parser) {
                if (!row.isConsistent()) {
                    throw new InputException(new Problem(
                            path.toString(),
                            (int) parser.getCurrentLineNumber(),
                            "",
                            "has " + row.size() + " cells under "
                                    + parser.getHeaderNames().size() + " heads.",
                            "put cells that hold a " + delimiter(heads).replace("\t", "tab") + " in double quotes."));
                }
                Map<String, String> values = new LinkedHashMap<>();
                row.toMap().forEach((head, cell) -> {
                    if (!cell.isEmpty()) {
                        values.put(head, CsvSheet.original(cell));
                    }
                });
                forms.add(new Form(path + ":" + parser.getCurrentLineNumber(), values));
            }
            if (forms.isEmpty()) {
                throw new InputException(new Problem(
                        path.toString(),
                        1,
                        "",
                        "has heads of columns and no line below.",
                        "add a line for each entry."));
            }
        } catch (IOException | IllegalArgumentException | java.io.UncheckedIOException | IllegalStateException e) {
            throw notCsv(path, String.valueOf(e.getMessage()));
        }
        return forms;
    }

    /** Spreadsheets of countries with a decimal comma part columns with semicolons. */
    private static String delimiter(String heads) {
        return List.of(",", ";", "\t").stream()
                .filter(heads::contains)
                .findFirst()
                .orElse(",");
    }

    private static InputException notCsv(Path path, String reason) {
        Matcher open = Pattern.compile("(?:startline |at line: )(\\d+)").matcher(reason);
        if (open.find()) {
            return new InputException(new Problem(
                    path.toString(),
                    Integer.parseInt(open.group(1)),
                    "",
                    "has a quotation mark out of place, on this line or where its cell begins.",
                    "close each quotation mark, and write one within a cell twice."));
        }
        return new InputException(new Problem(
                path.toString(),
                0,
                "",
                "is not CSV: " + reason.replaceAll("^\\S*Exception: ", "") + ".",
                "name each column once, in the first line."));
    }

    private static List<Form> yaml(Path path) {
        Located root = YamlFiles.read(path);
        List<Located> items = root.isList() ? root.items() : List.of(root);
        List<Form> forms = new ArrayList<>();
        for (Located item : items) {
            Map<String, String> values = new LinkedHashMap<>();
            item.entries()
                    .forEach((field, value) -> values.put(
                            field,
                            value.isList() ? String.join(",", value.words()) : value.isNull() ? "" : value.text()));
            forms.add(new Form(path + ":" + item.line(), values));
        }
        root.settle();
        return forms;
    }
}
