package pairdown.replay;

import java.util.List;
import java.util.Optional;
import org.joml.Vector3d;
import org.joml.Vector3f;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Role;
import pairdown.camera.Easing;
import pairdown.camera.Ground;
import pairdown.camera.Orbit;
import pairdown.camera.Pose;
import pairdown.camera.Vantage;

/**
 * Stands the camera at the chosen vantage point. The pose is a pure function of the moment and the
 * view, except for the eased way from one vantage point to the next, which takes real time.
 */
public final class Camera {
    /** Long enough to see which way one is carried, short enough not to wait. */
    private static final double ASTERN_M = 25;

    private static final double MOST_ASTERN_M = 60;

    /** The share of the picture's width that flyers may fill, seen from astern. */
    private static final double ASTERN_FILLED = 0.85;

    private static final double MOVE_S = 0.7;

    private final Recording recording;
    private final Ground ground;
    private final Framing framing;
    private final Moment held;
    private final Optional<LeverArm> leftSlot;
    private final Optional<LeverArm> rightSlot;
    private final Pose from = new Pose();
    private final Pose goal = new Pose();
    private final Vector3d eye = new Vector3d();
    private final Vector3d direction = new Vector3d();
    private final Vector3d top = new Vector3d();
    private final Vector3d spot = new Vector3d();
    private final Vector3d aim = new Vector3d();
    private final Vector3f arm = new Vector3f();
    private Optional<Vantage> at = Optional.empty();
    private double moved_s = MOVE_S;
    private double heldAt_s = Double.NaN;
    private double takenShare;

    public Camera(Recording recording, Ground ground) {
        this.recording = recording;
        this.ground = ground;
        this.framing = new Framing(recording, ground);
        this.held = new Moment(recording);
        this.leftSlot = slot(held, -1);
        this.rightSlot = slot(held, 1);
    }

    /**
     * The pose for a frame.
     *
     * @param vantage whence
     * @param aspect width of the picture by its height
     * @param elapsed_s real time since the last frame: what the eased move goes by
     */
    public void pose(
            Moment moment,
            ViewState view,
            Vantage vantage,
            double aspect,
            double elapsed_s,
            Pose into) {
        if (at.isEmpty() || !at.get().equals(vantage)) {
            if (at.isPresent()) {
                from.set(into);
                leave(moment, view);
                moved_s = 0;
            }
            at = Optional.of(vantage);
        }
        stand(moment, view, vantage, aspect, into);
        moved_s = Math.min(MOVE_S, moved_s + elapsed_s);
        if (moved_s < MOVE_S) {
            goal.set(into);
            arrive(moment, view);
            into.set(from).toward(goal, Easing.smooth(moved_s / MOVE_S));
            carry(moment, view, into, 1);
        }
        into.above(ground);
    }

    /**
     * What the picture is about stands right of this share of its width, which something else
     * covers: seen square-on and from above, where the camera chooses its place by it.
     */
    public void leaveLeft(double share) {
        takenShare = share;
    }

    /** Ends a move at once: for a picture that stands alone. */
    public void settle() {
        moved_s = MOVE_S;
    }

    /** Whether it is on its way from one vantage point to the next. */
    public boolean isMoving() {
        return moved_s < MOVE_S;
    }

    /** On the way, places are kept in the lead's axes: both ends move with it. */
    private void leave(Moment moment, ViewState view) {
        carry(moment, view, from, -1);
    }

    private void arrive(Moment moment, ViewState view) {
        carry(moment, view, goal, -1);
    }

    private void carry(Moment moment, ViewState view, Pose pose, int way) {
        framing.subject(moment, spot);
        double heading = framing.heading_rad(moment, view.frame());
        if (way > 0) {
            pose.turnAbout(0, 0, heading).move(spot.x, spot.y, spot.z);
        } else {
            pose.move(-spot.x, -spot.y, -spot.z).turnAbout(0, 0, -heading);
        }
    }

    private void stand(Moment moment, ViewState view, Vantage vantage, double aspect, Pose into) {
        Moment shown = moment;
        if (!view.isFollowing()) {
            if (heldAt_s != view.heldAt_s()) {
                heldAt_s = view.heldAt_s();
                held.fill(heldAt_s);
            }
            shown = held;
        }
        switch (vantage.kind()) {
            case SQUARE_ON -> aside(shown, view, aspect, 1, into);
            case SQUARE_ON_LEFT -> aside(shown, view, aspect, -1, into);
            case PLAN -> overhead(shown, view, aspect, into);
            case ASTERN_ABOVE -> astern(shown, view, aspect, into);
            case LEFT_WINDOW -> window(shown, view, -1, into);
            case RIGHT_WINDOW -> window(shown, view, 1, into);
            case LEFT_WINGTIP -> wingtip(shown, view, -1, into);
            case RIGHT_WINGTIP -> wingtip(shown, view, 1, into);
            case EYES -> eyes(shown, view, vantage.who(), into);
            case DOOR -> door(shown, view, into);
            case GROUND -> observer(shown, view, into);
            case ORBIT -> orbit(shown, view, into);
        }
    }

    private void aside(Moment moment, ViewState view, double aspect, int side, Pose into) {
        double heading = framing.heading_rad(moment, view.frame());
        framing.fit(moment, heading, false);
        double distance = distance_m(view, aspect);
        // A little above the level of the target: the ground's grid gives depth.
        eye.set(framing.centre()).add(right(heading, side * distance)).add(0, 0, 0.06 * distance);
        direction.set(framing.centre()).sub(eye);
        into.set(eye, direction, top.set(0, 0, 1), view.fieldOfView_deg(), near_m(distance));
        into.shift(takenShare);
    }

    private void overhead(Moment moment, ViewState view, double aspect, Pose into) {
        double heading = framing.heading_rad(moment, view.frame());
        framing.fit(moment, heading, true);
        double distance = distance_m(view, aspect);
        eye.set(framing.centre()).add(0, 0, distance);
        top.set(Math.sin(heading), Math.cos(heading), 0);
        into.set(eye, direction.set(0, 0, -1), top, view.fieldOfView_deg(), near_m(distance));
        into.shift(takenShare);
    }

    private double distance_m(ViewState view, double aspect) {
        return framing.distance_m(view.fieldOfView_deg(), aspect * (1 - takenShare)) / view.zoom();
    }

    /**
     * Behind and above by 25 m, the trade's usual mirror of the lead; further, up to a limit, while
     * the flyers would stand outside the picture.
     */
    private void astern(Moment moment, ViewState view, double aspect, Pose into) {
        double heading = framing.heading_rad(moment, view.frame());
        framing.fit(moment, heading, false);
        double fov_deg = view.fieldOfView_deg() * 1.25;
        double reach = ASTERN_FILLED * aspect * Math.tan(Math.toRadians(fov_deg) / 2);
        double needed_m = framing.behind_m() + framing.aside_m() / reach;
        double back_m = Math.max(ASTERN_M, Math.min(MOST_ASTERN_M, needed_m)) / view.zoom();
        framing.subject(moment, spot);
        eye.set(spot)
                .sub(Math.sin(heading) * back_m, Math.cos(heading) * back_m, 0)
                .add(0, 0, 0.55 * back_m);
        direction.set(spot).sub(eye);
        into.set(eye, direction, top.set(0, 0, 1), fov_deg, near_m(back_m));
    }

    private void window(Moment moment, ViewState view, int side, Pose into) {
        Optional<Body> lead = moment.subject();
        if (lead.isEmpty()) {
            return;
        }
        place(lead.get(), 1.3f, side * 0.45f, 0.75f, eye);
        Optional<LeverArm> planned = side < 0 ? leftSlot : rightSlot;
        if (planned.isPresent()) {
            LeverArm slot = planned.get();
            place(
                    lead.get(),
                    (float) slot.ahead_m(),
                    (float) slot.right_m(),
                    (float) slot.above_m(),
                    direction);
            direction.sub(eye);
        } else {
            turn(lead.get(), -0.35f, side, -0.05f, direction);
        }
        turn(lead.get(), 0, 0, 1, top);
        into.set(eye, direction, top, widest(view, 62), 0.1);
    }

    /** A camera on the tip, ahead of the slot: on the flyer who comes, else outboard and aft. */
    private void wingtip(Moment moment, ViewState view, int side, Pose into) {
        Optional<Body> lead = moment.subject();
        if (lead.isEmpty()) {
            return;
        }
        place(lead.get(), 2.6f, side * 7.6f, 0.9f, eye);
        int number = flyerOnSide(moment, side);
        if (number >= 0) {
            Body flyer = moment.body(number);
            direction.set(flyer.east_m(), flyer.north_m(), flyer.up_m());
            direction.sub(eye);
        } else {
            turn(lead.get(), -0.8f, side * 0.6f, -0.12f, direction);
        }
        turn(lead.get(), 0, 0, 1, top);
        into.set(eye, direction, top, widest(view, 62), 0.1);
    }

    /** The number of the flyer between exit and opening whose slot is on that side; −1 for none. */
    private static int flyerOnSide(Moment moment, int side) {
        List<Link> links = moment.links();
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            Optional<LeverArm> slot = link.pair().slotArm();
            if (slot.isPresent()
                    && slot.get().right_m() * side > 0
                    && link.isPresent()
                    && moment.body(link.flyer()).isPresent()) {
                return link.flyer();
            }
        }
        return -1;
    }

    /** Looking at the slot, or at the lead where there is none; the head is the flyer's. */
    private void eyes(Moment moment, ViewState view, Optional<String> who, Pose into) {
        int number = flyer(moment, who);
        Optional<Body> lead = moment.subject();
        if (number < 0 || lead.isEmpty()) {
            framingFallback(moment, view, into);
            return;
        }
        Body flyer = moment.body(number);
        place(flyer, 0.75f, 0, 0.15f, eye);
        LeverArm arm = slotOf(moment, flyer);
        place(
                lead.get(),
                (float) arm.ahead_m(),
                (float) arm.right_m(),
                (float) arm.above_m(),
                direction);
        direction.sub(eye);
        // In the slot itself there is no way to look to it: then half ahead, half to the lead.
        double near = direction.length();
        turn(flyer, 1, 0, 0, spot);
        direction
                .normalize()
                .lerp(besideAhead(flyer, lead.get()), 1 - Easing.smooth((near - 1) / 4));
        turn(flyer, 0, 0, 1, top);
        into.set(eye, direction, top, widest(view, 70), 0.1);
    }

    /** Half way between ahead, in {@code spot}, and the lead's nose. */
    private Vector3d besideAhead(Body flyer, Body lead) {
        place(lead, 2, 0, 0, aim);
        aim.sub(flyer.east_m(), flyer.north_m(), flyer.up_m());
        if (aim.lengthSquared() > 1) {
            spot.add(aim.normalize()).normalize();
        }
        return spot;
    }

    private void door(Moment moment, ViewState view, Pose into) {
        int ship = withRole(moment, Role.JUMPSHIP);
        if (ship < 0) {
            framingFallback(moment, view, into);
            return;
        }
        place(moment.body(ship), -2.6f, -1.5f, 0.2f, eye);
        framing.fit(moment, moment.leadHeading_rad(), false);
        direction.set(framing.centre()).sub(eye);
        into.set(eye, direction, top.set(0, 0, 1), widest(view, 50), 0.1);
    }

    private void observer(Moment moment, ViewState view, Pose into) {
        eye.set(framing.observer());
        framing.fit(moment, moment.leadHeading_rad(), false);
        direction.set(framing.centre()).sub(eye);
        double wide_deg = 2.6 * Math.toDegrees(Math.atan(framing.radius_m() / direction.length()));
        into.set(
                eye,
                direction,
                top.set(0, 0, 1),
                Math.max(0.5, Math.min(60, wide_deg / view.zoom())),
                Math.max(1, NEAREST_SHARE * direction.length()));
    }

    private void orbit(Moment moment, ViewState view, Pose into) {
        Orbit orbit = view.orbit();
        double heading =
                view.frame() == ViewState.Frame.LEAD
                        ? framing.heading_rad(moment, view.frame())
                        : 0;
        double azimuth = heading + Math.toRadians(orbit.azimuth_deg());
        double elevation = Math.toRadians(orbit.elevation_deg());
        framing.subject(moment, spot);
        direction.set(
                -Math.sin(azimuth) * Math.cos(elevation),
                -Math.cos(azimuth) * Math.cos(elevation),
                -Math.sin(elevation));
        eye.set(direction).mul(-orbit.distance_m()).add(spot);
        into.set(
                eye,
                direction,
                top.set(0, 0, 1),
                view.fieldOfView_deg(),
                near_m(orbit.distance_m()));
    }

    private void framingFallback(Moment moment, ViewState view, Pose into) {
        aside(moment, view, 1.6, 1, into);
    }

    /**
     * A telescope's view: with a nearest place at arm's length, depths of a wing's two sides would
     * be the same number.
     */
    private static final double NEAREST_SHARE = 0.05;

    private static double near_m(double distance_m) {
        return Math.max(0.1, Math.min(2, 0.05 * distance_m));
    }

    /** Views from inside a machine are wide; a person's own choice scales them. */
    private static double widest(ViewState view, double natural_deg) {
        return Math.min(110, natural_deg * view.fieldOfView_deg() / 40 / Math.sqrt(view.zoom()));
    }

    private Vector3d right(double heading_rad, double by_m) {
        return direction.set(Math.cos(heading_rad) * by_m, -Math.sin(heading_rad) * by_m, 0);
    }

    /** A place on a machine, in the attempt's frame. */
    private void place(Body body, float ahead_m, float right_m, float above_m, Vector3d into) {
        turn(body, ahead_m, right_m, above_m, into);
        into.add(body.east_m(), body.north_m(), body.up_m());
    }

    private void turn(Body body, float ahead, float right, float above, Vector3d into) {
        body.bodyToEnu().transform(arm.set(right, ahead, above));
        into.set(arm.x, arm.y, arm.z);
    }

    /** The number of a flyer who is there; −1 for none. */
    private static int flyer(Moment moment, Optional<String> who) {
        List<Body> bodies = moment.bodies();
        for (int i = 0; i < bodies.size(); i++) {
            Body body = bodies.get(i);
            boolean wanted = who.isPresent() ? body.id().equals(who.get()) : body.role().isJumper();
            if (wanted && body.isPresent()) {
                return i;
            }
        }
        return -1;
    }

    private static int withRole(Moment moment, Role role) {
        List<Body> bodies = moment.bodies();
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).role() == role && bodies.get(i).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    /** The lead's slot on a side: −1 left, 1 right. */
    private static Optional<LeverArm> slot(Moment moment, int side) {
        return moment.subject().stream()
                .flatMap(lead -> lead.participant().participant().slots().values().stream())
                .filter(slot -> slot.right_m() * side > 0)
                .findFirst();
    }

    private static LeverArm slotOf(Moment moment, Body flyer) {
        List<Link> links = moment.links();
        for (int i = 0; i < links.size(); i++) {
            if (moment.body(links.get(i).flyer()) == flyer) {
                return links.get(i).pair().slotArm().orElse(LeverArm.NONE);
            }
        }
        return LeverArm.NONE;
    }

    public Recording recording() {
        return recording;
    }
}
