package pairdown.scene;

import java.util.Locale;
import org.joml.Vector3d;
import pairdown.camera.Sight;
import pairdown.camera.Vantage;
import pairdown.gl.Strokes;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

/**
 * What a thing needs to be drawn in one frame: the moment, the view, the camera, looks and words,
 * and where lines and labels are gathered. Filled anew for every picture.
 */
final class Stage {
    private final Strokes strokes;
    private final Moment moment;
    private final Labels labels = new Labels();
    private final Sight sight = new Sight();
    private Vantage vantage = Vantage.DEFAULT;
    private ViewState view;
    private Theme theme = new Theme(Palette.LIGHT, Sizes.atPercent(100));
    private Figures figures = new Figures(Units.METRIC, Locale.ROOT);
    private Words words = Words.of(Locale.ROOT);

    Stage(Strokes strokes, Moment moment) {
        this.strokes = strokes;
        this.moment = moment;
        this.view = new ViewState(moment.debrief());
    }

    /** Figures are compared as objects: in the language of the same ones the same words do. */
    @SuppressWarnings("ReferenceEquality")
    void set(ViewState view, Vantage vantage, Theme theme, Figures figures) {
        if (figures != this.figures) {
            words = Words.of(figures.locale());
        }
        this.view = view;
        this.vantage = vantage;
        this.theme = theme;
        this.figures = figures;
    }

    Moment moment() {
        return moment;
    }

    ViewState view() {
        return view;
    }

    Theme theme() {
        return theme;
    }

    Palette palette() {
        return theme.palette();
    }

    Figures figures() {
        return figures;
    }

    /** A text in the language of the figures. */
    String word(String key) {
        return words.get(key);
    }

    Sight sight() {
        return sight;
    }

    Labels labels() {
        return labels;
    }

    /** Pixels of a width given at 100 %, 96 to the inch. */
    float px(double at100) {
        return (float) (at100 * theme.sizes().perMm() / Sizes.AT_100_PERCENT);
    }

    boolean shows(ViewState.Layer layer) {
        return view.shows(layer);
    }

    /** Whether the camera is inside the lead, whose cabin must not fill the picture. */
    boolean isInsideLead() {
        return vantage.kind() == Vantage.Kind.LEFT_WINDOW
                || vantage.kind() == Vantage.Kind.RIGHT_WINDOW;
    }

    /** Whether the camera looks straight down, where all that lies under the lead is behind it. */
    boolean isFromAbove() {
        return vantage.kind() == Vantage.Kind.PLAN;
    }

    /** Whether the camera is a body's own eyes or on it. */
    boolean isSeenFrom(Body body) {
        return switch (vantage.kind()) {
            case EYES ->
                    vantage.who().isPresent()
                            ? vantage.who().get().equals(body.id())
                            : isFirstJumper(body);
            case DOOR -> body.role() == pairdown.attempt.Role.JUMPSHIP;
            default -> false;
        };
    }

    private boolean isFirstJumper(Body body) {
        for (int i = 0; i < moment.bodies().size(); i++) {
            Body other = moment.bodies().get(i);
            if (other.role().isJumper() && other.isPresent()) {
                return other == body;
            }
        }
        return false;
    }

    /** A line between world places. */
    void line(
            double e0,
            double n0,
            double u0,
            double e1,
            double n1,
            double u1,
            float width_px,
            float dash_px,
            int rgba) {
        Vector3d eye = sight.pose().eye();
        strokes.line(
                e0 - eye.x,
                n0 - eye.y,
                u0 - eye.z,
                e1 - eye.x,
                n1 - eye.y,
                u1 - eye.z,
                width_px,
                dash_px,
                0,
                rgba);
    }

    /** Metres across the line of sight that make one pixel at a world place; at least 1 mm. */
    double metresPerPixel(double east_m, double north_m, double up_m) {
        return Math.max(1e-3, sight.depth_m(east_m, north_m, up_m) / sight.focal_px());
    }

    /** The colour of a participant by its number. */
    int colour(int number) {
        return palette().participant(number);
    }
}
