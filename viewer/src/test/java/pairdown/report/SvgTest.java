package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.StringReader;
import java.util.Arrays;
import java.util.Locale;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;

class SvgTest {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 320;

    /** The same chart drawn by the JDK and, from SVG, by Batik: two independent renderers. */
    @Test
    void aChartLooksAsTheJdkDrawsIt() throws TranscoderException {
        BufferedImage wanted = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = wanted.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(
                RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        chart().paint(g, WIDTH, HEIGHT);
        BufferedImage shown = rendered(Svg.of(chart(), "c", "a chart", Outlines.inPlace()));
        int inked = 0;
        int apart = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                int a = darkness(wanted, x, y);
                int b = darkness(shown, x, y);
                inked += a > 100 ? 1 : 0;
                // Rounding to a tenth greys edges, of thin letters most; a pixel's shift of all
                // would set half of them apart.
                apart += Math.abs(a - b) > 100 ? 1 : 0;
            }
        }
        assertTrue(inked > 3000, "inked " + inked);
        assertTrue(apart < 0.15 * inked, apart + " of " + inked + " pixels apart");
    }

    @Test
    void piecesOfALineThatMeetAreOnePath() {
        SvgPen pen = new SvgPen("p", Outlines.inPlace());
        pen.setColor(Color.RED);
        pen.setStroke(new BasicStroke(2, BasicStroke.CAP_BUTT, 0, 10, new float[] {8, 5}, 0));
        pen.draw(new Line2D.Double(0, 0, 10, 5));
        pen.draw(new Line2D.Double(10, 5, 20, 0));
        pen.draw(new Line2D.Double(30, 0, 40, 0));
        assertEquals(
                "<path fill=\"none\" stroke=\"#ff0000\" stroke-width=\"2\""
                        + " stroke-dasharray=\"8 5\" d=\"m0 0l10 5 10-5m10 0h10\"/>",
                pen.drawn());
    }

    @Test
    void whatIsOutsideTheClipIsNotSeen() throws TranscoderException {
        SvgPen pen = new SvgPen("p", Outlines.inPlace());
        pen.setClip(new Rectangle(0, 0, 50, 50));
        pen.setColor(Color.BLACK);
        pen.fill(new Rectangle(0, 0, 100, 100));
        BufferedImage shown =
                rendered(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\">"
                                + pen.drawn()
                                + "</svg>");
        assertTrue(darkness(shown, WIDTH / 2 - 20, HEIGHT / 2 - 20) > 200);
        assertTrue(darkness(shown, WIDTH / 2 + 20, HEIGHT / 2 + 20) < 50);
    }

    @Test
    void roundingDoesNotAddUpAlongAPath() {
        Path2D steps = new Path2D.Double();
        steps.moveTo(0, 0);
        for (int i = 1; i <= 1000; i++) {
            steps.lineTo(i * 0.34, 0);
        }
        String d = PathData.of(steps);
        assertTrue(d.startsWith("m0 0h"), d);
        double end =
                Arrays.stream(d.substring(5).split(" ")).mapToDouble(Double::parseDouble).sum();
        assertEquals(340, end, 0.051);
    }

    @Test
    void aCircleIsCurves() {
        assertTrue(PathData.of(new Ellipse2D.Double(0, 0, 10, 10)).contains("c"));
    }

    @Test
    void theLabelIsEscaped() {
        String svg = Svg.of(chart(), "c", "less < \"more\" & so on", Outlines.inPlace());
        assertTrue(svg.contains("less &lt; &quot;more&quot; &amp; so on"));
        assertFalse(svg.contains("null"));
    }

    @Test
    void twoLinesOfOneNameAreTwoLines() {
        XYChart chart = chart();
        Points more = new Points();
        more.add(0, 1);
        more.add(1, 2);
        ChartStyle.line(chart, "gate", more, 1);
        assertEquals(3, chart.getSeriesMap().size());
    }

    private static XYChart chart() {
        XYChart chart = ChartStyle.chart(WIDTH, HEIGHT, "time (s)", "distance (m)", Locale.ROOT);
        Points wave = new Points();
        for (int i = 0; i < 200; i++) {
            wave.add(i, 30 * Math.sin(i / 20.0));
        }
        ChartStyle.line(chart, "wave", wave, 0);
        ChartStyle.level(chart, "gate", 0, 200, 10);
        return chart;
    }

    private static int darkness(BufferedImage image, int x, int y) {
        int c = image.getRGB(x, y);
        return 255 - ((c >> 16 & 0xff) + (c >> 8 & 0xff) + (c & 0xff)) / 3;
    }

    private static BufferedImage rendered(String svg) throws TranscoderException {
        Raster raster = new Raster();
        raster.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) WIDTH);
        raster.addTranscodingHint(SVGAbstractTranscoder.KEY_HEIGHT, (float) HEIGHT);
        raster.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        raster.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
        return raster.image;
    }

    /** Keeps the picture that Batik makes of an SVG. */
    private static final class Raster extends ImageTranscoder {
        private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

        @Override
        public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        }

        @Override
        public void writeImage(BufferedImage made, TranscoderOutput to) {
            image = made;
        }
    }
}
