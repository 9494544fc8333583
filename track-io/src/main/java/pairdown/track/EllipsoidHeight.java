package pairdown.track;

import pairdown.geodesy.Geoid;

/**
 * Heights of a track's rows above the ellipsoid and above sea level, from its datum: the log's own
 * geoid separation where a row has one, else EGM96. Nothing is corrected.
 */
public final class EllipsoidHeight {
    private EllipsoidHeight() {}

    /** Height above the ellipsoid (m), NaN where the row has no position or no height. */
    public static double of(Track track, int row) {
        double height_m = track.value(Channel.HEIGHT, row);
        return track.datum() == HeightDatum.ELLIPSOID
                ? height_m
                : height_m + undulation_m(track, row);
    }

    /** Height above mean sea level (m), NaN where the row has no position or no height. */
    public static double msl_m(Track track, int row) {
        double height_m = track.value(Channel.HEIGHT, row);
        return track.datum() == HeightDatum.ELLIPSOID
                ? height_m - undulation_m(track, row)
                : height_m;
    }

    /** Geoid above ellipsoid (m) that goes with the row's height, NaN without a position. */
    public static double undulation_m(Track track, int row) {
        double own_m = track.value(Channel.GEOID_SEPARATION, row);
        if (!Double.isNaN(own_m)) {
            return own_m;
        }
        return track.hasPosition(row)
                ? Geoid.egm96()
                        .undulation_m(
                                track.value(Channel.LATITUDE, row),
                                track.value(Channel.LONGITUDE, row))
                : Double.NaN;
    }
}
