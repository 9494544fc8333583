package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.PathParser;
import org.junit.jupiter.api.Test;

class PathReaderTest {
    /** Batik's own path parser (1.17) is the outside. */
    @Test
    void readsWhatAnotherReaderReads() {
        Random random = new Random(20310514);
        for (int i = 0; i < 200; i++) {
            String d = PathData.of(scribble(random));
            AWTPathProducer producer = new AWTPathProducer();
            PathParser parser = new PathParser();
            parser.setPathHandler(producer);
            parser.parse(d);
            assertEquals(points(producer.getShape(), 0.01), points(PathReader.read(d), 0.01), d);
        }
    }

    @Test
    void whatWasWrittenComesBackToATenth() {
        Random random = new Random(20310515);
        for (int i = 0; i < 200; i++) {
            Shape shape = scribble(random);
            Shape back = PathReader.read(PathData.of(shape));
            PathIterator a = shape.getPathIterator(null);
            PathIterator b = back.getPathIterator(null);
            double[] at = new double[6];
            double[] to = new double[6];
            for (; !a.isDone(); a.next(), b.next()) {
                assertEquals(a.currentSegment(at), b.currentSegment(to));
                for (int k = 0; k < 6; k++) {
                    assertEquals(at[k], to[k], 0.0501);
                }
                at = new double[6];
                to = new double[6];
            }
        }
    }

    @Test
    void aCommandThatIsNeverWrittenIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PathReader.read("m0 0a1 1 0 0 0 5 5"));
    }

    private static Shape scribble(Random random) {
        Path2D path = new Path2D.Double();
        begin(path, random);
        for (int i = 0; i < 20; i++) {
            switch (random.nextInt(5)) {
                case 0 -> path.lineTo(any(random), any(random));
                case 1 -> path.quadTo(any(random), any(random), any(random), any(random));
                case 2 ->
                        path.curveTo(
                                any(random),
                                any(random),
                                any(random),
                                any(random),
                                any(random),
                                any(random));
                case 3 -> begin(path, random);
                default -> {
                    path.closePath();
                    begin(path, random);
                }
            }
        }
        return path;
    }

    /** A part with no line in it is dropped by some readers. */
    private static void begin(Path2D path, Random random) {
        path.moveTo(any(random), any(random));
        path.lineTo(any(random), any(random));
    }

    private static double any(Random random) {
        return random.nextDouble() * 600 - 100;
    }

    private static List<String> points(Shape shape, double step) {
        List<String> points = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            StringBuilder said = new StringBuilder().append(i.currentSegment(c));
            int numbers = new int[] {2, 2, 4, 6, 0}[i.currentSegment(c)];
            for (int k = 0; k < numbers; k++) {
                said.append(' ').append(Math.round(c[k] / step));
            }
            points.add(said.toString());
        }
        return points;
    }
}
