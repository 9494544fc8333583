package pairdown.demo.receiver;

import java.util.Optional;
import pairdown.time.Span;
import pairdown.track.HeightDatum;

/**
 * A satellite log of one participant.
 *
 * @param participant whose log
 * @param file its name
 * @param model receivers of one model are alike in latency and in the lag of their velocities
 * @param format one of {@code gpx igc nmea kml csv}
 * @param velocity which velocities it holds
 * @param kept the true stretch it covers; else all of the participant's motion
 */
public record GnssPlan(
        String participant,
        String file,
        String model,
        String format,
        double rate_Hz,
        ReceiverErrors errors,
        ClockPlan clock,
        HeightPlan heights,
        Velocity velocity,
        Sight sight,
        Optional<Span> kept)
        implements LogPlan {
    /** Which velocities a log holds. */
    public enum Velocity {
        /** North, east and down. */
        COMPONENTS,
        /** Speed and direction over the ground, no vertical speed. */
        SPEED_AND_TRACK,
        NONE
    }

    /**
     * How a log's clock stands to UTC: logged time + offset = UTC, offset = {@code shift_s} + a
     * drawn error of {@code sigma_s} − a drawn latency of up to {@code mostLatency_s}.
     */
    public record ClockPlan(double shift_s, double sigma_s, double mostLatency_s) {
        /** As receivers are (common practice, no published source). */
        public static final ClockPlan USUAL = new ClockPlan(0, 0.02, 0.3);

        public static final ClockPlan TRUE = new ClockPlan(0, 0, 0);

        /** GPS time written as if it were UTC: 18 s ahead (no leap second since 2017). */
        public static final ClockPlan GPS_TIME = USUAL.shifted(-18);

        /** The same, off by {@code by_s} more: UTC = logged + offset. */
        public ClockPlan shifted(double by_s) {
            return new ClockPlan(shift_s + by_s, sigma_s, mostLatency_s);
        }
    }

    /**
     * What heights are measured from.
     *
     * @param separationLogged whether the log tells the geoid separation it used
     * @param geoidError_m the receiver's geoid minus EGM96
     */
    public record HeightPlan(HeightDatum datum, boolean separationLogged, double geoidError_m) {
        public static final HeightPlan ELLIPSOID = new HeightPlan(HeightDatum.ELLIPSOID, false, 0);

        public static final HeightPlan MSL = new HeightPlan(HeightDatum.MSL, false, 0);

        public static final HeightPlan MSL_AND_SEPARATION =
                new HeightPlan(HeightDatum.MSL, true, 0.6);
    }

    /**
     * A log at 5 Hz by a receiver unlike all others, with all velocities, usual errors and heights
     * above the ellipsoid.
     */
    public static GnssPlan of(String participant, String file, String format) {
        return new GnssPlan(
                participant,
                file,
                file,
                format,
                5,
                ReceiverErrors.CONSUMER,
                ClockPlan.USUAL,
                HeightPlan.ELLIPSOID,
                Velocity.COMPONENTS,
                Sight.USUAL,
                Optional.empty());
    }

    /** By a receiver of a model that others may be, too. */
    public GnssPlan model(String other) {
        return new GnssPlan(
                participant,
                file,
                other,
                format,
                rate_Hz,
                errors,
                clock,
                heights,
                velocity,
                sight,
                kept);
    }

    public GnssPlan rate(double other_Hz) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                other_Hz,
                errors,
                clock,
                heights,
                velocity,
                sight,
                kept);
    }

    public GnssPlan errors(ReceiverErrors other) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                other,
                clock,
                heights,
                velocity,
                sight,
                kept);
    }

    public GnssPlan clock(ClockPlan other) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                errors,
                other,
                heights,
                velocity,
                sight,
                kept);
    }

    public GnssPlan heights(HeightPlan other) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                errors,
                clock,
                other,
                velocity,
                sight,
                kept);
    }

    public GnssPlan velocity(Velocity other) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                errors,
                clock,
                heights,
                other,
                sight,
                kept);
    }

    public GnssPlan sight(Sight other) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                errors,
                clock,
                heights,
                velocity,
                other,
                kept);
    }

    public GnssPlan keeping(double start_s, double end_s) {
        return new GnssPlan(
                participant,
                file,
                model,
                format,
                rate_Hz,
                errors,
                clock,
                heights,
                velocity,
                sight,
                Optional.of(new Span(start_s, end_s)));
    }

    @Override
    public GnssPlan trulyAligned() {
        return errors(errors.promptVelocity()).clock(ClockPlan.TRUE).heights(HeightPlan.ELLIPSOID);
    }
}
