package pairdown.format;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogEvent;
import pairdown.track.LogReport;
import pairdown.track.Track;

/**
 * Tracks that are hard to write: gaps of seconds and of days, fixes alone between two gaps, heights
 * missing, zero and below the sea, places on the date line and near a pole, values now and then
 * absent, rows without a place.
 */
final class MadeTracks {
    private static final double[] STEPS_S = {0.05, 0.2, 0.2, 0.2, 1, 1, 3, 45, 4000, 50_000};
    private static final List<HeightDatum> DATUMS = List.of(HeightDatum.values());
    private static final double NARROW_DEG = 1e-3;

    private final Random random;
    private final Track.Builder track = new Track.Builder();

    private MadeTracks(long seed) {
        random = new Random(seed);
    }

    static Track of(long seed) {
        return new MadeTracks(seed).make();
    }

    private Track make() {
        boolean own = random.nextBoolean();
        double latitude_deg = random.nextBoolean() ? 170 * random.nextDouble() - 85 : 89.9985;
        double longitude_deg = random.nextBoolean() ? 350 * random.nextDouble() - 175 : 180;
        double height_m = random.nextBoolean() ? 4000 * random.nextDouble() : 0;
        int rows = 1 + random.nextInt(25);
        double t_s = 0;
        for (int i = 0; i < rows; i++) {
            track.row(t_s);
            if (i == 0 || random.nextInt(10) > 0) {
                place(latitude_deg, longitude_deg);
                maybe(Channel.HEIGHT, height_m + 3 * random.nextGaussian());
                if (own) {
                    track.set(Channel.GEOID_SEPARATION, 31.25);
                }
            }
            maybe(Channel.GROUND_SPEED, 1 + 60 * random.nextDouble());
            maybe(Channel.TRACK, 360 * random.nextDouble());
            maybe(Channel.PITCH, 180 * random.nextDouble() - 90);
            maybe(Channel.HORIZONTAL_ACCURACY, 0.5 + random.nextDouble());
            maybe(Channel.SATELLITES, 5 + random.nextInt(20));
            t_s += milliseconds(STEPS_S[random.nextInt(STEPS_S.length)] + 0.01 * i);
        }
        HeightDatum datum = own ? HeightDatum.MSL : DATUMS.get(random.nextInt(DATUMS.size()));
        List<LogEvent> events = List.of(new LogEvent(t_s / 2, "PEV"));
        return track.build(
                Optional.of(Instant.ofEpochSecond(946_684_800L + random.nextInt(1_200_000_000))),
                datum,
                new LogReport("made", "csv", 0, List.of(), List.of(), List.of(), events));
    }

    private void place(double latitude_deg, double longitude_deg) {
        double east_deg = longitude_deg + NARROW_DEG * (random.nextDouble() - 0.5);
        track.set(Channel.LATITUDE, latitude_deg + NARROW_DEG * random.nextDouble());
        track.set(Channel.LONGITUDE, east_deg > 180 ? east_deg - 360 : east_deg);
    }

    private void maybe(Channel channel, double value) {
        if (random.nextInt(6) > 0) {
            track.set(channel, value);
        }
    }

    private static double milliseconds(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
