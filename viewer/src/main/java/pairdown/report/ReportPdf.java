package pairdown.report;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.font.FontMappers;

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
        try (PdfCharts charts = new PdfCharts()) {
            builder.useSVGDrawer(charts);
            builder.run();
        }
    }

    private static FSSupplier<InputStream> font(String path) {
        return () -> new ByteArrayInputStream(withoutSubstitutions(path));
    }

    /**
     * The font with its table of glyph substitutions under a name that nobody asks for: trying its
     * rules on every word takes most of the time of a PDF, and a report needs no ligatures. The
     * directory of tables follows the first 12 bytes, 16 bytes each, the name first. Source:
     * OpenType 1.9, "Table directory".
     */
    private static byte[] withoutSubstitutions(String path) {
        try (InputStream in = open(path)) {
            byte[] font = in.readAllBytes();
            int tables = ((font[4] & 0xff) << 8) | (font[5] & 0xff);
            for (int at = 12; at < 12 + 16 * tables; at += 16) {
                if (new String(font, at, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                    font[at] = 'x';
                }
            }
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
