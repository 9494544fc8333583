package pairdown.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pairdown.gl.WindowEvent;
import pairdown.gl.WindowEvent.ButtonTurned;
import pairdown.gl.WindowEvent.Held;
import pairdown.gl.WindowEvent.MouseButton;
import pairdown.gl.WindowEvent.Moved;
import pairdown.gl.WindowEvent.Scrolled;

class PointerTest {
    private static final Held SHIFT = new Held(true, false, false);
    private static final Held CONTROL = new Held(false, true, false);

    private final HitAreas areas = new HitAreas(2);
    private final Pointer pointer = new Pointer();
    private final List<Command> commands = new ArrayList<>();

    @BeforeEach
    void lay() {
        areas.begin(0);
        areas.slider(100, 0, 200, 50, Action.SEEK_ON_STRIP, 10, 30);
        areas.button(0, 0, 50, 50, Action.PLAY);
        areas.begin(1);
        areas.button(120, 10, 10, 10, Action.CHOOSE_FLYER, 3);
    }

    private boolean does(WindowEvent event) {
        return pointer.take(event, areas, commands::add);
    }

    private static ButtonTurned press(double x, double y, Held held) {
        return new ButtonTurned(MouseButton.LEFT, true, x, y, held);
    }

    private static ButtonTurned release(double x, double y) {
        return new ButtonTurned(MouseButton.LEFT, false, x, y, Held.NOTHING);
    }

    @Test
    void aPressOnAButtonIsItsAction() {
        assertTrue(does(press(20, 20, Held.NOTHING)));
        assertEquals(List.of(Command.of(Action.PLAY)), commands);
    }

    @Test
    void theUpperLayerIsPressedFirst() {
        does(press(125, 15, Held.NOTHING));
        assertEquals(List.of(new Command(Action.CHOOSE_FLYER, 3)), commands);
    }

    @Test
    void aDragFollowsThePointerEvenOutside() {
        does(press(200, 30, Held.NOTHING));
        does(new Moved(250, 400));
        does(new Moved(900, 400));
        does(release(900, 400));
        assertFalse(does(new Moved(150, 30)));
        assertEquals(
                List.of(
                        new Command(Action.SEEK_ON_STRIP, 20),
                        new Command(Action.SEEK_ON_STRIP, 25),
                        new Command(Action.SEEK_ON_STRIP, 30)),
                commands);
    }

    @Test
    void aDragWithShiftMovesTheStripUnderThePointer() {
        does(press(200, 30, SHIFT));
        does(new Moved(220, 30));
        assertEquals(1, commands.size());
        assertEquals(Action.PAN_STRIPS, commands.get(0).action());
        // Twenty pixels of two hundred are two seconds of twenty: what was at 12 is seen at 10.
        assertEquals(8, commands.get(0).value(), 1e-6);
    }

    @Test
    void theWheelZoomsWhereItIs() {
        does(new Scrolled(0, 1, 150, 30, Held.NOTHING));
        does(new Scrolled(0, -1, 150, 30, Held.NOTHING));
        assertEquals(
                List.of(
                        new Command(Action.ZOOM_STRIPS_AT, 15),
                        new Command(Action.UNZOOM_STRIPS_AT, 15)),
                commands);
    }

    @Test
    void aPressWithControlSetsACursor() {
        does(press(200, 30, CONTROL));
        assertEquals(List.of(new Command(Action.CURSOR_A_AT, 20)), commands);
        assertFalse(pointer.isHolding());
    }

    @Test
    void whereNothingLiesTheSceneGetsIt() {
        assertFalse(does(press(500, 300, Held.NOTHING)));
        assertTrue(commands.isEmpty());
    }
}
