package pairdown.report;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;

import org.apache.pdfbox.pdmodel.font.FontMappers;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;

/**
 * The report's page as a PDF on A4, made from the same HTML. The font comes along in the file: none
 * of the machine's is looked for.
 */
public final class ReportPdf {
    private static final String FAMILY = "Inter";
    private static final String REGULAR = "/fonts/Inter-Regular.ttf";
    private static final String SEMI_BOLD = "/fonts/Inter-SemiBold.ttf";

    static {
        FontMappers.set(new OneFont(REGULAR));
        XRLog.setLoggerImpl(new QuietLog());
    }

    private ReportPdf() {}

    /**
     * Writes a page that {@link Report#html} made.
     *
     * @throws IOException if it can't be written
     */
    public static void write(String html, OutputStream out) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.withHtmlContent(html, "/");
        builder.withProducer("Pairdown");
        builder.useFont(font(REGULAR), FAMILY, 400, FontStyle.NORMAL, true);
        builder.useFont(font(SEMI_BOLD), FAMILY, 600, FontStyle.NORMAL, true);
        builder.toStream(out);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.run();
        }
    }

    private static FSSupplier<InputStream> font(String path) {
        return () -> open(path);
    }

    static InputStream open(String path) {
        InputStream in = ReportPdf.class.getResourceAsStream(path);
        if (in == null) {
            throw new UncheckedIOException(
                    new IOException("the program is incomplete: no " + path));
        }
        return in;
    }
}
