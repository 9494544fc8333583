package pairdown.scene;

import java.util.Arrays;
import pairdown.gl.Mesh;

/**
 * A solid put together from flat and round parts, in axes right, ahead, above (m). Our own generic
 * shapes: right in size and outline, of no make.
 */
final class Shape {
    /** What a face looks like. */
    enum Surface {
        SKIN(0),
        DARK(1),
        /** In the participant's colour. */
        ACCENT(2);

        private final float code;

        Surface(float code) {
            this.code = code;
        }
    }

    private static final int WIDTH = 7;

    private float[] vertices = new float[1024];
    private int size;
    private Surface surface = Surface.SKIN;

    Shape with(Surface next) {
        surface = next;
        return this;
    }

    /** A flat triangle whose outside is the side away from a place within the solid. */
    Shape triangle(float[] a, float[] b, float[] c, float[] within) {
        float[] n = normal(a, b, c);
        float out =
                n[0] * (a[0] - within[0]) + n[1] * (a[1] - within[1]) + n[2] * (a[2] - within[2]);
        float[] outward = out < 0 ? at(-n[0], -n[1], -n[2]) : n;
        vertex(a, outward);
        vertex(b, outward);
        vertex(c, outward);
        return this;
    }

    Shape quad(float[] a, float[] b, float[] c, float[] d, float[] within) {
        return triangle(a, b, c, within).triangle(a, c, d, within);
    }

    private static float[] normal(float[] a, float[] b, float[] c) {
        float ux = b[0] - a[0];
        float uy = b[1] - a[1];
        float uz = b[2] - a[2];
        float vx = c[0] - a[0];
        float vy = c[1] - a[1];
        float vz = c[2] - a[2];
        float x = uy * vz - uz * vy;
        float y = uz * vx - ux * vz;
        float z = ux * vy - uy * vx;
        float length = (float) Math.sqrt(x * x + y * y + z * z);
        return length > 0 ? at(x / length, y / length, z / length) : at(0, 0, 1);
    }

    private void vertex(float[] p, float[] n) {
        if (size + WIDTH > vertices.length) {
            vertices = Arrays.copyOf(vertices, vertices.length * 2);
        }
        System.arraycopy(p, 0, vertices, size, 3);
        System.arraycopy(n, 0, vertices, size + 3, 3);
        vertices[size + 6] = surface.code;
        size += WIDTH;
    }

    static float[] at(float right, float ahead, float above) {
        return new float[] {right, ahead, above};
    }

    /**
     * A round body through oval sections across the line ahead.
     *
     * @param sections each: place ahead, height of its centre, half width, half height; by rising
     *     or falling place
     */
    Shape hull(int sides, float right, float[]... sections) {
        for (int i = 0; i + 1 < sections.length; i++) {
            for (int k = 0; k < sides; k++) {
                corner(sections, i, k, sides, right);
                corner(sections, i, k + 1, sides, right);
                corner(sections, i + 1, k + 1, sides, right);
                corner(sections, i, k, sides, right);
                corner(sections, i + 1, k + 1, sides, right);
                corner(sections, i + 1, k, sides, right);
            }
        }
        int last = sections.length - 1;
        float[] within = at(right, (sections[0][0] + sections[last][0]) / 2, sections[0][1]);
        return cap(sections[0], right, sides, within).cap(sections[last], right, sides, within);
    }

    /** A corner of a round body, lit as if it were round: across the oval, leaning as it tapers. */
    private void corner(float[][] sections, int i, int k, int sides, float right) {
        float[] s = sections[i];
        float[] before = sections[Math.max(0, i - 1)];
        float[] after = sections[Math.min(sections.length - 1, i + 1)];
        double a = 2 * Math.PI * k / sides;
        double x = Math.cos(a) / s[2];
        double z = Math.sin(a) / s[3];
        double across = Math.hypot(x, z);
        double taper = (after[2] + after[3] - before[2] - before[3]) / 2 / (after[0] - before[0]);
        double length = Math.sqrt(1 + taper * taper);
        vertex(
                onSection(s, right, k, sides),
                at(
                        (float) (x / across / length),
                        (float) (-taper / length),
                        (float) (z / across / length)));
    }

    private Shape cap(float[] s, float right, int sides, float[] within) {
        for (int k = 1; k + 1 < sides; k++) {
            triangle(
                    onSection(s, right, 0, sides),
                    onSection(s, right, k, sides),
                    onSection(s, right, k + 1, sides),
                    within);
        }
        return this;
    }

    private static float[] onSection(float[] s, float right, int k, int sides) {
        double a = 2 * Math.PI * k / sides;
        return at(right + s[2] * (float) Math.cos(a), s[0], s[1] + s[3] * (float) Math.sin(a));
    }

    /** A wheel that rolls ahead: its middle, its radius and half its width. */
    Shape wheel(float right, float ahead, float above, float radius, float half) {
        int steps = 10;
        float[][] sections = new float[steps][];
        for (int i = 0; i < steps; i++) {
            double a = Math.PI * (i + 0.3) / (steps - 0.4);
            sections[i] =
                    new float[] {
                        ahead + radius * (float) Math.cos(a),
                        above,
                        half * (float) Math.sqrt(Math.sin(a)),
                        radius * (float) Math.sin(a)
                    };
        }
        return hull(12, right, sections);
    }

    /**
     * A flat tapered slab: a wing, a tail, a control surface.
     *
     * @param leadRoot leading edge at the root
     * @param trailRoot trailing edge at the root
     * @param leadTip leading edge at the tip
     * @param trailTip trailing edge at the tip
     * @param thick half thickness along {@code across}
     * @param across unit vector through the slab
     */
    Shape slab(
            float[] leadRoot,
            float[] trailRoot,
            float[] leadTip,
            float[] trailTip,
            float thick,
            float[] across) {
        float[][] top = {
            off(leadRoot, across, thick), off(trailRoot, across, thick * 0.4f),
            off(trailTip, across, thick * 0.3f), off(leadTip, across, thick * 0.7f)
        };
        float[][] under = {
            off(leadRoot, across, -thick), off(trailRoot, across, -thick * 0.4f),
            off(trailTip, across, -thick * 0.3f), off(leadTip, across, -thick * 0.7f)
        };
        float[] within = middle(top[0], under[2]);
        quad(top[0], top[1], top[2], top[3], within);
        quad(under[3], under[2], under[1], under[0], within);
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            quad(top[i], under[i], under[j], top[j], within);
        }
        return this;
    }

    private static float[] off(float[] p, float[] way, float by) {
        return at(p[0] + way[0] * by, p[1] + way[1] * by, p[2] + way[2] * by);
    }

    private static float[] middle(float[] a, float[] b) {
        return at((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2);
    }

    /** A strut or limb: a square bar between two places. */
    Shape bar(float[] from, float[] to, float half) {
        float[] side =
                Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]) ? at(0, 1, 0) : at(1, 0, 0);
        float[] up = at(0, 0, 1);
        float[][] a = ring(from, side, up, half);
        float[][] b = ring(to, side, up, half);
        float[] within = middle(from, to);
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            quad(a[i], a[j], b[j], b[i], within);
        }
        return quad(a[0], a[1], a[2], a[3], within).quad(b[3], b[2], b[1], b[0], within);
    }

    private static float[][] ring(float[] p, float[] side, float[] up, float half) {
        return new float[][] {
            off(off(p, side, half), up, half),
            off(off(p, side, -half), up, half),
            off(off(p, side, -half), up, -half),
            off(off(p, side, half), up, -half)
        };
    }

    /** The furthest any corner lies from the origin (m). */
    float radius_m() {
        float most = 0;
        for (int i = 0; i < size; i += WIDTH) {
            float d = vertices[i] * vertices[i];
            d += vertices[i + 1] * vertices[i + 1] + vertices[i + 2] * vertices[i + 2];
            most = Math.max(most, d);
        }
        return (float) Math.sqrt(most);
    }

    /** How far it reaches along an axis, or with −1 the other way (m). */
    float furthest_m(int axis, int way) {
        float most = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i += WIDTH) {
            most = Math.max(most, way * vertices[i + axis]);
        }
        return most;
    }

    /** Into the card's memory. */
    Mesh upload() {
        int[] indices = new int[size / WIDTH];
        Arrays.setAll(indices, i -> i);
        return new Mesh(Arrays.copyOf(vertices, size), indices, 3, 3, 1);
    }
}
