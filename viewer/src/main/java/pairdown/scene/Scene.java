package pairdown.scene;

import java.util.List;
import java.util.Optional;
import pairdown.camera.Pose;
import pairdown.camera.Vantage;
import pairdown.gl.Canvas;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.gl.Pass;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Strokes;
import pairdown.gl.Uniform;
import pairdown.replay.Heights;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.replay.ViewState.Layer;
import pairdown.theme.Palette;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;

/**
 * The 3D view of a moment. {@link #draw} reads as the list of what is seen, from back to front;
 * {@link #drawWords} puts names and figures on top.
 */
public final class Scene implements AutoCloseable {
    /** Height of the notes against their letters. */
    private static final float NOTE_ROW = 1.5f;

    private final Heights heights;
    private final Strokes strokes = new Strokes();
    private final Shader strokeShader;
    private final Uniform strokeToClip;
    private final Uniform strokeViewport;
    private final GroundPlane ground;
    private final Trails trails;
    private final Bodies bodies;
    private final Propeller propeller;
    private final Globes globes;
    private final BreakOffPlane breakOff;
    private final List<Drawable> lines;
    private final Optional<GhostTrails> ghostTrails;
    private final Line note = new Line();
    private final List<Stage> stages;

    /**
     * Paths are brought into the card's memory by {@link #upload}.
     *
     * @param moment what will be drawn; filled anew before each {@link #draw}
     */
    Scene(Shaders shaders, Moment moment, Blueprint blueprint, Optional<Overlay> overlay) {
        this.heights = blueprint.heights();
        this.strokeShader = shaders.load("strokes");
        this.strokeToClip = strokeShader.uniform("relativeToClip");
        this.strokeViewport = strokeShader.uniform("viewport_px");
        this.ground = new GroundPlane(shaders, blueprint.ground(), blueprint.relief());
        this.trails = new Trails(shaders, blueprint.paths());
        this.bodies = new Bodies(shaders, blueprint.shapes());
        this.propeller = new Propeller(shaders);
        List<SlotPlace> places = SlotPlace.of(moment);
        this.globes = new Globes(shaders, places);
        this.breakOff = new BreakOffPlane(shaders, heights);
        this.ghostTrails =
                moment.ghost()
                        .flatMap(
                                g ->
                                        overlay.map(
                                                o ->
                                                        new GhostTrails(
                                                                shaders,
                                                                new Ghosts(g.moment()),
                                                                o.other().paths())));
        this.lines = List.of(new Slots(places), new Ladder(heights));
        this.stages = List.of(new Stage(strokes, moment), new Stage(strokes, moment));
    }

    /** Brings a further block of paths into the card's memory; false once all are there. */
    boolean upload() {
        return trails.upload() || (ghostTrails.isPresent() && ghostTrails.get().upload());
    }

    /**
     * Draws into a part of the target that is bound.
     *
     * @param part 0, or 1 for the second of two views
     * @param x_px left edge
     * @param y_px bottom edge, from the target's bottom
     */
    public void draw(
            int part,
            ViewState view,
            Vantage vantage,
            Pose pose,
            Theme theme,
            Figures figures,
            int x_px,
            int y_px,
            int width_px,
            int height_px) {
        Stage s = stages.get(part);
        s.set(view, vantage, theme, figures);
        s.sight().set(pose, x_px, y_px, width_px, height_px);
        s.labels().clear();
        Pass.begin(x_px, y_px, width_px, height_px, theme.palette().sky());
        Pass.solid();
        ground.draw(s);
        bodies.draw(s);
        Pass.translucent();
        breakOff.draw(s);
        trails.draw(s);
        if (ghostTrails.isPresent() && view.shows(Layer.GHOST)) {
            ghostTrails.get().draw(s, bodies);
        }
        for (int i = 0; i < lines.size(); i++) {
            lines.get(i).draw(s);
        }
        drawStrokes(s);
        propeller.draw(s);
        globes.draw(s);
        Pass.translucent();
        bodies.drawWingsFromInside(s);
        Pass.end();
    }

    private void drawStrokes(Stage s) {
        strokeShader.use();
        strokeToClip.set(s.sight().relativeToClip());
        strokeViewport.set(s.sight().width_px(), s.sight().height_px());
        strokes.draw();
    }

    /** The upper left corner of the first view is somebody else's: no words go there (px). */
    public void leaveCorner(float width, float height) {
        stages.get(0).labels().leaveCorner(width, height);
    }

    /**
     * Draws the words of what {@link #draw} last drew, on the flat canvas.
     *
     * @param part which of two views
     * @param x left edge of the same part, in the picture
     * @param y its top edge
     */
    public void drawWords(Canvas canvas, int part, float x, float y) {
        Stage s = stages.get(part);
        Theme theme = s.theme();
        float width = s.sight().width_px();
        float height = s.sight().height_px();
        float size = theme.sizes().small();
        writeNotes(s);
        float noted = canvas.textWidth(note, Face.TEXT, size) + size;
        float gap = theme.sizes().gap();
        s.labels().leaveFoot(noted + gap, size * NOTE_ROW + gap);
        s.labels().draw(canvas, theme, x, y, width, height);
        Compass.drawInCorner(canvas, theme, s.sight().pose(), x + width, y);
        drawNotes(canvas, s, x + width - gap, y + height - gap, noted);
    }

    /** What must be said on screen: the view's name, scales and enlargements. */
    private void writeNotes(Stage s) {
        note.clear();
        boolean leadFixed = s.view().frame() == ViewState.Frame.LEAD;
        note.add(s.word(leadFixed ? "view.lead-fixed" : "view.world")).add(" · ");
        if (s.isInsideLead()) {
            note.add(s.word("scene.wing")).add(" · ");
        }
        if (s.view().enlargement() != 1) {
            note.add(s.word("scene.enlarged")).add(" ×").addFixed(s.view().enlargement(), 0, '.');
            note.add(" · ");
        }
        note.add(s.word("scene.grid")).add(' ');
        note.addFixed(s.figures().shown(Measure.DISTANCE, ground.spacing_m(s)), 0, '.');
        s.figures().addUnit(note, Measure.DISTANCE);
        if (s.view().shows(Layer.VECTORS)) {
            note.add(" · ").add(s.word("scene.arrows")).add(' ');
            note.addFixed(Slots.ARROW_S, 0, '.').add(" s");
        }
        if (s.view().shows(Layer.TRAILS)) {
            note.add(" · ").add(s.word("scene.bands")).add(" 1 s");
        }
    }

    /** At the bottom right. */
    private void drawNotes(Canvas canvas, Stage s, float right, float bottom, float width) {
        float size = s.theme().sizes().small();
        canvas.roundFill(
                right - width,
                bottom - size * NOTE_ROW,
                width,
                size * NOTE_ROW,
                size * 0.3f,
                Palette.withOpacity(s.palette().paper(), 190));
        canvas.text(
                note,
                right - size * 0.5f,
                bottom - size * 0.45f,
                Face.TEXT,
                size,
                Align.RIGHT,
                s.palette().ink());
    }

    public Heights heights() {
        return heights;
    }

    /** Segments of paths drawn last. */
    public int segments() {
        return trails.segments();
    }

    @Override
    public void close() {
        strokes.close();
        ground.close();
        trails.close();
        bodies.close();
        propeller.close();
        globes.close();
        breakOff.close();
        ghostTrails.ifPresent(GhostTrails::close);
    }
}
