package pairdown.time;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/**
 * How far GPS time runs ahead of UTC.
 *
 * <p>Source: IERS/IANA {@code leap-seconds.list} as packaged with tzdata 2025b; no leap second has
 * been added since 2017. The list expired on {@link #EXPIRES}; past that date the last value holds
 * unless a leap second was announced since, which a reader of the result may want to check.
 */
public final class LeapSeconds {
    /** The day the packaged list is good to. */
    public static final LocalDate EXPIRES = LocalDate.of(2026, 6, 28);

    /** TAI − GPS time (s), constant by definition of GPS time (IS-GPS-200). */
    private static final int TAI_MINUS_GPS_S = 19;

    private record Step(int year, int month, int taiMinusUtc_s) {
        long epochSecond() {
            return LocalDate.of(year, month, 1).toEpochDay() * 86_400;
        }
    }

    /** TAI − UTC from 0 h UTC of the first of the month, since GPS time began. */
    private static final Step[] STEPS = {
        new Step(1980, 1, 19),
        new Step(1981, 7, 20),
        new Step(1982, 7, 21),
        new Step(1983, 7, 22),
        new Step(1985, 7, 23),
        new Step(1988, 1, 24),
        new Step(1990, 1, 25),
        new Step(1991, 1, 26),
        new Step(1992, 7, 27),
        new Step(1993, 7, 28),
        new Step(1994, 7, 29),
        new Step(1996, 1, 30),
        new Step(1997, 7, 31),
        new Step(1999, 1, 32),
        new Step(2006, 1, 33),
        new Step(2009, 1, 34),
        new Step(2012, 7, 35),
        new Step(2015, 7, 36),
        new Step(2017, 1, 37),
    };

    private LeapSeconds() {}

    /**
     * GPS time minus UTC (s) at an instant of UTC.
     *
     * @throws IllegalArgumentException before GPS time began (1980-01-06; the table holds from 1
     *     January)
     */
    public static int gpsMinusUtc_s(Instant utc) {
        return at(utc.getEpochSecond());
    }

    /**
     * Whether the packaged list says nothing of this instant, so that the last value is assumed.
     */
    public static boolean isPastList(Instant utc) {
        return utc.atOffset(ZoneOffset.UTC).toLocalDate().isAfter(EXPIRES);
    }

    /**
     * GPS time minus UTC at a GPS reading given as seconds from 1970 counted without leap seconds.
     */
    static int atGpsReading(long gpsSecond) {
        for (int i = STEPS.length - 1; i >= 0; i--) {
            int ahead_s = STEPS[i].taiMinusUtc_s() - TAI_MINUS_GPS_S;
            if (gpsSecond - ahead_s >= STEPS[i].epochSecond()) {
                return ahead_s;
            }
        }
        throw new IllegalArgumentException("GPS time began on 1980-01-06");
    }

    private static int at(long utcSecond) {
        for (int i = STEPS.length - 1; i >= 0; i--) {
            if (utcSecond >= STEPS[i].epochSecond()) {
                return STEPS[i].taiMinusUtc_s() - TAI_MINUS_GPS_S;
            }
        }
        throw new IllegalArgumentException(
                Instant.ofEpochSecond(utcSecond) + " is before GPS time began (1980-01-06)");
    }
}
