package pairdown.report;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.File;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Sets the charts of a page into its PDF. They are what {@link SvgPen} wrote and nothing else, so
 * the few attributes it writes are all that is read: a general SVG renderer takes most of the time
 * that a PDF takes.
 */
final class PdfCharts implements SVGDrawer {
    /** The page's lettering, by what charts call it. */
    private final Map<String, Shape> outlines = new HashMap<>();

    @Override
    public SVGImage buildSVGImage(
            Element svg,
            Box box,
            CssContext css,
            double width_dots,
            double height_dots,
            double dotsPerPixel) {
        if (outlines.isEmpty()) {
            keepOutlines(svg.getOwnerDocument());
        }
        return new ChartImage(svg, box, dotsPerPixel, outlines);
    }

    private void keepOutlines(Document page) {
        NodeList paths = page.getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            if (path.hasAttribute("id")) {
                outlines.put("#" + path.getAttribute("id"), ChartImage.outline(path));
            }
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {}

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

    @Override
    public void close() {}

    /** One chart on one page. */
    private static final class ChartImage implements SVGImage {
        private final Element svg;
        private final Box box;
        private final double dotsPerPixel;
        private final Map<String, Shape> outlines;
        private final double width;
        private final double height;

        ChartImage(Element svg, Box box, double dotsPerPixel, Map<String, Shape> outlines) {
            this.svg = svg;
            this.box = box;
            this.dotsPerPixel = dotsPerPixel;
            this.outlines = outlines;
            List<Float> viewBox = numbers(svg.getAttribute("viewBox"));
            this.width = viewBox.get(2);
            this.height = viewBox.get(3);
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) (width * dotsPerPixel);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) (height * dotsPerPixel);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            Rectangle area = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
            double shown = area.width / dotsPerPixel;
            device.drawWithGraphics(
                    (float) x,
                    (float) y,
                    (float) shown,
                    (float) (area.height / dotsPerPixel),
                    g -> {
                        g.scale(shown / width, shown / width);
                        draw(g);
                    });
        }

        private void draw(Graphics2D g) {
            Map<String, Shape> clips = new HashMap<>();
            for (Node n = svg.getFirstChild(); n != null; n = n.getNextSibling()) {
                if (n instanceof Element e && e.getTagName().equalsIgnoreCase("clipPath")) {
                    clips.put("url(#" + e.getAttribute("id") + ")", outline(e.getFirstChild()));
                } else if (n instanceof Element e) {
                    g.setClip(clips.get(e.getAttribute("clip-path")));
                    draw(g, e, shape(e));
                }
            }
        }

        /** Its own outline, or one kept for the page, put in its place. */
        private Shape shape(Element e) {
            if (!e.hasAttribute("href")) {
                return outline(e);
            }
            Shape kept = outlines.get(e.getAttribute("href"));
            if (kept == null) {
                throw new IllegalArgumentException("no outline " + e.getAttribute("href"));
            }
            return AffineTransform.getTranslateInstance(
                            Double.parseDouble(e.getAttribute("x")),
                            Double.parseDouble(e.getAttribute("y")))
                    .createTransformedShape(kept);
        }

        static Shape outline(Node path) {
            return PathReader.read(((Element) path).getAttribute("d"));
        }

        private static void draw(Graphics2D g, Element path, Shape shape) {
            boolean line = path.hasAttribute("stroke");
            String paint = line ? "stroke" : "fill";
            g.setColor(Color.decode(path.getAttribute(paint)));
            String opacity = path.getAttribute(paint + "-opacity");
            g.setComposite(
                    opacity.isEmpty()
                            ? AlphaComposite.SrcOver
                            : AlphaComposite.SrcOver.derive(Float.parseFloat(opacity)));
            if (line) {
                g.setStroke(stroke(path));
                g.draw(shape);
            } else {
                g.fill(shape);
            }
        }

        private static BasicStroke stroke(Element path) {
            int cap =
                    switch (path.getAttribute("stroke-linecap")) {
                        case "round" -> BasicStroke.CAP_ROUND;
                        case "square" -> BasicStroke.CAP_SQUARE;
                        default -> BasicStroke.CAP_BUTT;
                    };
            int join =
                    switch (path.getAttribute("stroke-linejoin")) {
                        case "round" -> BasicStroke.JOIN_ROUND;
                        case "bevel" -> BasicStroke.JOIN_BEVEL;
                        default -> BasicStroke.JOIN_MITER;
                    };
            float width = Float.parseFloat(path.getAttribute("stroke-width"));
            List<Float> dashes = numbers(path.getAttribute("stroke-dasharray"));
            if (dashes.isEmpty()) {
                return new BasicStroke(width, cap, join);
            }
            float[] pattern = new float[dashes.size()];
            for (int i = 0; i < pattern.length; i++) {
                pattern[i] = dashes.get(i);
            }
            return new BasicStroke(width, cap, join, 10, pattern, 0);
        }

        private static List<Float> numbers(String text) {
            List<Float> numbers = new ArrayList<>();
            for (String number : text.split(" ", -1)) {
                if (!number.isEmpty()) {
                    numbers.add(Float.valueOf(number));
                }
            }
            return numbers;
        }
    }
}
