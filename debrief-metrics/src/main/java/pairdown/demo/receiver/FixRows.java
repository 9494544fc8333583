package pairdown.demo.receiver;

import java.time.Instant;
import java.util.Optional;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/** Fixes as a log's rows: geodetic, heights from the planned datum, the planned velocities. */
final class FixRows {
    /** Fix with height, of a receiver by itself. */
    private static final double FIX_3D = 3;

    private final LocalFrame frame;
    private final GnssPlan plan;
    private final Track.Builder rows = new Track.Builder();

    FixRows(LocalFrame frame, GnssPlan plan) {
        this.frame = frame;
        this.plan = plan;
    }

    void add(Fix fix) {
        Geodetic at = frame.toGeodetic(fix.position_m());
        rows.row(fix.logged_s())
                .set(Channel.LATITUDE, at.latitude_deg())
                .set(Channel.LONGITUDE, at.longitude_deg());
        height(at);
        velocity(frame.rotationTo(LocalFrame.at(at)).times(fix.velocity_mps()));
        rows.set(Channel.HORIZONTAL_ACCURACY, fix.horizontalAccuracy_m())
                .set(Channel.VERTICAL_ACCURACY, fix.verticalAccuracy_m())
                .set(Channel.SPEED_ACCURACY, fix.speedAccuracy_mps())
                .set(Channel.SATELLITES, fix.satellites())
                .set(Channel.FIX_TYPE, FIX_3D);
    }

    private void height(Geodetic at) {
        if (plan.heights().datum() == HeightDatum.ELLIPSOID) {
            rows.set(Channel.HEIGHT, at.height_m());
            return;
        }
        double separation_m =
                Geoid.egm96().undulation_m(at.latitude_deg(), at.longitude_deg())
                        + plan.heights().geoidError_m();
        rows.set(Channel.HEIGHT, at.height_m() - separation_m);
        if (plan.heights().separationLogged()) {
            rows.set(Channel.GEOID_SEPARATION, separation_m);
        }
    }

    private void velocity(Vec3 enu_mps) {
        switch (plan.velocity()) {
            case COMPONENTS ->
                    rows.set(Channel.VELOCITY_NORTH, enu_mps.y())
                            .set(Channel.VELOCITY_EAST, enu_mps.x())
                            .set(Channel.VELOCITY_DOWN, -enu_mps.z());
            case SPEED_AND_TRACK -> {
                double track_deg = Math.toDegrees(StrictMath.atan2(enu_mps.x(), enu_mps.y()));
                rows.set(Channel.GROUND_SPEED, enu_mps.levelNorm())
                        .set(Channel.TRACK, track_deg < 0 ? track_deg + 360 : track_deg);
            }
            case NONE -> {}
        }
    }

    /**
     * @throws IllegalArgumentException if there was no fix
     */
    Track build(Instant start, LogReport report) {
        return rows.build(Optional.of(start), plan.heights().datum(), report);
    }
}
