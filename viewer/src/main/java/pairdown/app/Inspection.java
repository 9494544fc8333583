package pairdown.app;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import pairdown.geodesy.Geodetic;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Flight;
import pairdown.track.Flights;
import pairdown.track.Gaps;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;

/**
 * What a log is, in figures.
 *
 * @param fixes rows with a position; rows at all in a log without positions are {@code rows}
 * @param start first instant, of the positions where there are some
 * @param span_s from first to last
 * @param rate_Hz fixes a second, from the usual step; absent for fewer than two
 * @param datum what heights are measured from, {@code "msl"} where that is an assumption
 * @param firstFix height above the ellipsoid, absent without a position
 * @param firstFixHasHeight whether that height was logged
 */
record Inspection(
        Track track,
        int fixes,
        int rows,
        Optional<Instant> start,
        Optional<Instant> end,
        double span_s,
        OptionalDouble rate_Hz,
        String datum,
        OptionalDouble geoidSeparation_m,
        List<String> channels,
        Optional<Geodetic> firstFix,
        boolean firstFixHasHeight,
        List<Flight> flights,
        List<Span> gaps) {

    static Inspection of(Track track) {
        OptionalInt first = track.firstFix();
        int from = first.orElse(0);
        int to = track.lastFix().orElse(track.size() - 1);
        double step_s = Gaps.usualStep_s(track);
        return new Inspection(
                track,
                track.fixes(),
                track.size(),
                instant(track, track.time_s(from)),
                instant(track, track.time_s(to)),
                track.time_s(to) - track.time_s(from),
                step_s > 0 ? OptionalDouble.of(rounded(1 / step_s, 4)) : OptionalDouble.empty(),
                track.datum() == HeightDatum.UNKNOWN ? "msl" : track.datum().key(),
                separation(track, first),
                channels(track),
                first.isPresent() ? Optional.of(place(track, from)) : Optional.empty(),
                first.isPresent() && track.has(Channel.HEIGHT) && hasHeight(track, from),
                Flights.of(track),
                Gaps.of(track));
    }

    LogReport report() {
        return track.report();
    }

    /** The instant of a time on the log's own clock, if it has absolute time. */
    static Optional<Instant> instant(Track track, double t_s) {
        return track.axis().map(axis -> axis.instant(t_s));
    }

    private static boolean hasHeight(Track track, int row) {
        return !Double.isNaN(track.value(Channel.HEIGHT, row));
    }

    private static Geodetic place(Track track, int row) {
        double height_m = EllipsoidHeight.of(track, row);
        return Geodetic.ofDegrees(
                track.value(Channel.LATITUDE, row),
                track.value(Channel.LONGITUDE, row),
                Double.isNaN(height_m) ? 0 : height_m);
    }

    private static OptionalDouble separation(Track track, OptionalInt fix) {
        return fix.isPresent()
                ? OptionalDouble.of(rounded(EllipsoidHeight.undulation_m(track, fix.getAsInt()), 3))
                : OptionalDouble.empty();
    }

    static double rounded(double value, int decimals) {
        double tens = Math.pow(10, decimals);
        return Math.round(value * tens) / tens;
    }

    private static List<String> channels(Track track) {
        return track.channels().stream()
                .filter(channel -> channel != Channel.GEOID_SEPARATION)
                .map(Channel::key)
                .toList();
    }
}
