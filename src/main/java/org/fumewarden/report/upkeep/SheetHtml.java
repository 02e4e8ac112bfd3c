package org.fumewarden.report.upkeep;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.text.StringEscapeUtils;

/** Writes a sheet as one HTML page without scripts or outside files, fit for printing. */
final class SheetHtml {
    private static final String STYLE = """
            body{font:11pt/1.4 Georgia,"Noto Serif",serif;max-width:190mm;margin:8mm auto;padding:0 6mm;color:#1c1f22}
            h1{font-size:17pt;border-bottom:3pt double #355;padding-bottom:2mm}
            h2{font-size:12.5pt;margin:6mm 0 2mm;color:#244}
            table{border-collapse:collapse;width:100%;margin:2mm 0}
            th,td{border:.4pt solid #789;padding:1.2mm 2mm;text-align:start;vertical-align:top}
            th{background:#eef3f3;font-weight:600}
            .warning{border:2pt solid #822;padding:2mm 3mm;font-weight:700}
            .ticks{list-style:none;padding-inline-start:0}
            .ticks li{position:relative;padding-inline-start:1.7em}
            .ticks li::before{content:"\\2610";position:absolute;inset-inline-start:0}
            .sign{display:flex;gap:8mm;margin-top:10mm}
            .sign span{flex:1;border-top:.6pt solid #333;padding-top:1mm}
            @media print{body{margin:0;max-width:none}tr,li{break-inside:avoid}h2{break-after:avoid}}
            """;

    private SheetHtml() {}

    static String write(Sheet sheet) {
        return "<!DOCTYPE html>\n<html lang=\"" + sheet.language() + "\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
                + safe(sheet.title()) + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<h1 dir=\"auto\">"
                + safe(sheet.title()) + "</h1>\n"
                + sheet.blocks().stream().map(SheetHtml::block).collect(Collectors.joining())
                + "</body>\n</html>\n";
    }

    private static String block(Sheet.Block block) {
        if (block instanceof Sheet.Heading heading) {
            return tag("h2", heading.text());
        }
        if (block instanceof Sheet.Paragraph paragraph) {
            return tag("p", paragraph.text());
        }
        if (block instanceof Sheet.Warning warning) {
            return "<p class=\"warning\" role=\"alert\" dir=\"auto\">" + safe(warning.text()) + "</p>\n";
        }
        if (block instanceof Sheet.Points points) {
            return "<ul>\n" + items(points.items()) + "</ul>\n";
        }
        if (block instanceof Sheet.Ticks ticks) {
            return "<ul class=\"ticks\">\n" + items(ticks.items()) + "</ul>\n";
        }
        if (block instanceof Sheet.Pairs pairs) {
            return "<table>\n"
                    + pairs.pairs().stream()
                            .map(p -> "<tr><th scope=\"row\" dir=\"auto\">" + safe(p.name()) + "</th>" + cell(p.value())
                                    + "</tr>\n")
                            .collect(Collectors.joining())
                    + "</table>\n";
        }
        if (block instanceof Sheet.Table table) {
            return table(table);
        }
        Sheet.Signatures signatures = (Sheet.Signatures) block;
        return "<p class=\"sign\">"
                + signatures.names().stream()
                        .map(n -> "<span>" + safe(n) + ", " + safe(signatures.day()) + "</span>")
                        .collect(Collectors.joining())
                + "</p>\n";
    }

    private static String table(Sheet.Table table) {
        String head = table.columns().stream()
                .map(c -> "<th scope=\"col\">" + safe(c) + "</th>")
                .collect(Collectors.joining());
        String rows = table.rows().stream()
                .map(r -> "<tr>" + r.stream().map(SheetHtml::cell).collect(Collectors.joining()) + "</tr>\n")
                .collect(Collectors.joining());
        return "<table>\n<thead><tr>" + head + "</tr></thead>\n<tbody>\n" + rows + "</tbody>\n</table>\n";
    }

    private static String items(List<String> items) {
        return items.stream().map(i -> tag("li", i)).collect(Collectors.joining());
    }

    private static String cell(String text) {
        return "<td dir=\"auto\">" + safe(text) + "</td>";
    }

    private static String tag(String name, String text) {
        return "<" + name + " dir=\"auto\">" + safe(text) + "</" + name + ">\n";
    }

    /** Only what HTML needs is escaped, so that every script stays readable in the source as well. */
    static String safe(String text) {
        return StringEscapeUtils.escapeXml10(text).replace("\n", "<br>");
    }
}
