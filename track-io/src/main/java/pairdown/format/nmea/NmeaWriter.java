package pairdown.format.nmea;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import pairdown.format.source.Decimal;
import pairdown.format.source.Segments;
import pairdown.format.source.TrackWriter;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;
import pairdown.units.Unit;

/**
 * Writes NMEA 0183: RMC and GGA for each row with a position, GST where it has accuracies.
 *
 * <p>Resolution: 1e-7′ (0.2 mm) level, 1 mm in height, 1 ms in time, 0.001 kt.
 */
public final class NmeaWriter implements TrackWriter {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HHmmss.SSS", Locale.ROOT);
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("ddMMyy", Locale.ROOT);
    private static final long STEPS_PER_DEGREE = 60L * 10_000_000;

    @Override
    public String key() {
        return "nmea";
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        Writer w = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
        for (int row = 0; row < track.size(); row++) {
            if (track.hasPosition(row)) {
                sentence(w, rmc(track, row));
                sentence(w, gga(track, row));
                gst(w, track, row);
            }
        }
        w.flush();
    }

    private static ZonedDateTime utc(Track track, int row) {
        return Segments.instant(track, row)
                .plusNanos(500_000)
                .truncatedTo(ChronoUnit.MILLIS)
                .atZone(ZoneOffset.UTC);
    }

    private static String rmc(Track track, int row) {
        double north_mps = track.value(Channel.VELOCITY_NORTH, row);
        double east_mps = track.value(Channel.VELOCITY_EAST, row);
        double logged_mps = track.value(Channel.GROUND_SPEED, row);
        double speed_mps = Double.isNaN(logged_mps) ? Math.hypot(north_mps, east_mps) : logged_mps;
        double loggedTrack_deg = track.value(Channel.TRACK, row);
        double track_deg =
                Double.isNaN(loggedTrack_deg)
                        ? (Math.toDegrees(Math.atan2(east_mps, north_mps)) + 360) % 360
                        : loggedTrack_deg;
        ZonedDateTime time = utc(track, row);
        return String.join(
                ",",
                "GNRMC",
                TIME.format(time),
                "A",
                place(track, row),
                number(Unit.KNOT.fromBase(speed_mps), 3),
                number(track_deg, 2),
                DATE.format(time),
                "",
                "",
                "A");
    }

    private static String gga(Track track, int row) {
        double type = track.value(Channel.FIX_TYPE, row);
        return String.join(
                ",",
                "GNGGA",
                TIME.format(utc(track, row)),
                place(track, row),
                type == 6 ? "4" : type == 5 ? "5" : type == 4 ? "2" : "1",
                number(track.value(Channel.SATELLITES, row), 0),
                "",
                number(EllipsoidHeight.msl_m(track, row), 3),
                "M",
                number(EllipsoidHeight.undulation_m(track, row), 3),
                "M",
                "",
                "");
    }

    private static void gst(Writer w, Track track, int row) throws IOException {
        double level_m = track.value(Channel.HORIZONTAL_ACCURACY, row);
        double vertical_m = track.value(Channel.VERTICAL_ACCURACY, row);
        if (!Double.isNaN(level_m) || !Double.isNaN(vertical_m)) {
            sentence(
                    w,
                    String.join(
                            ",",
                            "GNGST",
                            TIME.format(utc(track, row)),
                            "",
                            "",
                            "",
                            "",
                            number(level_m, 3),
                            number(level_m, 3),
                            number(vertical_m, 3)));
        }
    }

    private static String place(Track track, int row) {
        double lat = track.value(Channel.LATITUDE, row);
        double lon = track.value(Channel.LONGITUDE, row);
        return minutes(lat, 2)
                + (lat < 0 ? ",S," : ",N,")
                + minutes(lon, 3)
                + (lon < 0 ? ",W" : ",E");
    }

    private static String minutes(double degrees, int width) {
        long steps = Math.round(Math.abs(degrees) * STEPS_PER_DEGREE);
        String minutes = Decimal.fixed(steps % STEPS_PER_DEGREE / 1e7, 7);
        return Decimal.padded(steps / STEPS_PER_DEGREE, width)
                + (minutes.indexOf('.') < 2 ? "0" : "")
                + minutes;
    }

    private static String number(double value, int decimals) {
        return Double.isNaN(value) ? "" : Decimal.fixed(value, decimals);
    }

    private static void sentence(Writer w, String body) throws IOException {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        w.write(String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum));
    }
}
