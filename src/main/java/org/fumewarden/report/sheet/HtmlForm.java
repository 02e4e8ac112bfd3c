package org.fumewarden.report.sheet;

import java.util.List;
import org.fumewarden.codes.ProgramFile;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.QrCode;

/** A sheet as one HTML file that needs nothing else: no script, no network. It is well-formed XML as well. */
public final class HtmlForm {
    private final Markup out = new Markup();

    private HtmlForm() {}

    /** Writes the sheet. */
    public static String write(Sheet sheet) {
        return new HtmlForm().whole(sheet);
    }

    /** The style of the sheet, which also stands inside it. */
    public static String style() {
        return resource("sheet.css");
    }

    private static String resource(String name) {
        return ProgramFile.text(HtmlForm.class, name).replace("\r\n", "\n");
    }

    private String whole(Sheet sheet) {
        out.own("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + sheet.language() + "\">\n");
        out.element("head", () -> {
            out.own("<meta charset=\"utf-8\"/>\n");
            out.own("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
            out.own("<meta name=\"generator\" content=\"Fumewarden\"/>\n");
            out.words("title", "", sheet.title() + " - " + sheet.kind());
            out.own("<style>").own(style()).own("</style>\n");
        });
        out.element("body", () -> {
            out.element("header", () -> {
                out.own(resource("mark.svg"));
                out.words("h1", "", sheet.title());
                if (!sheet.under().isEmpty()) {
                    out.words("p", "under", sheet.under());
                }
            });
            out.element("main", "page " + sheet.state(), () -> sheet.page().forEach(this::part));
            out.element("footer", () -> out.words("p", "closing", sheet.closing()));
            if (!sheet.annex().isEmpty()) {
                out.element("div", "annex", () -> sheet.annex().forEach(this::part));
            }
        });
        return out.own("</html>\n").toString();
    }

    private void part(Part part) {
        Runnable lines = () -> out.element("div", "lines " + part.key(), () -> lines(part.lines()));
        if (part.title().isEmpty()) {
            out.element("section", lines);
        } else {
            out.section(part.key(), part.title(), lines);
        }
    }

    /** Sentences that stand together are one list. */
    private void lines(List<Line> lines) {
        boolean listed = false;
        for (Line line : lines) {
            boolean item = line instanceof Line.Says;
            if (item != listed) {
                out.own(item ? "<ul class=\"sentences\">\n" : "</ul>\n");
                listed = item;
            }
            line(line);
        }
        if (listed) {
            out.own("</ul>\n");
        }
    }

    private void line(Line line) {
        if (line instanceof Line.State state) {
            out.element("p", "state", () -> out.words("strong", "word", state.word())
                    .text(" " + state.says()));
        } else if (line instanceof Line.Says says) {
            says(says);
        } else if (line instanceof Line.Head head) {
            out.words("h3", "", head.text());
        } else if (line instanceof Line.Table table) {
            table(table);
        } else if (line instanceof Line.Blanks blanks) {
            out.element(
                    "table",
                    "blanks",
                    () -> out.element("tr", () -> blanks.names()
                            .forEach(n -> out.words("td", "name", n).words("td", "blank", "\u00A0"))));
        } else if (line instanceof Line.Scan scan) {
            out.element("div", "scan", () -> out.own(QrCode.svg(scan.held())));
            out.words("p", "scanned", scan.words());
        } else if (line instanceof Line.Drawing drawing) {
            out.element("figure", "plot", () -> {
                out.own(drawing.svg());
                in("figcaption", drawing.language(), drawing.words());
            });
        }
    }

    private void says(Line.Says says) {
        String sign = says.sign().name().toLowerCase(java.util.Locale.ROOT);
        out.element("li", sign, () -> {
            if (says.sign() != Sign.NONE) {
                out.words("span", "sign", says.sign().drawn());
            }
            if (!says.lead().isEmpty()) {
                out.words("strong", "lead", says.lead()).text(" ");
            }
            in("span", says.language(), says.says());
            if (!says.notes().isEmpty()) {
                out.text(" ").words("span", "notes", "[" + says.notes() + "]");
            }
        });
    }

    private void in(String tag, String language, String words) {
        out.own("<" + tag + (language.isEmpty() ? "" : " lang=\"" + language + "\"") + ">");
        out.text(words).own("</" + tag + ">");
    }

    private void table(Line.Table table) {
        out.table("cells", table.headed() ? table.heads() : List.of(), () -> table.rows()
                .forEach(row -> out.element("tr", () -> {
                    out.rowHead(row.get(0));
                    for (int i = 1; i < row.size(); i++) {
                        out.words("td", table.numbers().contains(i) ? "number" : "", row.get(i));
                    }
                })));
    }
}
