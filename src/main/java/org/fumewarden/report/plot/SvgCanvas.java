package org.fumewarden.report.plot;

import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;

/** An SVG picture that is drawn shape by shape, with a title and a description for those who listen to it. */
final class SvgCanvas {
    private final int width;
    private final int height;
    private final String ink;
    private final StringBuilder body = new StringBuilder();

    SvgCanvas(int width, int height, String ink) {
        this.width = width;
        this.height = height;
        this.ink = ink;
    }

    /** A line; a dash such as {@code 8 4} makes it thicker too, none leaves it thin. */
    void line(double x1, double y1, double x2, double y2, String colour, String dash) {
        add(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"%s/>\n",
                x1, y1, x2, y2, colour, dash.isEmpty() ? "" : " stroke-width=\"2\" stroke-dasharray=\"" + dash + "\"");
    }

    /** Words; the anchor is start, middle or end. */
    void text(double x, double y, String anchor, String colour, String words) {
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>\n",
                x, y, anchor, colour, escape(words));
    }

    void rect(double x, double y, double wide, double high, String fill) {
        add(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"%s\" stroke=\"%s\"/>\n",
                x, y, wide, high, fill, ink);
    }

    /** A filled circle; its words are shown by a pointer that rests on it. */
    void circle(double x, double y, String words) {
        add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\">%s</circle>\n", x, y, ink, title(words));
    }

    /** An outline that begins at a point and goes on in steps from there. */
    void path(double x, double y, String steps, String words) {
        add("<path d=\"M%.1f %.1f%s\" fill=\"none\" stroke=\"%s\">%s</path>\n", x, y, steps, ink, title(words));
    }

    private static String title(String words) {
        return words.isEmpty() ? "" : "<title>" + escape(words) + "</title>";
    }

    /** The whole picture. */
    String svg(String title, String description) {
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
                        + " font-size=\"12\" fill=\"%s\">\n<title>%s</title>\n<desc>%s</desc>\n"
                        + "<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>\n%s</svg>\n",
                width,
                height,
                ink,
                escape(title),
                escape(description),
                body);
    }

    private void add(String format, Object... values) {
        body.append(String.format(Locale.ROOT, format, values));
    }

    private static String escape(String text) {
        return StringEscapeUtils.escapeXml10(text);
    }
}
