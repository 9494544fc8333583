package pairdown.demo.logfile;

import java.util.Set;
import java.util.TreeSet;
import pairdown.track.Channel;
import pairdown.track.Track;

/** What loggers round their values to. */
final class Resolution {
    private Resolution() {}

    /** Decimals a logger writes of a channel in its own unit. */
    static int decimals(Channel channel) {
        return switch (channel) {
            case LATITUDE, LONGITUDE -> 7;
            case SATELLITES, FIX_TYPE, PROPELLER_SPEED, FLAP -> 0;
            case NORMAL_LOAD, LONGITUDINAL_LOAD, LATERAL_LOAD -> 3;
            case INDICATED_AIRSPEED,
                    PRESSURE_ALTITUDE,
                    OUTSIDE_AIR_TEMPERATURE,
                    HEADING,
                    PITCH,
                    ROLL,
                    POWER_LEVER,
                    BLADE_ANGLE,
                    TORQUE,
                    ELEVATOR,
                    RUDDER,
                    AILERON,
                    GEOID_SEPARATION ->
                    1;
            default -> 2;
        };
    }

    static double rounded(double value, Channel channel) {
        double steps = Math.pow(10, decimals(channel));
        return Math.rint(value * steps) / steps;
    }

    /** The track with its values rounded and without the channels in {@code left}. */
    static Track applied(Track track, Set<Channel> left) {
        Set<Channel> kept = new TreeSet<>(track.channels());
        kept.removeAll(left);
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < track.size(); i++) {
            rows.row(track.time_s(i));
            for (Channel channel : kept) {
                rows.set(channel, rounded(track.value(channel, i), channel));
            }
        }
        return rows.build(track.epoch(), track.datum(), track.report());
    }
}
