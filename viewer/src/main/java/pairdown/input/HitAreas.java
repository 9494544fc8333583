package pairdown.input;

import java.util.Arrays;

/**
 * What can be pressed, dragged along or wheeled on screen, in layers: an area of a later layer lies
 * over those of earlier ones. A layer keeps its areas until it is begun anew, so that what is drawn
 * from a kept picture keeps its areas too. Nothing is allocated once the arrays have grown.
 */
public final class HitAreas {
    /** No area. */
    public static final int NONE = -1;

    private final Layer[] layers;
    private int open;

    /** How an area answers. */
    public enum Kind {
        /** Its value counts where it is pressed. */
        BUTTON,
        /** Its value follows the pointer from one side to the other while dragged. */
        SLIDER,
        /** Takes presses so that nothing beneath gets them. */
        WALL
    }

    private static final class Layer {
        private static final int FIRST_CAPACITY = 32;
        private float[] bounds = new float[4 * FIRST_CAPACITY];
        private double[] values = new double[2 * FIRST_CAPACITY];
        private Action[] actions = new Action[FIRST_CAPACITY];
        private Kind[] kinds = new Kind[FIRST_CAPACITY];
        private int size;

        private void grow() {
            bounds = Arrays.copyOf(bounds, 2 * bounds.length);
            values = Arrays.copyOf(values, 2 * values.length);
            actions = Arrays.copyOf(actions, 2 * actions.length);
            kinds = Arrays.copyOf(kinds, 2 * kinds.length);
        }
    }

    public HitAreas(int layerCount) {
        layers = new Layer[layerCount];
        Arrays.setAll(layers, i -> new Layer());
    }

    /** Empties a layer; areas added from now on belong to it. */
    public void begin(int layer) {
        open = layer;
        layers[layer].size = 0;
    }

    public void button(float x, float y, float width, float height, Action action) {
        add(Kind.BUTTON, x, y, width, height, action, 0, 0);
    }

    public void button(float x, float y, float width, float height, Action action, double value) {
        add(Kind.BUTTON, x, y, width, height, action, value, value);
    }

    public void slider(
            float x, float y, float width, float height, Action action, double left, double right) {
        add(Kind.SLIDER, x, y, width, height, action, left, right);
    }

    /** Nothing beneath this is pressed. */
    public void wall(float x, float y, float width, float height) {
        add(Kind.WALL, x, y, width, height, Action.CANCEL, 0, 0);
    }

    private void add(
            Kind kind,
            float x,
            float y,
            float width,
            float height,
            Action action,
            double from,
            double to) {
        Layer layer = layers[open];
        if (layer.size == layer.actions.length) {
            layer.grow();
        }
        int i = layer.size++;
        layer.bounds[4 * i] = x;
        layer.bounds[4 * i + 1] = y;
        layer.bounds[4 * i + 2] = width;
        layer.bounds[4 * i + 3] = height;
        layer.values[2 * i] = from;
        layer.values[2 * i + 1] = to;
        layer.actions[i] = action;
        layer.kinds[i] = kind;
    }

    /** The area at a place, as a number for the questions below; {@link #NONE} if none. */
    public int at(double x, double y) {
        for (int l = layers.length - 1; l >= 0; l--) {
            for (int i = layers[l].size - 1; i >= 0; i--) {
                float[] b = layers[l].bounds;
                if (x >= b[4 * i]
                        && x < b[4 * i] + b[4 * i + 2]
                        && y >= b[4 * i + 1]
                        && y < b[4 * i + 1] + b[4 * i + 3]) {
                    return i * layers.length + l;
                }
            }
        }
        return NONE;
    }

    /** Whether the place is free of all areas: the scene's. */
    public boolean isFree(double x, double y) {
        return at(x, y) == NONE;
    }

    /** Numbers of all areas, for checks. */
    public int[] all() {
        int[] found = new int[Arrays.stream(layers).mapToInt(l -> l.size).sum()];
        int n = 0;
        for (int l = 0; l < layers.length; l++) {
            for (int i = 0; i < layers[l].size; i++) {
                found[n++] = i * layers.length + l;
            }
        }
        return found;
    }

    public int layer(int area) {
        return area % layers.length;
    }

    public Kind kind(int area) {
        return layers[area % layers.length].kinds[area / layers.length];
    }

    public Action action(int area) {
        return layers[area % layers.length].actions[area / layers.length];
    }

    /** The value of an area at a place along it; beyond its sides that of the side. */
    public double value(int area, double x) {
        Layer layer = layers[area % layers.length];
        int i = area / layers.length;
        double from = layer.values[2 * i];
        double to = layer.values[2 * i + 1];
        double share =
                switch (layer.kinds[i]) {
                    case BUTTON, WALL -> 0;
                    case SLIDER -> (x - layer.bounds[4 * i]) / layer.bounds[4 * i + 2];
                };
        return from + Math.max(0, Math.min(1, share)) * (to - from);
    }

    public float x(int area) {
        return layers[area % layers.length].bounds[4 * (area / layers.length)];
    }

    public float y(int area) {
        return layers[area % layers.length].bounds[4 * (area / layers.length) + 1];
    }

    public float width(int area) {
        return layers[area % layers.length].bounds[4 * (area / layers.length) + 2];
    }

    public float height(int area) {
        return layers[area % layers.length].bounds[4 * (area / layers.length) + 3];
    }
}
