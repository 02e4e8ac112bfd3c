package org.fumewarden.web;

import java.util.List;
import org.fumewarden.report.html.Markup;
import org.fumewarden.report.html.QrCode;
import org.fumewarden.report.html.Words;
import org.fumewarden.upkeep.Item;

/** Labels to print and stick on: the id in large letters, and as a QR code that holds the id and nothing else. */
final class Labels {
    private static final String STYLE = """
            @page{size:A4;margin:10mm}
            body{font:10pt/1.25 "DejaVu Sans",Verdana,sans-serif;margin:4mm;color:#000;background:#fff}
            h1{font-size:12pt;margin:0 0 4mm}
            ul{list-style:none;margin:0;padding:0;display:grid;grid-template-columns:repeat(auto-fill,62mm);gap:3mm}
            li{border:.4pt solid #000;padding:2mm;height:28mm;display:flex;gap:2mm;align-items:center;overflow:hidden;break-inside:avoid}
            svg{width:24mm;height:24mm;flex:none}
            b{display:block;font-size:14pt;overflow-wrap:anywhere}
            span{overflow-wrap:anywhere}
            @media print{h1{display:none}body{margin:0}}
            """;

    private Labels() {}

    static String html(List<Item> items, Words words) {
        Markup out = new Markup();
        out.own("<!DOCTYPE html>\n<html lang=\"" + words.language() + "\">\n<head><meta charset=\"utf-8\"><title>"
                + words.say("ui.labels.title") + "</title>\n<style>"
                + STYLE + "</style></head>\n");
        out.element("body", () -> {
            out.words("h1", "", words.say("ui.labels.count", items.size()));
            out.element(
                    "ul",
                    () -> items.forEach(item -> out.element("li", () -> {
                        out.own(QrCode.svg(item.id()));
                        out.element("div", () -> {
                            out.words("b", "", item.id());
                            out.words("span", "", item instanceof Item.Wearer ? "" : item.label());
                        });
                    })));
        });
        return out.own("</html>\n").toString();
    }
}
