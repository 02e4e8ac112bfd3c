package org.fumewarden.report.html;

import java.util.List;
import org.apache.commons.text.StringEscapeUtils;

/** Writes well-formed HTML: every element is closed, and text from a file can never become markup. */
public final class Markup {
    private final StringBuilder out = new StringBuilder();

    /** An element without a class. */
    public Markup element(String tag, Runnable inside) {
        return element(tag, "", inside);
    }

    /** An element with a class, which is left out when empty. */
    public Markup element(String tag, String className, Runnable inside) {
        out.append('<').append(tag);
        if (!className.isEmpty()) {
            attribute("class", className);
        }
        out.append('>');
        inside.run();
        out.append("</").append(tag).append(">\n");
        return this;
    }

    /** An element that holds nothing but words. */
    public Markup words(String tag, String className, String text) {
        return element(tag, className, () -> text(text));
    }

    /** A section with a name for those who hear the page. */
    public Markup section(String id, String title, Runnable inside) {
        out.append("<section");
        attribute("aria-labelledby", id);
        out.append(">\n<h2");
        attribute("id", id);
        out.append('>');
        text(title);
        out.append("</h2>\n");
        inside.run();
        out.append("</section>\n");
        return this;
    }

    /** A table whose first cell of each row is a heading. */
    public Markup table(String className, List<String> heads, Runnable rows) {
        return element("table", className, () -> {
            if (!heads.isEmpty()) {
                element(
                        "thead",
                        () -> element("tr", () -> {
                            for (String head : heads) {
                                out.append("<th scope=\"col\">");
                                text(head);
                                out.append("</th>");
                            }
                        }));
            }
            element("tbody", rows);
        });
    }

    /** The heading cell of a row. */
    public Markup rowHead(String text) {
        out.append("<th scope=\"row\">");
        text(text);
        out.append("</th>");
        return this;
    }

    /** Words, escaped; control characters that XML forbids are dropped. */
    public Markup text(String text) {
        out.append(StringEscapeUtils.escapeXml10(Glued.in(text)));
        return this;
    }

    /** Markup of our own, written as it is. Never give it text that came from a file. */
    public Markup own(String markup) {
        out.append(markup);
        return this;
    }

    private void attribute(String name, String value) {
        out.append(' ')
                .append(name)
                .append("=\"")
                .append(StringEscapeUtils.escapeXml10(value))
                .append('"');
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
