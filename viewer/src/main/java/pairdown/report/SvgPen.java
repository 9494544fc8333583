package pairdown.report;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * Draws into SVG with nothing but filled and stroked paths: lettering becomes outlines, so that a
 * page looks alike whatever fonts a reader has. The general generator of Batik writes seven times
 * as much for the same chart, which a report of a dozen flyers can't carry. Images are not drawn:
 * charts have none.
 */
final class SvgPen extends AbstractGraphics2D {
    private final Page page;

    /** What all copies of a pen write to. */
    private static final class Page {
        private final String name;
        private final StringBuilder body = new StringBuilder();
        private final Map<String, String> clips = new HashMap<>();
        private final Outlines outlines;
        private Path2D line = new Path2D.Double();
        private String look = "";

        Page(String name, Outlines outlines) {
            this.name = name;
            this.outlines = outlines;
        }

        /**
         * Charts draw their lines piece by piece: pieces of one look become one path, connected
         * where they meet, so that dashes run on.
         */
        void stroke(Shape piece, String pieceLook) {
            if (!pieceLook.equals(look)) {
                flush();
                look = pieceLook;
            }
            line.append(piece, meets(piece));
        }

        private boolean meets(Shape piece) {
            Point2D end = line.getCurrentPoint();
            double[] start = new double[6];
            PathIterator i = piece.getPathIterator(null);
            return end != null
                    && !i.isDone()
                    && i.currentSegment(start) == PathIterator.SEG_MOVETO
                    && end.distance(start[0], start[1]) < 1e-6;
        }

        /** A clip would move with a shared outline, so only what is not clipped is shared. */
        void fill(Shape shape, String fillLook, String clipped) {
            flush();
            if (clipped.isEmpty()) {
                body.append(outlines.element(shape, fillLook));
            } else {
                write(shape, fillLook + clipped);
            }
        }

        void flush() {
            write(line, look);
            line = new Path2D.Double();
            look = "";
        }

        private void write(Shape shape, String written) {
            String d = PathData.of(shape);
            if (!d.isEmpty()) {
                body.append("<path").append(written).append(" d=\"").append(d).append("\"/>");
            }
        }

        /** Attribute that clips to an outline. */
        String clip(Shape outline) {
            String id = clips.computeIfAbsent(PathData.of(outline), this::newClip);
            return " clip-path=\"url(#" + id + ")\"";
        }

        private String newClip(String d) {
            String id = name + "-clip" + clips.size();
            body.append("<clipPath id=\"").append(id).append("\"><path d=\"");
            body.append(d).append("\"/></clipPath>");
            return id;
        }
    }

    /**
     * @param name begins the ids inside; unique within a page
     */
    SvgPen(String name, Outlines outlines) {
        super(true);
        this.gc = new GraphicContext();
        this.page = new Page(name, outlines);
    }

    private SvgPen(SvgPen other) {
        super(other);
        this.page = other.page;
    }

    /** What was drawn, as elements. */
    String drawn() {
        page.flush();
        return page.body.toString();
    }

    @Override
    public void fill(Shape shape) {
        if (opacity() > 0) {
            page.fill(placed(shape), paint("fill", getColor()), clipped());
        }
    }

    @Override
    public void draw(Shape shape) {
        if (!(getStroke() instanceof BasicStroke stroke)) {
            fill(getStroke().createStrokedShape(shape));
        } else if (opacity() > 0) {
            String look = " fill=\"none\"" + paint("stroke", getColor()) + look(stroke);
            page.stroke(placed(shape), look + clipped());
        }
    }

    private Shape placed(Shape shape) {
        return getTransform().createTransformedShape(shape);
    }

    private String clipped() {
        Shape clip = getClip();
        return clip == null ? "" : page.clip(placed(clip));
    }

    private double opacity() {
        float all = getComposite() instanceof AlphaComposite a ? a.getAlpha() : 1;
        return all * getColor().getAlpha() / 255.0;
    }

    private String paint(String attribute, Color colour) {
        String look =
                String.format(Locale.ROOT, " %s=\"#%06x\"", attribute, colour.getRGB() & 0xffffff);
        double opacity = opacity();
        return opacity < 1
                ? look + String.format(Locale.ROOT, " %s-opacity=\"%.2f\"", attribute, opacity)
                : look;
    }

    private String look(BasicStroke stroke) {
        double scale = Math.sqrt(Math.abs(getTransform().getDeterminant()));
        StringBuilder look = new StringBuilder();
        look.append(" stroke-width=\"").append(number(stroke.getLineWidth() * scale)).append('"');
        if (stroke.getEndCap() != BasicStroke.CAP_BUTT) {
            boolean round = stroke.getEndCap() == BasicStroke.CAP_ROUND;
            look.append(" stroke-linecap=\"").append(round ? "round" : "square").append('"');
        }
        if (stroke.getLineJoin() != BasicStroke.JOIN_MITER) {
            boolean round = stroke.getLineJoin() == BasicStroke.JOIN_ROUND;
            look.append(" stroke-linejoin=\"").append(round ? "round" : "bevel").append('"');
        }
        if (stroke.getDashArray() != null) {
            look.append(" stroke-dasharray=\"");
            for (float dash : stroke.getDashArray()) {
                look.append(number(dash * scale)).append(' ');
            }
            look.setLength(look.length() - 1);
            look.append('"');
        }
        return look.toString();
    }

    private static String number(double v) {
        return String.format(Locale.ROOT, "%.2f", v).replaceAll("\\.?0+$", "");
    }

    @Override
    public void drawString(String text, float x, float y) {
        if (!text.isEmpty()) {
            drawGlyphVector(getFont().createGlyphVector(getFontRenderContext(), text), x, y);
        }
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        new TextLayout(text, getFontRenderContext()).draw(this, x, y);
    }

    @Override
    public Graphics create() {
        return new SvgPen(this);
    }

    @Override
    public void dispose() {}

    @Override
    public void setXORMode(Color colour) {
        throw none("exclusive or");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return onePixel().getFontMetrics(font);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return onePixel().getDeviceConfiguration();
    }

    private static Graphics2D onePixel() {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw none("copying");
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw none("an image");
    }

    @Override
    public boolean drawImage(
            Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw none("an image");
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform at) {
        throw none("an image");
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform at) {
        throw none("an image");
    }

    private static UnsupportedOperationException none(String what) {
        return new UnsupportedOperationException("a chart in SVG has no " + what);
    }
}
