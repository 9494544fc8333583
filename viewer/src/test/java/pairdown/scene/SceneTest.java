package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.film.Studio;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.replay.Alignment;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState.Layer;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/** Asks real pictures for what geometry says must be where. */
@NeedsGl
class SceneTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 600;
    private static final Theme LIGHT = new Theme(Palette.LIGHT, Sizes.atPercent(100));
    private static final Figures FIGURES = new Figures(Units.METRIC, Locale.ROOT);

    private static Studio studio(Debrief debrief) throws NoGraphicsException {
        return Studio.open(debrief, WIDTH, HEIGHT, Optional.empty(), Optional.empty());
    }

    private static Pixels bare(Studio studio, double t_s, Vantage.Kind from, Layer... shown) {
        for (Layer layer : Layer.values()) {
            boolean wanted = java.util.Arrays.asList(shown).contains(layer);
            if (studio.diorama().view().shows(layer) != wanted) {
                studio.diorama().view().toggle(layer);
            }
        }
        return studio.still(t_s, Vantage.of(from), LIGHT, FIGURES, false);
    }

    /** How many pixels are nearly of a colour, within a box round a place. */
    private static int near(Pixels pixels, int cx, int cy, int reach, int rgba) {
        int count = 0;
        for (int y = Math.max(0, cy - reach); y < Math.min(HEIGHT, cy + reach); y++) {
            for (int x = Math.max(0, cx - reach); x < Math.min(WIDTH, cx + reach); x++) {
                count += distance(pixels.rgb(x, y), rgba >>> 8) < 40 ? 1 : 0;
            }
        }
        return count;
    }

    private static int distance(int a, int b) {
        int d = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            d = Math.max(d, Math.abs(((a >> shift) & 0xff) - ((b >> shift) & 0xff)));
        }
        return d;
    }

    @Test
    void whatMovesOnlyInTheSceneChangesThePicture() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            Pixels a = bare(studio, 80, Vantage.Kind.SQUARE_ON);
            Pixels b = bare(studio, 95, Vantage.Kind.SQUARE_ON);
            int differing = 0;
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    differing += a.rgb(x, y) != b.rgb(x, y) ? 1 : 0;
                }
            }
            assertTrue(differing > 1000, "pixels " + differing);
        }
    }

    @Test
    void theSameMomentIsTheSamePicture() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            Pixels a = bare(studio, 95, Vantage.Kind.PLAN, Layer.values());
            bare(studio, 20, Vantage.Kind.GROUND, Layer.values());
            Pixels b = bare(studio, 95, Vantage.Kind.PLAN, Layer.values());
            for (int y = 0; y < HEIGHT; y++) {
                for (int x = 0; x < WIDTH; x++) {
                    assertEquals(a.rgb(x, y), b.rgb(x, y));
                }
            }
        }
    }

    @Test
    void aFlyerStandsWhereTheCameraSaysItMust() throws NoGraphicsException {
        Debrief debrief = new SyntheticDebrief().build();
        Probe probe = new Probe(WIDTH, HEIGHT);
        for (Vantage.Kind kind :
                new Vantage.Kind[] {
                    Vantage.Kind.SQUARE_ON, Vantage.Kind.PLAN, Vantage.Kind.ORBIT
                }) {
            try (Studio studio = studio(debrief)) {
                studio.diorama().view().look(Vantage.of(kind));
                studio.diorama().view().orbit().place(100, 20, 250);
                Pixels pixels = bare(studio, 92, kind);
                float[] at = probe.place(studio, Vantage.of(kind), 1);
                studio.diorama().view().enlarge(5);
                Pixels larger = bare(studio, 92, kind);
                int changed = 0;
                for (int y = (int) at[1] - 6; y <= at[1] + 6; y++) {
                    for (int x = (int) at[0] - 6; x <= at[0] + 6; x++) {
                        changed += pixels.rgb(x, y) != larger.rgb(x, y) ? 1 : 0;
                    }
                }
                assertTrue(changed > 20, kind + " at " + at[0] + ", " + at[1]);
            }
        }
    }

    @Test
    void fromFarAwayAFlyerIsStillAMarkerOfLeastSize() throws NoGraphicsException {
        Probe probe = new Probe(WIDTH, HEIGHT);
        Vantage far = Vantage.of(Vantage.Kind.ORBIT);
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            studio.diorama().view().look(far);
            studio.diorama().view().orbit().place(100, 20, 1500);
            for (Layer layer : Layer.values()) {
                boolean wanted = layer == Layer.LABELS;
                if (studio.diorama().view().shows(layer) != wanted) {
                    studio.diorama().view().toggle(layer);
                }
            }
            // At 1.5 km a flyer of two metres is a pixel and a half.
            Pixels pixels = studio.still(92, far, LIGHT, FIGURES, true);
            float[] at = probe.place(studio, far, 1);
            int rgba = LIGHT.palette().participant(1);
            int found = near(pixels, Math.round(at[0]), Math.round(at[1]), 6, rgba);
            assertTrue(found > 20, found + " pixels at " + at[0] + ", " + at[1]);
        }
    }

    @Test
    void theGateRingIsWhereItsRadiusSays() throws NoGraphicsException {
        Debrief debrief = new SyntheticDebrief().withGate(20).build();
        try (Studio studio = studio(debrief)) {
            studio.diorama().view().zoom(0.25);
            Pixels with = bare(studio, 120, Vantage.Kind.PLAN, Layer.GATES);
            Pixels without = bare(studio, 120, Vantage.Kind.PLAN);
            Probe probe = new Probe(WIDTH, HEIGHT);
            // Seen from above with the nose up: the left slot's ring reaches 20 m to its left.
            float[] edge = probe.besideLead(studio, Vantage.of(Vantage.Kind.PLAN), -26.2, 0.4, 0.9);
            int changed = 0;
            for (int x = (int) edge[0] - 6; x <= edge[0] + 6; x++) {
                changed += with.rgb(x, (int) edge[1]) != without.rgb(x, (int) edge[1]) ? 1 : 0;
            }
            assertTrue(changed > 0, "ring edge at " + edge[0] + ", " + edge[1]);
            int outside = (int) (edge[0] - 25);
            assertEquals(without.rgb(outside, (int) edge[1]), with.rgb(outside, (int) edge[1]));
        }
    }

    @Test
    void aGapInTheDataIsAGapInThePath() throws NoGraphicsException {
        double gap_s = 113;
        try (Studio whole = studio(new SyntheticDebrief().build());
                Studio holed = studio(new SyntheticDebrief().withGapAt(gap_s).build())) {
            whole.diorama().view().toggleFrame();
            holed.diorama().view().toggleFrame();
            assertTrue(
                    painted(holed, 118) < 0.85 * painted(whole, 118),
                    "a hole of 3 s in a trail of 10 s");
        }
    }

    /** Rows of the picture from above in which the right flyer's trail shows. */
    private static int painted(Studio studio, double t_s) {
        studio.diorama().view().look(Vantage.of(Vantage.Kind.PLAN));
        studio.diorama().view().zoom(0.04);
        Pixels with = bare(studio, t_s, Vantage.Kind.PLAN, Layer.TRAILS);
        int rows = 0;
        for (int y = 0; y < HEIGHT; y++) {
            int found = 0;
            for (int x = 0; x < WIDTH; x++) {
                found += isGreen(with.rgb(x, y)) ? 1 : 0;
            }
            rows += found > 0 ? 1 : 0;
        }
        return rows;
    }

    /** The right flyer's colour, however faint. */
    private static boolean isGreen(int rgb) {
        return ((rgb >> 8) & 0xff) - ((rgb >> 16) & 0xff) > 20
                && ((rgb >> 8) & 0xff) > (rgb & 0xff);
    }

    @Test
    void aGhostStandsWhereItsOwnFlyerStoodToItsOwnLead() throws NoGraphicsException {
        Debrief first = new SyntheticDebrief().build();
        Debrief other = new SyntheticDebrief().joiningLater(30, "2031-05-14-04").build();
        Alignment alignment = Alignment.of(first, other, Alignment.On.EXIT, 30).orElseThrow();
        Blueprint laid = Blueprint.of(Recording.of(other), Optional.empty());
        try (Studio studio =
                Studio.open(
                        first,
                        WIDTH,
                        HEIGHT,
                        Optional.empty(),
                        Optional.of(new Overlay(laid, alignment)))) {
            studio.diorama().view().zoom(0.3);
            Pixels with = bare(studio, 90, Vantage.Kind.SQUARE_ON, Layer.GHOST);
            Pixels without = bare(studio, 90, Vantage.Kind.SQUARE_ON);
            Moment.Ghost ghost = studio.diorama().moment().ghost().orElseThrow();
            double[] off = Probe.leadAxes(ghost.moment(), 1);
            float[] at =
                    new Probe(WIDTH, HEIGHT)
                            .besideLeadLevel(
                                    studio,
                                    Vantage.of(Vantage.Kind.SQUARE_ON),
                                    off[0],
                                    off[1],
                                    off[2]);
            int changed = 0;
            for (int y = (int) at[1] - 5; y <= at[1] + 5; y++) {
                for (int x = (int) at[0] - 8; x <= at[0] + 8; x++) {
                    changed += with.rgb(x, y) != without.rgb(x, y) ? 1 : 0;
                }
            }
            assertTrue(changed > 4, "ghost at " + at[0] + ", " + at[1]);
        }
    }

    @Test
    void wordsAreDrawnOnlyWhereAskedFor() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            Vantage side = Vantage.of(Vantage.Kind.SQUARE_ON);
            Pixels with = studio.still(95, side, LIGHT, FIGURES, true);
            Pixels without = studio.still(95, side, LIGHT, FIGURES, false);
            int ink = near(with, WIDTH / 2, HEIGHT / 2, WIDTH, LIGHT.palette().ink());
            int none = near(without, WIDTH / 2, HEIGHT / 2, WIDTH, LIGHT.palette().ink());
            assertTrue(ink > none + 300, ink + " against " + none);
        }
    }

    @Test
    void everyVantagePointHoldsSomethingAndStaysAboveTheGround() throws NoGraphicsException {
        Debrief debrief = new SyntheticDebrief().build();
        try (Studio studio = studio(debrief)) {
            for (double t_s : new double[] {5, 61, 90, 120, 165}) {
                for (Vantage vantage : Vantage.of(debrief)) {
                    studio.still(t_s, vantage, LIGHT, FIGURES, true);
                    assertTrue(studio.diorama().heightOverGround_m() > 1.6, vantage.name());
                }
            }
        }
    }
}
