package pairdown.scene;

import org.joml.Matrix4f;
import org.joml.Quaternionf;
import org.joml.Vector3d;
import pairdown.replay.Body;
import pairdown.replay.Moment;

/**
 * Where the participants of a second attempt are drawn: as they stood to their own lead, laid on
 * the lead of the first. Both leads' level axes are made to agree, so what differs is the approach,
 * not the place or the run's direction.
 */
final class Ghosts {
    private final Moment moment;
    private final double[] place = new double[3];
    private final Quaternionf turn = new Quaternionf();

    Ghosts(Moment moment) {
        this.moment = moment;
    }

    Moment moment() {
        return moment;
    }

    int size() {
        return moment.bodies().size();
    }

    Body body(int i) {
        return moment.body(i);
    }

    /** The ghost's own lead would lie on the first one: only the others are shown. */
    boolean isShown(int i) {
        int subject = moment.recording().subject();
        return subject >= 0
                && i != subject
                && moment.body(i).isPresent()
                && moment.body(subject).isPresent();
    }

    /** How far the second attempt is turned to lie on the first: clockwise from above (rad). */
    double turned_rad(Stage stage) {
        return stage.moment().leadHeading_rad() - moment.leadHeading_rad();
    }

    /** East, north, up of a ghost in the first attempt's frame (m); valid until the next call. */
    double[] place(Stage stage, int i) {
        Body lead = stage.moment().body(stage.moment().recording().subject());
        Body own = moment.body(moment.recording().subject());
        Body shown = moment.body(i);
        double by = turned_rad(stage);
        double east = shown.east_m() - own.east_m();
        double north = shown.north_m() - own.north_m();
        place[0] = lead.east_m() + east * Math.cos(by) + north * Math.sin(by);
        place[1] = lead.north_m() + north * Math.cos(by) - east * Math.sin(by);
        place[2] = lead.up_m() + shown.up_m() - own.up_m();
        return place;
    }

    void toRelative(Stage stage, int i, Matrix4f into) {
        double[] at = place(stage, i);
        Vector3d eye = stage.sight().pose().eye();
        turn.identity().rotateZ((float) -turned_rad(stage)).mul(moment.body(i).bodyToEnu());
        float scale = (float) stage.view().enlargement();
        into.translationRotateScale(
                (float) (at[0] - eye.x),
                (float) (at[1] - eye.y),
                (float) (at[2] - eye.z),
                turn.x,
                turn.y,
                turn.z,
                turn.w,
                scale,
                scale,
                scale);
    }
}
