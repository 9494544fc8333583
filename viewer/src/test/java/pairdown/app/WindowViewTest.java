package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.gl.NeedsDisplay;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.replay.Alignment;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;

/** Time, cameras, strips and the second attempt in a real window, by their keys. */
@NeedsDisplay
class WindowViewTest {
    private final Path folder;

    WindowViewTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private WindowRig showing() throws Exception {
        return WindowRig.showing(new SyntheticDebrief().in(folder).build(), folder);
    }

    @Test
    void keysPlayFromATenthToSixteenTimesAndBackwards() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("equal", "equal", "equal", "equal", "equal", "equal");
            rig.until("sixteen times", () -> rig.time().rate() == 16);
            rig.key("BackSpace");
            rig.until("real time", () -> rig.time().rate() == 1);
            rig.key("minus", "minus", "minus", "minus", "minus", "minus");
            rig.until("a tenth", () -> rig.time().rate() == 0.1);
            rig.key("BackSpace", "r", "space");
            double before_s = rig.time().t_s();
            rig.until("earlier", () -> rig.time().t_s() < before_s - 0.3);
        }
    }

    @Test
    void aStepIsATenthAndTakesEffectAtOnce() throws Exception {
        try (WindowRig rig = showing()) {
            rig.time().seek(100);
            rig.key("period");
            rig.until("a tenth on", () -> Math.abs(rig.time().t_s() - 100.1) < 1e-6);
            rig.key("comma", "comma");
            rig.until("a tenth back", () -> Math.abs(rig.time().t_s() - 99.9) < 1e-6);
        }
    }

    @Test
    void aFixedCameraStaysWhereItIsAndAFollowingOneGoesAlong() throws Exception {
        try (WindowRig rig = showing()) {
            rig.time().seek(100);
            rig.until("still cameras", () -> !rig.diorama().isMoving());
            double along_m = wayOfTheCamera(rig);
            rig.time().seek(100);
            rig.key("c");
            rig.until("fixed", () -> !rig.view().isFollowing());
            assertEquals(0, wayOfTheCamera(rig), 1e-6);
            assertTrue(along_m > 100, "with the lead it went " + along_m);
        }
    }

    private static double wayOfTheCamera(WindowRig rig) {
        rig.until("still cameras", () -> !rig.diorama().isMoving());
        Vector3d from = new Vector3d(rig.diorama().pose().eye());
        rig.time().seek(rig.time().t_s() + 5);
        rig.loop.round(rig.window);
        rig.until("still cameras", () -> !rig.diorama().isMoving());
        return from.distance(rig.diorama().pose().eye());
    }

    @Test
    void aWiderViewShowsMoreAndTheFrameIsSwitched() throws Exception {
        try (WindowRig rig = showing()) {
            double before_deg = rig.view().fieldOfView_deg();
            rig.key("shift+bracketleft");
            rig.until("wider", () -> rig.view().fieldOfView_deg() > before_deg);
            rig.key("shift+bracketright", "shift+bracketright");
            rig.until("narrower", () -> rig.view().fieldOfView_deg() < before_deg);
            rig.key("x");
            rig.until("the world's frame", () -> rig.view().frame() == ViewState.Frame.WORLD);
        }
    }

    @Test
    void stripsArePannedByADragWithShift() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("z", "z", "z");
            rig.until("a window", () -> !Double.isNaN(rig.state().windowStart_s()));
            rig.loop.round(rig.window);
            double before_s = rig.state().windowStart_s();
            double length_s = rig.state().windowEnd_s() - before_s;
            int strip = rig.area(Action.SEEK_ON_STRIP);
            HitAreas areas = rig.areas();
            float x = areas.x(strip) + areas.width(strip) / 2;
            float y = areas.y(strip) + areas.height(strip) / 2;
            VirtualDisplay.hand("keydown", "shift");
            rig.drag(x, y, x + 100, y);
            VirtualDisplay.hand("keyup", "shift");
            double expected_s = before_s - 100 * length_s / areas.width(strip);
            rig.until(
                    "earlier by what was dragged",
                    () -> Math.abs(rig.state().windowStart_s() - expected_s) < 0.02 * length_s);
        }
    }

    @Test
    void twoAttemptsAreAlignedOnAGapTyped() throws Exception {
        Path season = folder.resolve("season");
        SmallAttempt.write(season.resolve("first"), "first", 0);
        SmallAttempt.write(season.resolve("second"), "second", 10);
        try (WindowRig rig = WindowRig.empty(folder)) {
            rig.desk.begin(
                    List.of(season.resolve("first"), season.resolve("second")),
                    java.util.Optional.empty());
            rig.until("the first", () -> rig.loop.shown().isPresent());
            rig.until("the other", () -> rig.diorama().moment().ghost().isPresent());
            rig.key("ctrl+shift+g");
            rig.until("the question", () -> rig.state().asking().name().equals("GAP"));
            rig.type("40");
            rig.key("Return");
            rig.until("a gap shared", () -> aligned(rig).on() == Alignment.On.GAP);
            // Where the first has come to 40 m for the first time, so has the second.
            Moment.Ghost ghost = rig.diorama().moment().ghost().orElseThrow();
            rig.time().seek(firstAt(rig.diorama().moment(), 40));
            rig.loop.round(rig.window);
            assertEquals(40, separation(rig.diorama().moment()), 1.5);
            assertEquals(40, separation(ghost.moment()), 1.5);
        }
    }

    private static Alignment aligned(WindowRig rig) {
        return rig.diorama().moment().ghost().orElseThrow().alignment();
    }

    private static double firstAt(Moment shown, double gap_m) {
        Moment moment = new Moment(shown.recording());
        for (double t_s = SyntheticDebrief.EXIT_S + 5; t_s < SyntheticDebrief.END_S; t_s += 0.1) {
            moment.fill(t_s);
            if (separation(moment) < gap_m) {
                return t_s;
            }
        }
        throw new AssertionError("never at " + gap_m);
    }

    private static double separation(Moment moment) {
        Body lead = moment.body(0);
        Body flyer = moment.body(1);
        return Math.sqrt(
                Math.pow(flyer.east_m() - lead.east_m(), 2)
                        + Math.pow(flyer.north_m() - lead.north_m(), 2)
                        + Math.pow(flyer.up_m() - lead.up_m(), 2));
    }

    @Test
    void aMarkLeavesTheLogsAsTheyWere() throws Exception {
        Path flown = SmallAttempt.write(folder.resolve("flown"), "flown", 0);
        Map<String, String> before = contents(flown);
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(List.of(flown));
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            rig.key("shift+m");
            rig.until("the question", () -> rig.state().asking().name().equals("NOTE"));
            rig.type("hand on wing");
            rig.key("Return");
            rig.until("the mark", () -> !rig.state().marks().isEmpty());
        }
        Map<String, String> after = contents(flown);
        assertNotEquals(before.keySet(), after.keySet());
        before.forEach((name, text) -> assertEquals(text, after.get(name), name));
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(Files::isRegularFile).sorted(Comparator.naturalOrder()).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
