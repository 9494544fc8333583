package pairdown.report;

import java.awt.Shape;
import java.awt.geom.PathIterator;

/**
 * The {@code d} attribute of an SVG path in as few characters as its syntax allows: steps from
 * point to point in tenths of a unit, command letters only where they change. Rounding does not add
 * up along a path. Source of the syntax: SVG 1.1 (2nd edition), 8.3.
 */
final class PathData {
    private static final int PER_UNIT = 10;

    private final StringBuilder out = new StringBuilder();
    private final double[] c = new double[6];
    private long x;
    private long y;
    private long startX;
    private long startY;
    private char last;

    private PathData() {}

    /** A shape's outline; empty if it has no points. */
    static String of(Shape shape) {
        PathData path = new PathData();
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            path.add(i.currentSegment(path.c));
        }
        return path.out.toString();
    }

    private void add(int segment) {
        switch (segment) {
            case PathIterator.SEG_MOVETO -> move();
            case PathIterator.SEG_LINETO -> line();
            case PathIterator.SEG_QUADTO -> curve('q', 2);
            case PathIterator.SEG_CUBICTO -> curve('c', 3);
            default -> close();
        }
    }

    private void move() {
        command('m');
        step(tenths(c[0]), tenths(c[1]));
        startX = x;
        startY = y;
    }

    private void line() {
        long toX = tenths(c[0]);
        long toY = tenths(c[1]);
        if (toY == y) {
            if (toX != x) {
                command('h');
                number(toX - x);
            }
        } else if (toX == x) {
            command('v');
            number(toY - y);
        } else {
            command('l');
            number(toX - x);
            number(toY - y);
        }
        x = toX;
        y = toY;
    }

    /** All points of a curve count from where it begins. */
    private void curve(char letter, int points) {
        command(letter);
        for (int i = 0; i < points; i++) {
            number(tenths(c[2 * i]) - x);
            number(tenths(c[2 * i + 1]) - y);
        }
        x = tenths(c[2 * points - 2]);
        y = tenths(c[2 * points - 1]);
    }

    private void close() {
        out.append('z');
        last = 'z';
        x = startX;
        y = startY;
    }

    private void step(long toX, long toY) {
        number(toX - x);
        number(toY - y);
        x = toX;
        y = toY;
    }

    private void command(char letter) {
        if (letter != last || letter == 'm') {
            out.append(letter);
            last = letter;
        }
    }

    private void number(long tenths) {
        if (tenths >= 0 && Character.isDigit(out.charAt(out.length() - 1))) {
            out.append(' ');
        }
        append(out, tenths);
    }

    /** A number of tenths without needless zeros: {@code -.3}, {@code 12}, {@code 4.5}. */
    private static void append(StringBuilder out, long tenths) {
        long size = Math.abs(tenths);
        if (tenths < 0) {
            out.append('-');
        }
        if (size >= PER_UNIT || size == 0) {
            out.append(size / PER_UNIT);
        }
        if (size % PER_UNIT != 0) {
            out.append('.').append(size % PER_UNIT);
        }
    }

    private static long tenths(double v) {
        return Math.round(v * PER_UNIT);
    }
}
