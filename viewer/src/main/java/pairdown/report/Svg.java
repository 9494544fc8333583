package pairdown.report;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.knowm.xchart.internal.chartpart.Chart;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Renders charts as SVG elements to be set into a page. */
final class Svg {
    /**
     * Written by the library, but no part of SVG inside HTML, or at odds with scaling to the page.
     */
    private static final List<String> NOT_OF_HTML =
            List.of(
                    "contentScriptType",
                    "contentStyleType",
                    "zoomAndPan",
                    "version",
                    "preserveAspectRatio",
                    "width",
                    "height");

    private Svg() {}

    /**
     * The chart as one {@code <svg>} element.
     *
     * @param name unique within the page: begins the ids inside
     * @param label what a screen reader says
     */
    static String of(Chart<?, ?> chart, String name, String label) {
        DOMImplementation dom = SVGDOMImplementation.getDOMImplementation();
        Document document = dom.createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setIDGenerator(new NamedIds(name));
        context.setComment(" ");
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new Dimension(chart.getWidth(), chart.getHeight()));
        chart.paint(graphics, chart.getWidth(), chart.getHeight());
        Element root = graphics.getRoot();
        for (String attribute : NOT_OF_HTML) {
            root.removeAttribute(attribute);
        }
        root.setAttributeNS(null, "viewBox", "0 0 " + chart.getWidth() + " " + chart.getHeight());
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS(null, "aria-label", label);
        return withoutProlog(text(graphics, root));
    }

    private static String text(SVGGraphics2D graphics, Element root) {
        StringWriter out = new StringWriter();
        try {
            graphics.stream(root, out, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static String withoutProlog(String svg) {
        return svg.substring(svg.indexOf("<svg")).replaceAll("\\s+(/?>)", "$1");
    }

    /** Ids that do not clash with those of other charts on the page. */
    private static final class NamedIds extends SVGIDGenerator {
        private final String name;
        private int next;

        NamedIds(String name) {
            this.name = name;
        }

        @Override
        public String generateID(String prefix) {
            return name + "-" + prefix + next++;
        }
    }
}
