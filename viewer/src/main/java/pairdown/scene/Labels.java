package pairdown.scene;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.theme.Marker;
import pairdown.theme.Palette;
import pairdown.theme.Theme;
import pairdown.words.Line;

/**
 * The words in the scene. Gathered while the scene is drawn, then laid out so that none covers
 * another: the most important first, each at the first of several places round its point that is
 * free, with a line to its point where it had to move away; what finds no place is left out. Bodies
 * are kept clear where there is room elsewhere.
 */
public final class Labels {
    /** What is laid out first. */
    enum Rank {
        PARTICIPANT,
        PAIR,
        LIMIT,
        SLOT,
        SCALE
    }

    private static final int NOBODY = -1;
    private static final int ROWS = 4;

    /** A body that fills the picture can't be kept clear: labels keep off by this much at most. */
    private static final float MOST_KEEP_OFF = 16;

    /** Directions tried, right first; then the same further out. */
    private static final float[][] PLACES = {
        {1, -0.6f}, {1, 0.6f}, {-1, -0.6f}, {-1, 0.6f}, {0, -1}, {0, 1}
    };

    private static final float[] DISTANCES = {1, 2.2f, 4, 6.5f, 9.5f};

    private final List<Label> pool = new ArrayList<>();
    private final List<Label> order = new ArrayList<>();
    private int used;
    private float takenWidth;
    private float takenHeight;
    private float roseSide;
    private float footWidth;
    private float footHeight;

    /** One label; its rows are written by who asks for it. */
    static final class Label {
        private final Line[] rows = {new Line(), new Line(), new Line(), new Line()};
        private Rank rank = Rank.SCALE;
        private float x;
        private float y;
        private int rgba;
        private @Nullable Marker marker;
        private boolean hollow;
        private boolean fixed;
        private int owner;
        private float bodyLeft;
        private float bodyTop;
        private float bodyRight;
        private float bodyBottom;
        private float left;
        private float top;
        private float width;
        private float height;
        private boolean placed;

        /** A row to write in, top first; empty at the start. */
        Line row(int i) {
            return rows[i];
        }

        /** The shape that stands at the point. */
        Label marked(Marker shape, boolean isHollow) {
            marker = shape;
            hollow = isHollow;
            return this;
        }

        /** Whose it is: the number of a participant. */
        Label of(int participant) {
            owner = participant;
            return this;
        }

        /** The body it belongs to, which no label should cover. */
        Label round(float left, float top, float right, float bottom) {
            bodyLeft = left;
            bodyTop = top;
            bodyRight = right;
            bodyBottom = bottom;
            return this;
        }

        /** Stands right of its point or not at all: a scale's numbers. */
        Label fixed() {
            fixed = true;
            return this;
        }

        /** The first row that is empty; the last where none is. */
        Line nextRow() {
            return rows[Math.min(ROWS - 1, rowCount())];
        }

        private int rowCount() {
            int n = 0;
            for (Line row : rows) {
                n += row.isEmpty() ? 0 : 1;
            }
            return n;
        }
    }

    void clear() {
        used = 0;
    }

    /** How many there are. */
    int size() {
        return used;
    }

    /** One of those gathered. */
    Label get(int i) {
        return pool.get(i);
    }

    /** The number of a participant's own label; −1 where it has none. */
    int indexOf(int participant) {
        for (int i = 0; i < used; i++) {
            if (pool.get(i).owner == participant) {
                return i;
            }
        }
        return -1;
    }

    /** The upper left corner of this size (px) is somebody else's: no words go there. */
    void leaveCorner(float width, float height) {
        takenWidth = width;
        takenHeight = height;
    }

    /** So is the lower right one. */
    void leaveFoot(float width, float height) {
        footWidth = width;
        footHeight = height;
    }

    /** A label at a point of the picture's part; its colour also says whose it is. */
    Label add(Rank rank, float x, float y, int rgba) {
        if (used == pool.size()) {
            pool.add(new Label());
        }
        Label label = pool.get(used++);
        label.rank = rank;
        label.x = x;
        label.y = y;
        label.rgba = rgba;
        label.marker = null;
        label.hollow = false;
        label.fixed = false;
        label.owner = NOBODY;
        label.bodyLeft = x;
        label.bodyTop = y;
        label.bodyRight = x;
        label.bodyBottom = y;
        for (int i = 0; i < ROWS; i++) {
            label.rows[i].clear();
        }
        return label;
    }

    /**
     * Lays out and draws what was gathered.
     *
     * @param x left edge of the part in the picture
     * @param y its top edge
     */
    void draw(Canvas canvas, Theme theme, float x, float y, float width, float height) {
        layOut(canvas, theme, width, height);
        canvas.clip(x, y, width, height);
        for (int i = 0; i < used; i++) {
            drawMark(canvas, theme, pool.get(i), x, y);
        }
        for (int i = 0; i < used; i++) {
            if (pool.get(i).placed) {
                drawText(canvas, theme, pool.get(i), x, y);
            }
        }
        canvas.unclip();
    }

    private void layOut(Canvas canvas, Theme theme, float width, float height) {
        order.clear();
        roseSide = Compass.reach(theme);
        // By insertion: a list's own sort takes memory in every frame.
        for (int i = 0; i < used; i++) {
            int at = order.size();
            while (at > 0 && order.get(at - 1).rank.compareTo(pool.get(i).rank) > 0) {
                at--;
            }
            order.add(at, pool.get(i));
        }
        for (int i = 0; i < order.size(); i++) {
            Label label = order.get(i);
            measure(canvas, theme, label);
            label.placed = label.rowCount() > 0 && place(label, i, theme, width, height);
        }
    }

    private static float size(Theme theme, Label label) {
        return label.rank == Rank.PARTICIPANT || label.rank == Rank.PAIR
                ? theme.sizes().text()
                : theme.sizes().small();
    }

    private static Face face(Label label, int row) {
        return label.rank == Rank.PARTICIPANT && row == 0 ? Face.TEXT_BOLD : Face.TEXT;
    }

    private static void measure(Canvas canvas, Theme theme, Label label) {
        float size = size(theme, label);
        float widest = 0;
        for (int i = 0; i < ROWS; i++) {
            if (!label.rows[i].isEmpty()) {
                widest = Math.max(widest, canvas.textWidth(label.rows[i], face(label, i), size));
            }
        }
        label.width = widest + size * 0.7f;
        label.height = label.rowCount() * size * 1.25f + size * 0.35f;
    }

    private boolean place(Label label, int before, Theme theme, float width, float height) {
        if (label.fixed) {
            label.left = label.x + theme.sizes().marker();
            label.top = label.y - label.height / 2;
            return isFree(label, before, width, height);
        }
        return place(label, before, theme, width, height, true)
                || place(label, before, theme, width, height, false);
    }

    private boolean place(
            Label label, int before, Theme theme, float width, float height, boolean clear) {
        float away = theme.sizes().marker() * 2;
        float most = theme.sizes().marker() * MOST_KEEP_OFF;
        for (float distance : DISTANCES) {
            for (float[] way : PLACES) {
                put(label, way, away * distance, most);
                if (isFree(label, before, width, height) && !(clear && coversBody(label))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** To a side of the point and of the body round it. */
    private static void put(Label label, float[] way, float away, float most) {
        float gap = away * 0.5f;
        if (way[0] > 0) {
            label.left = label.x + Math.max(away, gap + Math.min(most, label.bodyRight - label.x));
        } else if (way[0] < 0) {
            label.left =
                    label.x
                            - Math.max(away, gap + Math.min(most, label.x - label.bodyLeft))
                            - label.width;
        } else {
            label.left = label.x - label.width / 2;
        }
        if (way[0] != 0) {
            label.top = label.y + way[1] * away - (way[1] < 0 ? label.height : 0);
        } else if (way[1] > 0) {
            label.top = label.y + Math.max(away, gap + Math.min(most, label.bodyBottom - label.y));
        } else {
            label.top =
                    label.y
                            - Math.max(away, gap + Math.min(most, label.y - label.bodyTop))
                            - label.height;
        }
    }

    private boolean coversBody(Label label) {
        for (int i = 0; i < used; i++) {
            Label of = pool.get(i);
            if (label.left < of.bodyRight
                    && of.bodyLeft < label.left + label.width
                    && label.top < of.bodyBottom
                    && of.bodyTop < label.top + label.height) {
                return true;
            }
        }
        return false;
    }

    /** Whether a label would lie in the picture and cover no label laid out before, nor a mark. */
    private boolean isFree(Label label, int before, float width, float height) {
        if (label.left < 0
                || label.top < 0
                || label.left + label.width > width
                || label.top + label.height > height) {
            return false;
        }
        if (label.left < takenWidth && label.top < takenHeight) {
            return false;
        }
        if (label.left + label.width > width - roseSide && label.top < roseSide) {
            return false;
        }
        if (label.left + label.width > width - footWidth
                && label.top + label.height > height - footHeight) {
            return false;
        }
        for (int i = 0; i < before; i++) {
            Label other = order.get(i);
            if (other.placed
                    && label.left < other.left + other.width
                    && other.left < label.left + label.width
                    && label.top < other.top + other.height
                    && other.top < label.top + label.height) {
                return false;
            }
        }
        for (int i = 0; i < used; i++) {
            Label other = pool.get(i);
            if (other.marker != null
                    && other != label
                    && other.x > label.left - 4
                    && other.x < label.left + label.width + 4
                    && other.y > label.top - 4
                    && other.y < label.top + label.height + 4) {
                return false;
            }
        }
        return true;
    }

    private static void drawMark(Canvas canvas, Theme theme, Label label, float x, float y) {
        Marker marker = label.marker;
        if (marker == null) {
            return;
        }
        Marks.draw(
                canvas,
                marker,
                x + label.x,
                y + label.y,
                theme.sizes().marker() * 1.3f,
                label.rgba,
                label.hollow,
                theme.palette().paper());
    }

    private static void drawText(Canvas canvas, Theme theme, Label label, float x, float y) {
        float size = size(theme, label);
        Palette palette = theme.palette();
        float left = x + label.left;
        float top = y + label.top;
        if (label.fixed) {
            canvas.text(
                    label.rows[0],
                    left,
                    top + size * 1.08f,
                    Face.FIGURES,
                    size,
                    Align.LEFT,
                    palette.ink());
            return;
        }
        drawLeader(canvas, theme, label, x, y);
        canvas.roundFill(
                left,
                top,
                label.width,
                label.height,
                size * 0.25f,
                Palette.withOpacity(palette.paper(), 225));
        canvas.fill(left, top, size * 0.18f, label.height, label.rgba);
        float baseline = top + size * 1.08f;
        for (int i = 0; i < ROWS; i++) {
            if (!label.rows[i].isEmpty()) {
                canvas.text(
                        label.rows[i],
                        left + size * 0.4f,
                        baseline,
                        face(label, i),
                        size,
                        Align.LEFT,
                        palette.ink());
                baseline += size * 1.25f;
            }
        }
    }

    private static void drawLeader(Canvas canvas, Theme theme, Label label, float x, float y) {
        float nearX = Math.max(label.left, Math.min(label.left + label.width, label.x));
        float nearY = Math.max(label.top, Math.min(label.top + label.height, label.y));
        float toX = Math.max(label.bodyLeft, Math.min(label.bodyRight, nearX));
        float toY = Math.max(label.bodyTop, Math.min(label.bodyBottom, nearY));
        if (Math.hypot(nearX - toX, nearY - toY) > theme.sizes().marker() * 2.5) {
            canvas.line(
                    x + label.x,
                    y + label.y,
                    x + nearX,
                    y + nearY,
                    theme.sizes().hair(),
                    label.rgba);
        }
    }
}
