package pairdown.height;

import pairdown.geodesy.Geoid;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;

/**
 * One log's heights above the ellipsoid under one reading of its datum, before any bias is taken
 * off. Mean-sea-level heights get the receiver's own geoid separation where the log carries it
 * (receivers' geoids differ from EGM96 by metres), else EGM96 at the place.
 */
final class EllipsoidHeights {
    /** Undulation changes by centimetres over this; the model is asked again beyond it (deg). */
    private static final double GEOID_STEP_DEG = 0.005;

    private final Track track;
    private final HeightDatum datum;
    private final boolean ownGeoid;
    private final float[] undulation_m;
    private final double meanUndulation_m;

    private EllipsoidHeights(
            Track track, HeightDatum datum, boolean ownGeoid, float[] undulation_m) {
        this.track = track;
        this.datum = datum;
        this.ownGeoid = ownGeoid;
        this.undulation_m = undulation_m;
        this.meanUndulation_m = mean(undulation_m);
    }

    /** Under the datum the log states; an open datum is read as mean sea level. */
    static EllipsoidHeights of(Track track) {
        boolean own = track.has(Channel.GEOID_SEPARATION);
        HeightDatum read =
                track.datum() == HeightDatum.ELLIPSOID ? HeightDatum.ELLIPSOID : HeightDatum.MSL;
        return new EllipsoidHeights(track, read, own, undulations(track, own));
    }

    /** The same heights read from the other datum. */
    EllipsoidHeights readAs(HeightDatum other) {
        return new EllipsoidHeights(track, other, ownGeoid, undulation_m);
    }

    HeightDatum datum() {
        return datum;
    }

    /** Whether the receiver's own word, not a model, led to the ellipsoid. */
    boolean isOwn() {
        return ownGeoid || datum == HeightDatum.ELLIPSOID;
    }

    /** Whether the log carries its receiver's geoid, which leaves no doubt about the datum. */
    boolean carriesGeoid() {
        return ownGeoid;
    }

    /** Geoid above ellipsoid over the log (m), whatever the datum. */
    double undulation_m() {
        return meanUndulation_m;
    }

    /** What was added to reach the ellipsoid, mean over the log. */
    double added_m() {
        return datum == HeightDatum.ELLIPSOID ? 0 : meanUndulation_m;
    }

    /** Height of a row above the ellipsoid, NaN where it has none. */
    double at(int row) {
        double added_m = datum == HeightDatum.ELLIPSOID ? 0 : undulation_m[row];
        return track.value(Channel.HEIGHT, row) + added_m;
    }

    private static float[] undulations(Track track, boolean own) {
        float[] out = new float[track.size()];
        Undulation undulation = new Undulation(track, own);
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) undulation.at(i);
        }
        return out;
    }

    private static double mean(float[] values) {
        double sum = 0;
        int count = 0;
        for (float v : values) {
            if (!Float.isNaN(v)) {
                sum += v;
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    /** The undulation by row: the receiver's own, held where a row lacks it, else the model's. */
    private static final class Undulation {
        private final Track track;
        private final boolean own;
        private double value_m = Double.NaN;
        private double latitude_deg = Double.NaN;
        private double longitude_deg = Double.NaN;

        Undulation(Track track, boolean own) {
            this.track = track;
            this.own = own;
            for (int i = 0; own && i < track.size() && Double.isNaN(value_m); i++) {
                value_m = track.value(Channel.GEOID_SEPARATION, i);
            }
        }

        double at(int row) {
            if (own) {
                double stated_m = track.value(Channel.GEOID_SEPARATION, row);
                value_m = Double.isNaN(stated_m) ? value_m : stated_m;
            } else if (track.hasPosition(row)) {
                askModel(track.value(Channel.LATITUDE, row), track.value(Channel.LONGITUDE, row));
            }
            return value_m;
        }

        private void askModel(double lat_deg, double lon_deg) {
            boolean near =
                    Math.abs(lat_deg - latitude_deg) < GEOID_STEP_DEG
                            && Math.abs(lon_deg - longitude_deg) < GEOID_STEP_DEG;
            if (!near) {
                latitude_deg = lat_deg;
                longitude_deg = lon_deg;
                value_m = Geoid.egm96().undulation_m(lat_deg, lon_deg);
            }
        }
    }
}
