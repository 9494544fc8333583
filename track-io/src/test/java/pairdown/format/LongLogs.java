package pairdown.format;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Logs of 52 MB: days of circling climbs and steep descents at 10 Hz, made up. */
final class LongLogs {
    static final double BYTES = 52e6;

    private static final int SAMPLE_ROWS = 100_000;

    private static final Instant START = Instant.parse("2031-05-14T06:00:00Z");
    private static final double STEP_S = 0.1;
    private static final double CIRCLE_S = 90;
    private static final double LOAD_S = 1500;

    private LongLogs() {}

    /** Writes a log of that size, to a few parts in a thousand. */
    static Path write(String format, Path folder) throws IOException, UnusableInputException {
        Path file = folder.resolve("long." + format);
        write(track(SAMPLE_ROWS), format, file);
        double bytesPerRow = Files.size(file) / (double) SAMPLE_ROWS;
        write(track((int) (BYTES / bytesPerRow)), format, file);
        return file;
    }

    private static void write(Track track, String format, Path file)
            throws IOException, UnusableInputException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            LogFiles.write(track, format, out);
        }
    }

    private static Track track(int rows) {
        Track.Builder track = new Track.Builder();
        for (int i = 0; i < rows; i++) {
            double t_s = i * STEP_S;
            double turn = 2 * Math.PI * t_s / CIRCLE_S;
            double load = t_s % LOAD_S / LOAD_S;
            boolean diving = load > 0.9;
            track.row(t_s)
                    .set(Channel.LATITUDE, -24.5 + 0.005 * Math.sin(turn) + 1e-7 * (i % 97))
                    .set(Channel.LONGITUDE, 15.5 + 0.0055 * Math.cos(turn) + 1e-7 * (i % 89))
                    .set(Channel.HEIGHT, 1231 + 2700 * (diving ? 10 * (1 - load) : load / 0.9))
                    .set(Channel.GROUND_SPEED, 39 + 3 * Math.sin(0.3 * t_s))
                    .set(Channel.TRACK, (360 - Math.toDegrees(turn) % 360) % 360)
                    .set(Channel.HORIZONTAL_ACCURACY, 0.8 + 0.1 * (i % 7))
                    .set(Channel.VERTICAL_ACCURACY, 1.4 + 0.1 * (i % 11))
                    .set(Channel.SATELLITES, 11 + i % 6);
        }
        LogReport report = LogReport.whole("long", "csv");
        return track.build(Optional.of(START), HeightDatum.ELLIPSOID, report);
    }
}
