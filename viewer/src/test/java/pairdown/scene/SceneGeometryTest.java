package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.attempt.LeverArm;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.film.Studio;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.replay.Body;
import pairdown.replay.Heights;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState.Layer;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/**
 * Each thing of the scene switched on and off: where geometry says it must be the picture differs,
 * just beside it the picture is the same.
 */
@NeedsGl
class SceneGeometryTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 600;
    private static final Theme LIGHT = new Theme(Palette.LIGHT, Sizes.atPercent(100));
    private static final Figures FIGURES = new Figures(Units.METRIC, Locale.ROOT);
    private static final Vantage ORBIT = Vantage.of(Vantage.Kind.ORBIT);
    private static final Vantage PLAN = Vantage.of(Vantage.Kind.PLAN);

    private static final double FORWARD_S = 30;
    private static final double REVERSE_S = 110;
    private static final double MATCHED_S = 120;

    private final Probe probe = new Probe(WIDTH, HEIGHT);

    private static Studio studio(Debrief debrief) throws NoGraphicsException {
        return Studio.open(debrief, WIDTH, HEIGHT, Optional.empty(), Optional.empty());
    }

    private static Pixels picture(Studio studio, double t_s, Vantage from, Layer... shown) {
        for (Layer layer : Layer.values()) {
            if (studio.diorama().view().shows(layer) != Arrays.asList(shown).contains(layer)) {
                studio.diorama().view().toggle(layer);
            }
        }
        return studio.still(t_s, from, LIGHT, FIGURES, false);
    }

    /** How many pixels within a box round a place differ. */
    private static int differing(Pixels a, Pixels b, float[] at, int reach) {
        int count = 0;
        for (int y = (int) at[1] - reach; y <= at[1] + reach; y++) {
            for (int x = (int) at[0] - reach; x <= at[0] + reach; x++) {
                assertTrue(x >= 0 && y >= 0 && x < WIDTH && y < HEIGHT, "outside the picture");
                count += a.rgb(x, y) != b.rgb(x, y) ? 1 : 0;
            }
        }
        return count;
    }

    private static int differing(Pixels a, Pixels b) {
        int count = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                count += a.rgb(x, y) != b.rgb(x, y) ? 1 : 0;
            }
        }
        return count;
    }

    private static int red(int rgb) {
        return (rgb >> 16) & 0xff;
    }

    private static int blue(int rgb) {
        return rgb & 0xff;
    }

    /**
     * Its shaded underside is darker than the sky by a hundred of 255; seen through, by much less.
     */
    @Test
    void fromAWindowTheWingIsSeenThrough() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            Vantage window = Vantage.of(Vantage.Kind.LEFT_WINDOW);
            Pixels pixels = picture(studio, FORWARD_S, window);
            float[] wing = probe.besideLead(studio, window, -4, 0.1, 1.2);
            int through = pixels.rgb((int) wing[0], (int) wing[1]);
            int darker = red(Palette.LIGHT.sky() >>> 8) - red(through);
            assertTrue(darker > 3 && darker < 50, "darker by " + darker);
        }
    }

    @Test
    void theBreakOffPlateLiesAtItsHeight() throws NoGraphicsException {
        Debrief debrief = new SyntheticDebrief().withBreakOff(3400).build();
        try (Studio studio = studio(debrief)) {
            studio.diorama().view().orbit().place(90, 12, 700);
            Pixels with = picture(studio, 90, ORBIT, Layer.BREAK_OFF);
            Pixels without = picture(studio, 90, ORBIT);
            Body lead = studio.diorama().moment().body(0);
            double up = Heights.of(debrief).up_m(lead.east_m(), lead.north_m(), 3400);
            double radius = Math.max(150, 0.7 * (lead.up_m() - up));
            double below = up - lead.up_m();
            for (int side = -1; side <= 1; side += 2) {
                float[] rim = probe.besideLeadLevel(studio, ORBIT, 0, side * radius, below);
                assertTrue(differing(with, without, rim, 4) > 4, "no rim at " + rim[0]);
                float[] beyond =
                        probe.besideLeadLevel(studio, ORBIT, 0, side * 1.1 * radius, below);
                assertEquals(0, differing(with, without, beyond, 4));
            }
            assertEquals(
                    0,
                    differing(
                            with,
                            without,
                            probe.besideLeadLevel(studio, ORBIT, 0, 0, below + 60),
                            4));
        }
    }

    @Test
    void aGateHasItsRadius() throws NoGraphicsException {
        double gate = 20;
        try (Studio studio = studio(new SyntheticDebrief().withGate(gate).build())) {
            studio.diorama().view().zoom(0.2);
            Pixels with = picture(studio, MATCHED_S, PLAN, Layer.GATES);
            Pixels without = picture(studio, MATCHED_S, PLAN);
            LeverArm slot = SyntheticDebrief.LEFT_SLOT;
            float[] inside = left(studio, slot, 0.9 * gate);
            float[] outside = left(studio, slot, 1.08 * gate);
            assertTrue(differing(with, without, inside, 1) == 9, "the shell is not there");
            assertEquals(0, differing(with, without, outside, 1));
        }
    }

    private float[] left(Studio studio, LeverArm slot, double away_m) {
        return probe.besideLead(
                studio, PLAN, slot.right_m() - away_m, slot.ahead_m(), slot.above_m());
    }

    @Test
    void aGateIsShownOnlyWhileAFlyerFlies() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            studio.diorama().view().zoom(0.2);
            double aboard_s = SyntheticDebrief.EXIT_S - 20;
            assertEquals(
                    0,
                    differing(
                            picture(studio, aboard_s, PLAN, Layer.GATES),
                            picture(studio, aboard_s, PLAN)));
        }
    }

    @Test
    void aSlotIsACrossOnTheLead() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            studio.diorama().view().orbit().place(180, 10, 30);
            Pixels with = picture(studio, 85, ORBIT, Layer.SLOTS);
            Pixels without = picture(studio, 85, ORBIT);
            LeverArm slot = SyntheticDebrief.RIGHT_SLOT;
            float[] foot =
                    probe.besideLead(
                            studio, ORBIT, slot.right_m(), slot.ahead_m(), slot.above_m() - 0.5);
            assertTrue(differing(with, without, foot, 3) > 3, "no cross at " + foot[0]);
            float[] below =
                    probe.besideLead(
                            studio, ORBIT, slot.right_m(), slot.ahead_m(), slot.above_m() - 1.2);
            assertEquals(0, differing(with, without, below, 3));
        }
    }

    @Test
    void underTenMetresTwoSigmaAreShown() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            studio.diorama().view().orbit().place(180, 5, 40);
            Pixels with = picture(studio, MATCHED_S, ORBIT, Layer.ELLIPSOIDS);
            Pixels without = picture(studio, MATCHED_S, ORBIT);
            LeverArm slot = SyntheticDebrief.LEFT_SLOT;
            // Both bodies' sigmas are 0.8 level and 1.3 up; 0.9 along the line is printed, and the
            // line lies level but for 0.9 in 6.3 m.
            double along = Math.hypot(1, 0.9 / 6.2 * 1.3 / 0.8) / Math.hypot(1, 0.9 / 6.2);
            double half = 2 * 0.9 * (1.3 / 0.8) / along;
            float[] inside =
                    probe.besideLeadLevel(
                            studio,
                            ORBIT,
                            slot.right_m(),
                            slot.ahead_m(),
                            slot.above_m() + 0.9 * half);
            float[] outside =
                    probe.besideLeadLevel(
                            studio,
                            ORBIT,
                            slot.right_m(),
                            slot.ahead_m(),
                            slot.above_m() + 1.12 * half);
            assertTrue(differing(with, without, inside, 1) > 4, "no ellipsoid of 2 sigma");
            assertEquals(0, differing(with, without, outside, 1));
        }
    }

    @Test
    void beyondTenMetresThereIsNoEllipsoid() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            assertEquals(
                    0,
                    differing(
                            picture(studio, 85, PLAN, Layer.ELLIPSOIDS),
                            picture(studio, 85, PLAN)));
        }
    }

    @Test
    void anArrowReachesWhereTheFlyerWouldBe() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            Pixels with = picture(studio, 80, PLAN, Layer.VECTORS);
            Pixels without = picture(studio, 80, PLAN);
            Body lead = studio.diorama().moment().body(0);
            Body flyer = studio.diorama().moment().body(1);
            double s = Slots.ARROW_S;
            float[] tip =
                    probe.at(
                            studio,
                            flyer.east_m()
                                    + s * (flyer.velocityEast_mps() - lead.velocityEast_mps()),
                            flyer.north_m()
                                    + s * (flyer.velocityNorth_mps() - lead.velocityNorth_mps()),
                            flyer.up_m() + s * (flyer.velocityUp_mps() - lead.velocityUp_mps()));
            assertTrue(differing(with, without, tip, 4) > 8, "no tip at " + tip[0]);
        }
    }

    @Test
    void thePropellersTintSaysWhichWayItPushes() throws NoGraphicsException {
        try (Studio studio = studio(new SyntheticDebrief().build())) {
            studio.diorama().view().orbit().place(0, 0, 20);
            int forward = rimOfPropeller(studio, FORWARD_S);
            int reverse = rimOfPropeller(studio, REVERSE_S);
            assertTrue(blue(forward) > red(forward) + 40, Integer.toHexString(forward));
            assertTrue(red(reverse) > blue(reverse) + 40, Integer.toHexString(reverse));
        }
    }

    /** With a lever logged, labels add more at the hub than without one: the way it pushes. */
    @Test
    void thePropellersLabelSaysWhichWayItPushes() throws NoGraphicsException {
        try (Studio logged = studio(new SyntheticDebrief().build());
                Studio bare = studio(new SyntheticDebrief().withoutSystems().build())) {
            int more = addedByLabels(logged);
            int less = addedByLabels(bare);
            assertTrue(more > less + 300, () -> more + " and " + less);
        }
    }

    private int addedByLabels(Studio studio) {
        studio.diorama().view().orbit().place(0, 0, 20);
        Pixels without = picture(studio, REVERSE_S, ORBIT);
        studio.diorama().view().toggle(Layer.LABELS);
        Pixels with = studio.still(REVERSE_S, ORBIT, LIGHT, FIGURES, true);
        float[] hub =
                probe.besideLead(
                        studio, ORBIT, 0, Airframe.PROPELLER_AHEAD_M, Airframe.PROPELLER_ABOVE_M);
        return differing(with, without, hub, 100);
    }

    @Test
    void whichWayItPushesIsReadFromTheLeverElseTheBlades() {
        assertEquals(-1, Propeller.direction(-40, Double.NaN));
        assertEquals(0, Propeller.direction(2, -20));
        assertEquals(1, Propeller.direction(40, -20));
        assertEquals(-1, Propeller.direction(Double.NaN, -10));
        assertEquals(0, Propeller.direction(Double.NaN, 11), "idle or more, the blades don't tell");
        assertEquals(0, Propeller.direction(Double.NaN, 30));
        assertEquals(0, Propeller.direction(Double.NaN, Double.NaN));
    }

    private int rimOfPropeller(Studio studio, double t_s) {
        Pixels pixels = picture(studio, t_s, ORBIT);
        float[] rim =
                probe.besideLead(
                        studio,
                        ORBIT,
                        0.96 * Airframe.PROPELLER_RADIUS_M,
                        Airframe.PROPELLER_AHEAD_M,
                        Airframe.PROPELLER_ABOVE_M);
        return pixels.rgb((int) rim[0], (int) rim[1]);
    }

    @Test
    void theElevatorIsDrawnAsItWasDeflected() throws NoGraphicsException {
        try (Studio moved = studio(new SyntheticDebrief().build());
                Studio still = studio(new SyntheticDebrief().withoutSystems().build())) {
            moved.diorama().view().orbit().place(180, 0, 25);
            still.diorama().view().orbit().place(180, 0, 25);
            // Nose up at 60 to 80 % of 25°: the trailing edge, half a metre aft, is up by 15 to 20
            // cm.
            double t_s = 79;
            double up_rad = Math.toRadians(25 * (60 + 20 * Math.sin(t_s)) / 100);
            Pixels deflected = picture(moved, t_s, ORBIT);
            Pixels inLine = picture(still, t_s, ORBIT);
            float[] edge =
                    probe.besideLead(
                            moved,
                            ORBIT,
                            1.2,
                            Airframe.ELEVATOR_HINGE[0] - 0.53 * Math.cos(up_rad),
                            Airframe.ELEVATOR_HINGE[1] + 0.53 * Math.sin(up_rad));
            assertTrue(differing(deflected, inLine, edge, 1) > 2, "at " + edge[0]);
            assertTrue(isAccent(deflected, edge), "no trailing edge at " + edge[1]);
        }
    }

    /** The lead's colour, whatever the light on it. */
    private static boolean isAccent(Pixels pixels, float[] at) {
        for (int y = (int) at[1] - 2; y <= at[1] + 2; y++) {
            int rgb = pixels.rgb((int) at[0], y);
            if (blue(rgb) > red(rgb) + 60) {
                return true;
            }
        }
        return false;
    }
}
