package pairdown.scene;

import org.joml.Vector3f;
import pairdown.camera.Sight;
import pairdown.camera.Vantage;
import pairdown.film.Studio;
import pairdown.replay.Body;
import pairdown.replay.Moment;

/** Says where a place of the world must land in a studio's last picture. */
final class Probe {
    private final Sight sight = new Sight();
    private final int width;
    private final int height;

    Probe(int width, int height) {
        this.width = width;
        this.height = height;
    }

    /** A place in the attempt's frame. */
    float[] at(Studio studio, double east_m, double north_m, double up_m) {
        return project(studio, east_m, north_m, up_m);
    }

    private float[] project(Studio studio, double e, double n, double u) {
        sight.set(studio.diorama().pose(), 0, 0, width, height);
        float[] xy = new float[2];
        if (!sight.project(e, n, u, xy)) {
            throw new AssertionError("behind the camera");
        }
        return xy;
    }

    float[] place(Studio studio, Vantage vantage, int participant) {
        Body body = studio.diorama().moment().body(participant);
        return project(studio, body.east_m(), body.north_m(), body.up_m());
    }

    /** A place in the lead's body axes. */
    float[] besideLead(Studio studio, Vantage vantage, double right, double ahead, double above) {
        Body lead = studio.diorama().moment().body(0);
        Vector3f arm =
                lead.bodyToEnu()
                        .transform(new Vector3f((float) right, (float) ahead, (float) above));
        return project(studio, lead.east_m() + arm.x, lead.north_m() + arm.y, lead.up_m() + arm.z);
    }

    /** A place in the lead's level axes. */
    float[] besideLeadLevel(
            Studio studio, Vantage vantage, double right, double ahead, double above) {
        Body lead = studio.diorama().moment().body(0);
        double h = studio.diorama().moment().leadHeading_rad();
        return project(
                studio,
                lead.east_m() + right * Math.cos(h) + ahead * Math.sin(h),
                lead.north_m() + ahead * Math.cos(h) - right * Math.sin(h),
                lead.up_m() + above);
    }

    /** Right, ahead, above of a participant from its own lead, level. */
    static double[] leadAxes(Moment moment, int participant) {
        Body lead = moment.body(0);
        Body body = moment.body(participant);
        double e = body.east_m() - lead.east_m();
        double n = body.north_m() - lead.north_m();
        double h = moment.leadHeading_rad();
        return new double[] {
            e * Math.cos(h) - n * Math.sin(h),
            e * Math.sin(h) + n * Math.cos(h),
            body.up_m() - lead.up_m()
        };
    }
}
