package pairdown.attempt;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;

/** Across the 180th meridian, 40 m/s to the east. */
class SameFlightTest {
    private static final Instant EPOCH = Instant.parse("2031-05-14T15:00:00Z");
    private static final double DEGREE_M = 111_195;

    private static Track log(double step_s, double lateBy_s, double digits, double apart_m) {
        return log(step_s, lateBy_s, digits, t -> apart_m);
    }

    private interface Offset {
        double at(double t_s);
    }

    /** Places rounded to {@code digits} of a degree, {@code offset} metres to the north. */
    private static Track log(double step_s, double lateBy_s, double digits, Offset offset) {
        Track.Builder rows = new Track.Builder();
        for (double t_s = 0; t_s < 300; t_s += step_s) {
            double lon_deg = 179.97 + 40 * t_s / DEGREE_M;
            double lat_deg = offset.at(t_s) / DEGREE_M;
            rows.row(t_s + lateBy_s)
                    .set(Channel.LATITUDE, Math.rint(lat_deg / digits) * digits)
                    .set(
                            Channel.LONGITUDE,
                            Math.IEEEremainder(Math.rint(lon_deg / digits) * digits, 360));
        }
        return rows.build(
                Optional.of(EPOCH.minusSeconds(7)),
                HeightDatum.MSL,
                LogReport.whole("a.gpx", "gpx"));
    }

    @Test
    void theSamePlacesAtTheSameInstantsAreOneFlight() {
        Track fine = log(0.2, 0, 1e-9, 0);
        assertTrue(SameFlight.of(fine, log(0.2, 0, 1e-9, 0)));
        assertTrue(SameFlight.of(fine, log(1, 0, 1 / 60e3, 0)), "as IGC rounds it");
        assertTrue(SameFlight.of(log(1, 0, 1 / 60e3, 0), fine), "either way round");
    }

    @Test
    void aTenthOfASecondOrTwoMetresApartAreTwoFlights() {
        Track one = log(0.2, 0, 1e-9, 0);
        assertFalse(SameFlight.of(one, log(0.2, 0.1, 1e-9, 0)));
        assertFalse(SameFlight.of(one, log(0.2, 0, 1e-9, 2)));
    }

    @Test
    void whoSitTogetherAndPartForTenSecondsAreTwo() {
        Random random = new Random(1);
        Track beside = log(0.2, 0, 1e-9, t -> random.nextGaussian() * 0.2 + (t > 290 ? 20 : 0));
        assertFalse(SameFlight.of(log(0.2, 0, 1e-9, 0), beside));
    }

    @Test
    void aDamagedRecordMakesNoSecondFlight() {
        Track stray = log(0.2, 0, 1e-9, t -> t == 0 ? 500 : 0);
        assertTrue(SameFlight.of(log(0.2, 0, 1e-9, 0), stray));
    }
}
