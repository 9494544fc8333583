package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.FloatBuffer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PathTreeTest {
    private static double[] curve(int n, double radius_m) {
        double[] p = new double[n * PathTree.WIDTH];
        for (int i = 0; i < n; i++) {
            double a = i * 0.01;
            p[4 * i] = radius_m * Math.sin(a) + 5 * Math.sin(a * 17);
            p[4 * i + 1] = radius_m * Math.cos(a);
            p[4 * i + 2] = 3000 - i * 0.5;
            p[4 * i + 3] = i * 0.2;
        }
        return p;
    }

    /** Checks a node against the path as sampled; each node of the tree in turn. */
    private static void check(PathTree.Node node, float[] points, double[] path) {
        int last = -1;
        for (int i = 0; i < path.length / 4; i++) {
            double t = path[4 * i + 3];
            if (t < node.start_s() - 1e-9 || t > node.end_s() + 1e-9) {
                continue;
            }
            double d = away(node, points, path, i);
            assertTrue(
                    d <= node.error_m() + 0.002, () -> "off by " + d + ", not " + node.error_m());
            last = i;
        }
        assertTrue(last >= 0);
        assertTrue(node.count() <= PathTree.LEAF_POINTS + 2);
        for (PathTree.Node part : node.parts()) {
            check(part, points, path);
        }
    }

    private static double away(PathTree.Node node, float[] points, double[] path, int i) {
        double t = path[4 * i + 3] - node.start_s();
        double[] anchor = {node.anchorX_m(), node.anchorY_m(), node.anchorZ_m()};
        int at = node.first();
        while (at + 2 < node.first() + node.count() && points[4 * (at + 1) + 3] < t) {
            at++;
        }
        double span = points[4 * at + 7] - points[4 * at + 3];
        double share = (t - points[4 * at + 3]) / span;
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double from = points[4 * at + k] + anchor[k];
            double to = points[4 * at + 4 + k] + anchor[k];
            double d = path[4 * i + k] - from - share * (to - from);
            sum += d * d;
        }
        return Math.sqrt(sum);
    }

    private static float[] all(PathTree tree) {
        FloatBuffer points = FloatBuffer.allocate(tree.points() * PathTree.WIDTH);
        tree.takePoints().forEach(points::put);
        return points.array();
    }

    @Property(tries = 20)
    void noLevelLiesFurtherOffThanItSays(@ForAll @IntRange(min = 2, max = 4000) int n) {
        double[] path = curve(n, 500);
        PathTree tree = new PathTree();
        tree.add(path);
        float[] points = all(tree);
        assertEquals(tree.points() * PathTree.WIDTH, points.length);
        assertEquals(1, tree.tops().size());
        check(tree.tops().get(0), points, path);
    }

    @Test
    void aStraightPathAtEvenSpeedCostsNothingAtTheTop() {
        double[] path = new double[4 * 1000];
        for (int i = 0; i < 1000; i++) {
            path[4 * i] = 7.0 * i;
            path[4 * i + 3] = 0.2 * i;
        }
        PathTree tree = new PathTree();
        tree.add(path);
        assertEquals(2, tree.tops().get(0).count());
        assertEquals(2, tree.points());
    }

    @Test
    void stretchesOnBothSidesOfAGapAreNotJoined() {
        PathTree tree = new PathTree();
        tree.add(curve(300, 100));
        tree.add(curve(300, 100));
        assertEquals(2, tree.tops().size());
    }

    @Test
    void allLevelsTogetherTakeAboutTwiceThePoints() {
        PathTree tree = new PathTree();
        tree.add(curve(20_000, 800));
        assertTrue(tree.points() < 2.2 * 20_000, () -> "points " + tree.points());
    }
}
