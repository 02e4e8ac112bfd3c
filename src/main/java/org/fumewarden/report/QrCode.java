package org.fumewarden.report;

import io.nayuki.qrcodegen.QrCode.Ecc;

/** A text as a QR code (ISO/IEC 18004), as a drawing for HTML and PDF. */
public final class QrCode {
    private static final int QUIET = 4;

    private QrCode() {}

    /**
     * The code as SVG.
     *
     * @param name says what it holds, for those who hear the page
     */
    public static String svg(String text, String name) {
        io.nayuki.qrcodegen.QrCode code = io.nayuki.qrcodegen.QrCode.encodeText(text, Ecc.MEDIUM);
        int side = code.size + 2 * QUIET;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.size; y++) {
            for (int x = 0; x < code.size; x++) {
                if (code.getModule(x, y)) {
                    path.append('M')
                            .append(x + QUIET)
                            .append(' ')
                            .append(y + QUIET)
                            .append("h1v1h-1z");
                }
            }
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"110\" height=\"110\" role=\"img\" aria-label=\""
                + name
                + "\" viewBox=\"0 0 " + side + " " + side + "\"><rect width=\"" + side + "\" height=\"" + side
                + "\" fill=\"#ffffff\"/><path fill=\"#000000\" d=\"" + path + "\"/></svg>";
    }
}
