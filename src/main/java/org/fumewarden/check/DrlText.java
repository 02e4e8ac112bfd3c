package org.fumewarden.check;

/**
 * The text of a rule file in two readings of the same length.
 *
 * @param plain without comments
 * @param masked without comments and without what stands in quotes, so that only the words of the language are left
 */
record DrlText(String plain, String masked) {

    static DrlText of(String text) {
        StringBuilder plain = new StringBuilder(text);
        StringBuilder masked = new StringBuilder(text);
        int at = 0;
        while (at < text.length()) {
            int end = at + 1;
            if (text.startsWith("//", at)) {
                end = to(text.indexOf('\n', at), text);
                blank(plain, at, end);
                blank(masked, at, end);
            } else if (text.startsWith("/*", at)) {
                end = to(text.indexOf("*/", at + 2) + 2, text);
                blank(plain, at, end);
                blank(masked, at, end);
            } else if (text.charAt(at) == '"') {
                end = quoteEnd(text, at);
                blank(masked, at + 1, Math.max(at + 1, end - 1));
            }
            at = end;
        }
        return new DrlText(plain.toString(), masked.toString());
    }

    private static int to(int found, String text) {
        return found < 2 ? text.length() : found;
    }

    private static int quoteEnd(String text, int start) {
        for (int i = start + 1; i < text.length(); i++) {
            if (text.charAt(i) == '\\') {
                i++;
            } else if (text.charAt(i) == '"') {
                return i + 1;
            }
        }
        return text.length();
    }

    private static void blank(StringBuilder text, int start, int end) {
        for (int i = start; i < Math.min(end, text.length()); i++) {
            if (text.charAt(i) != '\n') {
                text.setCharAt(i, ' ');
            }
        }
    }

    DrlText part(int start, int end) {
        return new DrlText(plain.substring(start, end), masked.substring(start, end));
    }

    /** The place after the bracket that closes the one at {@code open}, or the end of the text. */
    int afterBracket(int open) {
        int depth = 0;
        for (int i = open; i < masked.length(); i++) {
            char c = masked.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth == 0) {
                return i + 1;
            }
        }
        return masked.length();
    }
}
