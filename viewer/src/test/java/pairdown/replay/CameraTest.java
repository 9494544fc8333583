package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.joml.Vector3d;
import org.junit.jupiter.api.Test;
import pairdown.camera.Ground;
import pairdown.camera.Pose;
import pairdown.camera.Sight;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;

class CameraTest {
    private static final double STEP_S = 1 / 60.0;
    private static final double ASPECT = 16 / 9.0;
    private static final double MATCHED_S = 115;

    private final Debrief debrief = new SyntheticDebrief().build();
    private final Recording recording = Recording.of(debrief);
    private final Moment moment = new Moment(recording);
    private final ViewState view = new ViewState(debrief);

    /** Poses of a second at a moment that stands still, after a switch of vantage point. */
    private List<Pose> move(Ground ground, Vantage from, Vantage to) {
        Camera camera = new Camera(recording, ground);
        List<Pose> way = new ArrayList<>();
        Pose pose = new Pose();
        moment.fill(MATCHED_S);
        camera.pose(moment, view, from, ASPECT, 10, pose);
        way.add(new Pose().set(pose));
        while (way.size() < 60) {
            camera.pose(moment, view, to, ASPECT, STEP_S, pose);
            way.add(new Pose().set(pose));
        }
        return way;
    }

    private static double step_m(List<Pose> way, int i) {
        return way.get(i).eye().distance(way.get(i - 1).eye());
    }

    @Test
    void aMoveBeginsAndEndsGently() {
        for (Vantage from : Vantage.of(debrief)) {
            for (Vantage to : Vantage.of(debrief)) {
                List<Pose> way = move(Ground.flat(0), from, to);
                double length = way.get(0).eye().distance(way.get(59).eye());
                double most = 0;
                for (int i = 1; i < 60; i++) {
                    most = Math.max(most, step_m(way, i));
                }
                String name = from.name() + " to " + to.name();
                // Eased over 0.7 s, 42 pictures: the fastest step is 1.5 times the mean, the first
                // is a sixteenth of the fastest.
                assertTrue(most <= 1.6 * length / 42 + 1e-6, name + " jumps " + most);
                assertTrue(step_m(way, 1) <= 0.1 * most + 1e-6, name + " starts with a jerk");
                assertEquals(0, step_m(way, 59), 1e-9, name + " has not arrived");
            }
        }
    }

    @Test
    void whereItLooksTurnsWithoutAJump() {
        Vector3d before = new Vector3d();
        for (Vantage to : Vantage.of(debrief)) {
            List<Pose> way = move(Ground.flat(0), Vantage.of(Vantage.Kind.DOOR), to);
            for (int i = 1; i < way.size(); i++) {
                before.set(way.get(i - 1).forward());
                double turned_deg = Math.toDegrees(before.angle(way.get(i).forward()));
                assertTrue(turned_deg < 8, to.name() + " turns by " + turned_deg);
            }
        }
    }

    @Test
    void noWayLeadsThroughTheGround() {
        // A hill of which all vantage points but the lead's would be inside.
        Ground hill = (east, north) -> 4000 - 0.1 * Math.hypot(east, north);
        for (Vantage from : Vantage.of(debrief)) {
            for (Vantage to : Vantage.of(debrief)) {
                for (Pose pose : move(hill, from, to)) {
                    double over = pose.eye().z - hill.up_m(pose.eye().x, pose.eye().y);
                    assertTrue(over > 1.6, from.name() + " to " + to.name() + " at " + over);
                }
            }
        }
    }

    @Test
    void eyesAndWingtipsTurnWithTheirMachine() {
        Camera camera = new Camera(recording, Ground.flat(0));
        Pose pose = new Pose();
        moment.fill(MATCHED_S);
        Body blue = moment.body(1);
        camera.pose(moment, view, Vantage.eyesOf("blue"), ASPECT, 10, pose);
        org.joml.Vector3f roof = blue.bodyToEnu().transform(new org.joml.Vector3f(0, 0, 1));
        // The top of the picture is the flyer's own up, as far as looking down or up lets it.
        Vector3d up = new Vector3d(roof.x, roof.y, roof.z);
        up.fma(-up.dot(pose.forward()), pose.forward()).normalize();
        assertEquals(0, up.distance(pose.up()), 1e-5);
        assertTrue(Math.abs(roof.x) + Math.abs(roof.y) > 0.05, "the flyer is level");
    }

    @Test
    void theViewHoldsEveryoneWhoJoins() {
        for (double t_s = SyntheticDebrief.EXIT_S + 5; t_s < SyntheticDebrief.OPENING_S; t_s += 3) {
            for (Vantage.Kind kind :
                    new Vantage.Kind[] {
                        Vantage.Kind.SQUARE_ON, Vantage.Kind.SQUARE_ON_LEFT, Vantage.Kind.PLAN
                    }) {
                assertAllSeen(kind, t_s);
            }
        }
    }

    @Test
    void whoIsNearIsSeenFromAstern() {
        for (double t_s = SyntheticDebrief.JOINED_S;
                t_s < SyntheticDebrief.JOINED_S + 30;
                t_s += 2) {
            assertAllSeen(Vantage.Kind.ASTERN_ABOVE, t_s);
        }
    }

    @Test
    void whatIsCoveredOnTheLeftHidesNobody() {
        Sight sight = new Sight();
        float[] xy = new float[2];
        Pose pose = new Pose();
        for (double t_s = SyntheticDebrief.EXIT_S + 5; t_s < SyntheticDebrief.OPENING_S; t_s += 3) {
            for (Vantage.Kind kind : List.of(Vantage.Kind.SQUARE_ON, Vantage.Kind.PLAN)) {
                moment.fill(t_s);
                Camera camera = new Camera(recording, Ground.flat(0));
                camera.leaveLeft(0.3);
                camera.pose(moment, view, Vantage.of(kind), ASPECT, 10, pose);
                sight.set(pose, 0, 0, 1600, 900);
                for (int i = 0; i < 3; i++) {
                    Body body = moment.body(i);
                    sight.project(body.east_m(), body.north_m(), body.up_m(), xy);
                    boolean in = xy[0] > 0.3 * 1600 && xy[0] < 1600 && xy[1] > 0 && xy[1] < 900;
                    assertTrue(in, body.id() + " covered from " + kind + " at " + t_s);
                }
            }
        }
    }

    private void assertAllSeen(Vantage.Kind kind, double t_s) {
        Sight sight = new Sight();
        float[] xy = new float[2];
        Pose pose = new Pose();
        moment.fill(t_s);
        new Camera(recording, Ground.flat(0))
                .pose(moment, view, Vantage.of(kind), ASPECT, 10, pose);
        sight.set(pose, 0, 0, 1600, 900);
        for (int i = 0; i < 3; i++) {
            Body body = moment.body(i);
            assertTrue(sight.project(body.east_m(), body.north_m(), body.up_m(), xy));
            boolean in = xy[0] > 0 && xy[0] < 1600 && xy[1] > 0 && xy[1] < 900;
            assertTrue(in, body.id() + " out of " + kind + " at " + t_s);
        }
    }
}
