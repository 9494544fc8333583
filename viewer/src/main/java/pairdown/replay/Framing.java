package pairdown.replay;

import java.util.List;
import java.util.OptionalDouble;
import org.joml.Vector3d;
import pairdown.camera.Easing;
import pairdown.camera.Ground;
import pairdown.pair.Approach;
import pairdown.phase.EventKind;

/**
 * What a view must hold: the lead and the flyers between exit and opening, as far as they can be
 * shown together. A newcomer is taken in over a few seconds, so that nothing jumps.
 */
final class Framing {
    /** Nearer would cut the lead's wings off. */
    private static final double LEAST_RADIUS_M = 9;

    /** Beyond, all would be dots: then the lead alone counts. */
    private static final double MOST_RADIUS_M = 180;

    private static final double TAKE_IN_S = 3;

    /** Room round what must be seen, for names. */
    private static final double MARGIN = 1.25;

    /** Where the observer stands aside of the descent's middle. */
    private static final double OBSERVER_ASIDE_M = 700;

    private final double worldHeading_rad;
    private final Vector3d observer = new Vector3d();
    private final Vector3d centre = new Vector3d();
    private final double[] low = new double[3];
    private final double[] high = new double[3];
    private double radius_m = LEAST_RADIUS_M;
    private double halfWidth_m;
    private double halfHeight_m;
    private double halfDepth_m;

    Framing(Recording recording, Ground ground) {
        double middle_s = middle_s(recording);
        this.worldHeading_rad =
                recording.axes().map(axes -> axes.heading_rad(middle_s)).orElse(0.0);
        Moment middle = new Moment(recording);
        middle.fill(middle_s);
        subject(middle, observer);
        observer.add(
                Math.cos(worldHeading_rad) * OBSERVER_ASIDE_M,
                -Math.sin(worldHeading_rad) * OBSERVER_ASIDE_M,
                0);
        observer.z = ground.up_m(observer.x, observer.y);
    }

    /** The instant an attempt is about: the closest approach, else the middle after the exit. */
    static double middle_s(Recording recording) {
        OptionalDouble closest =
                recording.debrief().pairs().stream()
                        .flatMap(p -> p.closest().stream())
                        .mapToDouble(Approach::time_s)
                        .min();
        if (closest.isPresent()) {
            return closest.getAsDouble();
        }
        double end_s = recording.debrief().span().end_s();
        double exit_s =
                recording.events().stream()
                        .filter(e -> e.kind() == EventKind.EXIT)
                        .mapToDouble(e -> e.time_s())
                        .findFirst()
                        .orElse(recording.debrief().span().start_s());
        return exit_s + (end_s - exit_s) / 4;
    }

    /** Where the lead is; at the nearest end of its track outside it. */
    void subject(Moment moment, Vector3d into) {
        Recording recording = moment.recording();
        if (recording.subject() < 0) {
            into.zero();
            return;
        }
        Body body = moment.body(recording.subject());
        into.set(body.east_m(), body.north_m(), body.up_m());
    }

    /** Clockwise from north (rad): the lead's way now, or one for the whole descent. */
    double heading_rad(Moment moment, ViewState.Frame frame) {
        return frame == ViewState.Frame.LEAD ? moment.leadHeading_rad() : worldHeading_rad;
    }

    Vector3d observer() {
        return observer;
    }

    /**
     * Finds the box round all that must be seen.
     *
     * @param fromAbove whether the picture's height runs along the heading rather than up
     */
    void fit(Moment moment, double heading_rad, boolean fromAbove) {
        subject(moment, centre);
        double s = Math.sin(heading_rad);
        double c = Math.cos(heading_rad);
        for (int k = 0; k < 3; k++) {
            low[k] = -LEAST_RADIUS_M;
            high[k] = LEAST_RADIUS_M;
        }
        List<Link> links = moment.links();
        for (int i = 0; i < links.size(); i++) {
            takeIn(moment, links.get(i), s, c);
        }
        double ahead = (low[0] + high[0]) / 2;
        double right = (low[1] + high[1]) / 2;
        centre.add(ahead * s + right * c, ahead * c - right * s, (low[2] + high[2]) / 2);
        halfWidth_m = (high[fromAbove ? 1 : 0] - low[fromAbove ? 1 : 0]) / 2;
        halfHeight_m = (high[fromAbove ? 0 : 2] - low[fromAbove ? 0 : 2]) / 2;
        halfDepth_m = (high[fromAbove ? 2 : 1] - low[fromAbove ? 2 : 1]) / 2;
        radius_m = Math.max(halfWidth_m, halfHeight_m);
    }

    private void takeIn(Moment moment, Link link, double s, double c) {
        Body flyer = moment.body(link.flyer());
        if (!link.isPresent()
                || !flyer.isPresent()
                || link.lead() != moment.recording().subject()) {
            return;
        }
        Body lead = moment.body(link.lead());
        double east = flyer.east_m() - lead.east_m();
        double north = flyer.north_m() - lead.north_m();
        double up = flyer.up_m() - lead.up_m();
        double away = Math.sqrt(east * east + north * north + up * up);
        double since_s = moment.t_s() - link.pair().series().time_s(0);
        double share =
                Easing.smooth(since_s / TAKE_IN_S)
                        * (1 - Easing.smooth((away - MOST_RADIUS_M) / MOST_RADIUS_M));
        widen(0, (east * s + north * c) * share);
        widen(1, (east * c - north * s) * share);
        widen(2, up * share);
    }

    private void widen(int axis, double to_m) {
        low[axis] = Math.min(low[axis], to_m - 0.3 * LEAST_RADIUS_M);
        high[axis] = Math.max(high[axis], to_m + 0.3 * LEAST_RADIUS_M);
    }

    Vector3d centre() {
        return centre;
    }

    double radius_m() {
        return radius_m;
    }

    /** How far behind the lead anything to be seen is. */
    double behind_m() {
        return -low[0];
    }

    /** How far to either side of the lead anything to be seen is. */
    double aside_m() {
        return Math.max(-low[1], high[1]);
    }

    /** How far away a camera must stand for the box, its near side too, to fit with a margin. */
    double distance_m(double fov_deg, double aspect) {
        double reach = Math.tan(Math.toRadians(fov_deg) / 2);
        double across = Math.max(halfHeight_m / reach, halfWidth_m / (reach * aspect));
        return MARGIN * across + Math.max(0, halfDepth_m - LEAST_RADIUS_M);
    }
}
