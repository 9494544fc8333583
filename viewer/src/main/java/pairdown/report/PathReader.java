package pairdown.report;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** Reads back what {@link PathData} writes: relative commands {@code m h v l q c z}. */
final class PathReader {
    private final String d;
    private final Path2D path = new Path2D.Double();
    private int at;
    private double x;
    private double y;

    private PathReader(String d) {
        this.d = d;
    }

    /**
     * The outline.
     *
     * @throws IllegalArgumentException for a command that {@link PathData} does not write
     */
    static Path2D read(String d) {
        PathReader reader = new PathReader(d);
        char command = ' ';
        while (reader.at < d.length()) {
            char next = d.charAt(reader.at);
            if (Character.isLetter(next)) {
                command = next;
                reader.at++;
            }
            reader.step(command);
        }
        return reader.path;
    }

    private void step(char command) {
        switch (command) {
            case 'm' -> {
                to(number(), number());
                path.moveTo(x, y);
            }
            case 'h' -> lineTo(number(), 0);
            case 'v' -> lineTo(0, number());
            case 'l' -> lineTo(number(), number());
            case 'q' -> quadTo();
            case 'c' -> cubicTo();
            case 'z' -> close();
            default -> throw new IllegalArgumentException("no command '" + command + "' in " + d);
        }
    }

    private void lineTo(double dx, double dy) {
        to(dx, dy);
        path.lineTo(x, y);
    }

    private void quadTo() {
        double cx = x + number();
        double cy = y + number();
        to(number(), number());
        path.quadTo(cx, cy, x, y);
    }

    private void cubicTo() {
        double ax = x + number();
        double ay = y + number();
        double bx = x + number();
        double by = y + number();
        to(number(), number());
        path.curveTo(ax, ay, bx, by, x, y);
    }

    private void close() {
        path.closePath();
        Point2D start = path.getCurrentPoint();
        x = start.getX();
        y = start.getY();
    }

    private void to(double dx, double dy) {
        x += dx;
        y += dy;
    }

    /** Digits with at most one point: read by hand, there are hundreds of thousands. */
    private double number() {
        while (at < d.length() && d.charAt(at) == ' ') {
            at++;
        }
        boolean minus = at < d.length() && d.charAt(at) == '-';
        if (minus) {
            at++;
        }
        long digits = 0;
        long scale = 0;
        for (; at < d.length(); at++) {
            char c = d.charAt(at);
            if (c == '.' && scale == 0) {
                scale = 1;
            } else if (c >= '0' && c <= '9') {
                digits = 10 * digits + (c - '0');
                scale *= 10;
            } else {
                break;
            }
        }
        double value = scale == 0 ? digits : (double) digits / scale;
        return minus ? -value : value;
    }
}
