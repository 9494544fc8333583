package pairdown.scene;

import static pairdown.scene.Shape.at;

import pairdown.scene.Shape.Surface;

/**
 * The shapes of aircraft, their origin at the centre of gravity. The lead is a high-wing machine
 * with one turboprop and a fixed gear, the jump ship a larger one with two: the common kinds in the
 * trade, after no type. Sizes: span 14.2 m and propeller 2.8 m are those the demo is flown with.
 */
final class Airframe {
    /** Where the propeller's centre is (m ahead, above). */
    static final float PROPELLER_AHEAD_M = 4.35f;

    static final float PROPELLER_ABOVE_M = 0.0f;
    static final float PROPELLER_RADIUS_M = 1.4f;

    /** All shapes of a scene, made once. */
    record Shapes(
            Shape leadHull,
            Shape leadWings,
            Shape elevator,
            Shape rudder,
            Shape aileron,
            Shape flap,
            Shape ship,
            Shape flyer) {
        static Shapes make() {
            return new Shapes(
                    Airframe.leadHull(),
                    Airframe.leadWings(),
                    Airframe.elevator(),
                    Airframe.rudder(),
                    Airframe.aileron(),
                    Airframe.flap(),
                    Airframe.ship(),
                    Airframe.flyer());
        }
    }

    private static final float[] UP = {0, 0, 1};
    private static final float[] SIDE = {1, 0, 0};

    private Airframe() {}

    /** The fuselage: what is left out when looking from inside. */
    static Shape leadHull() {
        return new Shape()
                .with(Surface.SKIN)
                .hull(
                        24,
                        0,
                        new float[] {4.25f, 0.0f, 0.22f, 0.22f},
                        new float[] {3.9f, 0.0f, 0.42f, 0.45f},
                        new float[] {2.4f, 0.0f, 0.52f, 0.6f})
                .with(Surface.DARK)
                .hull(
                        24,
                        0,
                        new float[] {2.4f, 0.0f, 0.52f, 0.6f},
                        new float[] {1.5f, 0.25f, 0.62f, 0.88f})
                .with(Surface.SKIN)
                .hull(
                        24,
                        0,
                        new float[] {1.5f, 0.25f, 0.62f, 0.88f},
                        new float[] {-1.6f, 0.25f, 0.66f, 0.88f},
                        new float[] {-6.0f, 0.55f, 0.16f, 0.22f})
                .with(Surface.ACCENT)
                .hull(
                        24,
                        0,
                        new float[] {-2.2f, 0.28f, 0.62f, 0.83f},
                        new float[] {-2.9f, 0.33f, 0.54f, 0.72f});
    }

    /** Wings without their moving parts, struts, gear, fixed tail. */
    static Shape leadWings() {
        Shape shape = new Shape();
        for (int side = -1; side <= 1; side += 2) {
            shape.with(Surface.SKIN)
                    .slab(
                            at(side * 0.0f, 1.15f, 1.1f),
                            at(side * 0.0f, -0.35f, 1.1f),
                            at(side * 6.2f, 1.1f, 1.28f),
                            at(side * 6.2f, -0.3f, 1.28f),
                            0.11f,
                            UP)
                    .with(Surface.ACCENT)
                    .slab(
                            at(side * 6.2f, 1.1f, 1.28f),
                            at(side * 6.2f, -0.65f, 1.28f),
                            at(side * 7.1f, 0.8f, 1.31f),
                            at(side * 7.1f, -0.55f, 1.31f),
                            0.09f,
                            UP)
                    .with(Surface.DARK)
                    .bar(at(side * 0.6f, 0.7f, -0.3f), at(side * 3.6f, 0.6f, 1.12f), 0.05f)
                    .bar(at(side * 0.5f, 0.8f, -0.5f), at(side * 1.45f, 0.7f, -1.25f), 0.06f)
                    .wheel(side * 1.5f, 0.68f, -1.3f, 0.34f, 0.1f)
                    .with(Surface.SKIN)
                    .slab(
                            at(0, -5.1f, 0.62f),
                            at(0, -5.9f, 0.62f),
                            at(side * 2.5f, -5.25f, 0.62f),
                            at(side * 2.5f, -5.85f, 0.62f),
                            0.06f,
                            UP);
        }
        return shape.with(Surface.SKIN)
                .slab(
                        at(0, -4.4f, 0.75f),
                        at(0, -5.75f, 0.75f),
                        at(0, -5.45f, 2.3f),
                        at(0, -5.95f, 2.3f),
                        0.06f,
                        SIDE)
                .with(Surface.DARK)
                .wheel(0, -5.52f, 0.1f, 0.17f, 0.05f);
    }

    /** Both elevators, from their hinge (the origin) aft. */
    static Shape elevator() {
        Shape shape = new Shape().with(Surface.ACCENT);
        for (int side = -1; side <= 1; side += 2) {
            shape.slab(
                    at(side * 0.12f, 0, 0),
                    at(side * 0.12f, -0.62f, 0),
                    at(side * 2.5f, 0.04f, 0),
                    at(side * 2.5f, -0.45f, 0),
                    0.045f,
                    UP);
        }
        return shape;
    }

    /** Where the elevators' hinge lies: ahead, above. */
    static final float[] ELEVATOR_HINGE = {-5.9f, 0.62f};

    /** The rudder, from its hinge aft. */
    static Shape rudder() {
        return new Shape()
                .with(Surface.ACCENT)
                .slab(
                        at(0, 0, 0.1f),
                        at(0, -0.6f, 0.1f),
                        at(0, -0.2f, 1.65f),
                        at(0, -0.62f, 1.65f),
                        0.045f,
                        SIDE);
    }

    /** Where the rudder's hinge lies: ahead, above its foot. */
    static final float[] RUDDER_HINGE = {-5.78f, 0.65f};

    /** One aileron, to the right, from its hinge aft. */
    static Shape aileron() {
        return new Shape()
                .with(Surface.ACCENT)
                .slab(
                        at(3.7f, 0, 0.06f),
                        at(3.7f, -0.38f, 0.06f),
                        at(6.15f, 0, 0.12f),
                        at(6.15f, -0.34f, 0.12f),
                        0.04f,
                        UP);
    }

    /** One flap, to the right, from its hinge aft. */
    static Shape flap() {
        return new Shape()
                .with(Surface.SKIN)
                .slab(
                        at(0.65f, 0, 0),
                        at(0.65f, -0.42f, 0),
                        at(3.6f, 0, 0.06f),
                        at(3.6f, -0.38f, 0.06f),
                        0.05f,
                        UP);
    }

    /** Where ailerons and flaps hinge: ahead, above. */
    static final float[] WING_HINGE = {-0.36f, 1.15f};

    /** The exit aircraft. */
    static Shape ship() {
        Shape shape =
                new Shape()
                        .with(Surface.SKIN)
                        .hull(
                                24,
                                0,
                                new float[] {6.4f, -0.1f, 0.1f, 0.1f},
                                new float[] {5.6f, 0.0f, 0.6f, 0.6f})
                        .with(Surface.DARK)
                        .hull(
                                24,
                                0,
                                new float[] {5.6f, 0.0f, 0.6f, 0.6f},
                                new float[] {4.7f, 0.15f, 0.85f, 0.95f})
                        .with(Surface.SKIN)
                        .hull(
                                24,
                                0,
                                new float[] {4.7f, 0.15f, 0.85f, 0.95f},
                                new float[] {-3.2f, 0.15f, 0.9f, 0.95f},
                                new float[] {-9.0f, 0.7f, 0.2f, 0.3f});
        for (int side = -1; side <= 1; side += 2) {
            shape.with(Surface.SKIN)
                    .slab(
                            at(0, 1.4f, 1.25f),
                            at(0, -0.8f, 1.25f),
                            at(side * 9.9f, 1.0f, 1.5f),
                            at(side * 9.9f, -0.2f, 1.5f),
                            0.14f,
                            UP)
                    .hull(
                            18,
                            side * 2.9f,
                            new float[] {3.2f, 1.0f, 0.18f, 0.18f},
                            new float[] {2.6f, 1.0f, 0.42f, 0.45f},
                            new float[] {-0.9f, 1.1f, 0.3f, 0.3f})
                    .slab(
                            at(0, -7.8f, 2.6f),
                            at(0, -9.2f, 2.6f),
                            at(side * 3.4f, -8.2f, 2.6f),
                            at(side * 3.4f, -9.1f, 2.6f),
                            0.08f,
                            UP);
        }
        return shape.with(Surface.ACCENT)
                .slab(
                        at(0, -6.9f, 0.8f),
                        at(0, -9.0f, 0.8f),
                        at(0, -8.0f, 2.8f),
                        at(0, -9.3f, 2.8f),
                        0.09f,
                        SIDE)
                .with(Surface.DARK)
                .quad(
                        at(-0.91f, -1.6f, -0.5f),
                        at(-0.91f, -3.1f, -0.5f),
                        at(-0.91f, -3.1f, 0.8f),
                        at(-0.91f, -1.6f, 0.8f),
                        at(0, -2.3f, 0.1f));
    }

    /** A person in a wing suit, face down, arms and legs spread; the logger is the origin. */
    static Shape flyer() {
        Shape shape = new Shape();
        for (int side = -1; side <= 1; side += 2) {
            shape.with(Surface.ACCENT)
                    .slab(
                            at(side * 0.12f, 0.42f, 0.03f),
                            at(side * 0.14f, -0.35f, 0.0f),
                            at(side * 0.86f, 0.3f, 0.02f),
                            at(side * 0.72f, 0.12f, 0.0f),
                            0.035f,
                            UP)
                    .bar(at(side * 0.12f, 0.4f, 0.02f), at(side * 0.92f, 0.3f, 0.02f), 0.045f)
                    .bar(at(side * 0.1f, -0.3f, 0.0f), at(side * 0.34f, -1.05f, -0.02f), 0.06f);
        }
        return shape.with(Surface.ACCENT)
                .slab(
                        at(-0.1f, -0.3f, 0),
                        at(-0.34f, -1.0f, -0.02f),
                        at(0.1f, -0.3f, 0),
                        at(0.34f, -1.0f, -0.02f),
                        0.03f,
                        UP)
                .hull(
                        14,
                        0,
                        new float[] {0.5f, 0.03f, 0.14f, 0.1f},
                        new float[] {0.2f, 0.03f, 0.2f, 0.13f},
                        new float[] {-0.4f, 0.02f, 0.16f, 0.11f})
                .with(Surface.SKIN)
                .hull(
                        14,
                        0,
                        new float[] {0.42f, 0.13f, 0.12f, 0.06f},
                        new float[] {-0.1f, 0.16f, 0.15f, 0.09f},
                        new float[] {-0.22f, 0.12f, 0.1f, 0.05f})
                .hull(
                        14,
                        0,
                        new float[] {0.8f, 0.06f, 0.03f, 0.03f},
                        new float[] {0.7f, 0.06f, 0.11f, 0.12f},
                        new float[] {0.56f, 0.06f, 0.11f, 0.12f},
                        new float[] {0.48f, 0.05f, 0.05f, 0.05f});
    }

    /** A ball of radius one, for shells and ellipsoids. */
    static pairdown.gl.Mesh ball() {
        int rings = 24;
        int sides = 48;
        float[] places = new float[(rings + 1) * (sides + 1) * 3];
        int at = 0;
        for (int i = 0; i <= rings; i++) {
            double latitude = Math.PI * (i / (double) rings - 0.5);
            for (int k = 0; k <= sides; k++) {
                double longitude = 2 * Math.PI * k / sides;
                places[at++] = (float) (Math.cos(latitude) * Math.cos(longitude));
                places[at++] = (float) (Math.cos(latitude) * Math.sin(longitude));
                places[at++] = (float) Math.sin(latitude);
            }
        }
        int[] indices = new int[rings * sides * 6];
        int n = 0;
        for (int i = 0; i < rings; i++) {
            for (int k = 0; k < sides; k++) {
                int a = i * (sides + 1) + k;
                int b = a + sides + 1;
                for (int v : new int[] {a, a + 1, b + 1, a, b + 1, b}) {
                    indices[n++] = v;
                }
            }
        }
        return new pairdown.gl.Mesh(places, indices, 3);
    }

    /** A square from −1 to 1 in its own plane. */
    static pairdown.gl.Mesh square() {
        return new pairdown.gl.Mesh(
                new float[] {-1, -1, 0, 1, -1, 0, 1, 1, 0, -1, 1, 0},
                new int[] {0, 1, 2, 0, 2, 3},
                3);
    }
}
