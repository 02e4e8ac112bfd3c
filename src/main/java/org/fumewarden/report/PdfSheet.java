package org.fumewarden.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The HTML sheet as a tagged PDF on A4, with its fonts inside. */
public final class PdfSheet {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";

    private PdfSheet() {}

    /**
     * Sets a sheet.
     *
     * @param html what the HTML form of a sheet: it refers to nothing outside itself, so nothing is ever fetched
     */
    public static byte[] write(String html) {
        XRLog.setLoggingEnabled(false);
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfUaAccessibility(true);
            builder.useUriResolver((base, uri) -> null);
            builder.useSVGDrawer(new BatikSVGDrawer());
            font(builder, "DejaVuSans.ttf", "DejaVu Sans", 400);
            font(builder, "DejaVuSans-Bold.ttf", "DejaVu Sans", 700);
            font(builder, "DejaVuSansMono.ttf", "DejaVu Sans Mono", 400);
            builder.withProducer("Fumewarden");
            builder.withHtmlContent(html, null);
            builder.toStream(out);
            builder.run();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
        builder.useFont(() -> stream(file), family, weight, FontStyle.NORMAL, true);
    }

    private static InputStream stream(String file) {
        InputStream in = PdfSheet.class.getResourceAsStream(FONTS + file);
        if (in == null) {
            throw new IllegalStateException("the program lacks its font " + file);
        }
        return in;
    }
}
