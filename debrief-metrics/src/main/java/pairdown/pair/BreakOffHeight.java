package pairdown.pair;

import pairdown.attempt.BreakOff;

/** A typed break-off height as one above the ellipsoid. */
public final class BreakOffHeight {
    private BreakOffHeight() {}

    /**
     * The limit above the ellipsoid (m).
     *
     * @param undulation_m height of the geoid above the ellipsoid there
     */
    public static double ellipsoid_m(BreakOff breakOff, double undulation_m) {
        return breakOff.height_m() + toEllipsoid_m(breakOff, undulation_m);
    }

    /** A height above the ellipsoid as one above the datum the limit was typed in (m). */
    public static double inDatum_m(double ellipsoid_m, BreakOff breakOff, double undulation_m) {
        return ellipsoid_m - toEllipsoid_m(breakOff, undulation_m);
    }

    private static double toEllipsoid_m(BreakOff breakOff, double undulation_m) {
        return switch (breakOff.datum()) {
            case ELLIPSOID -> 0;
            case MSL -> undulation_m;
            case AGL -> breakOff.field_m() + undulation_m;
        };
    }
}
