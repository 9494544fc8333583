package pairdown.format.igc;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.format.source.Decimal;
import pairdown.format.source.Segments;
import pairdown.format.source.TrackWriter;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.LogEvent;
import pairdown.track.Track;

/**
 * Writes IGC: heights above the ellipsoid (HFALG:ELL), further decimals of position and time in the
 * LAD, LOD and TDS extensions, accuracies, satellites, speed and track where the track has them. No
 * signature is written: the file is a copy, not a recorder's evidence. A fix without a height is
 * marked V, as the specification wants; readers, this project's too, take that for no fix.
 *
 * <p>Resolution: 1e-5′ (18 mm) level, 1 m in height, 1 ms in time; from 2 m up recorders' FXA.
 */
public final class IgcWriter implements TrackWriter {
    private static final String END = "\r\n";
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("ddMMyy", Locale.ROOT);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HHmmss", Locale.ROOT);

    /** What the specification wants in every file; of a converted copy most is not known. */
    private static final List<String> HEADERS =
            List.of(
                    "HFPLTPILOTINCHARGE:NIL",
                    "HFCM2CREW2:NIL",
                    "HFGTYGLIDERTYPE:NIL",
                    "HFGIDGLIDERID:NIL",
                    "HFDTM100GPSDATUM:WGS84",
                    "HFRFWFIRMWAREVERSION:NIL",
                    "HFRHWHARDWAREVERSION:NIL",
                    "HFFTYFRTYPE:Pairdown converted copy",
                    "HFGPSRECEIVER:NIL",
                    "HFPRSPRESSALTSENSOR:NIL");

    /** Times of day alone don't tell a later day beyond it: the date is written again. */
    private static final double HALF_DAY_S = 43_200;

    /** Decimals of a minute: three in the record, two in the extension. */
    private static final long STEPS_PER_DEGREE = 60L * 100_000;

    /** A field of a B record after its 35 bytes. */
    private record Field(String code, int digits, Channel channel, double perUnit) {}

    private static final List<Field> FIELDS =
            List.of(
                    new Field("FXA", 3, Channel.HORIZONTAL_ACCURACY, 2),
                    new Field("VXA", 3, Channel.VERTICAL_ACCURACY, 2),
                    new Field("SIU", 2, Channel.SATELLITES, 1),
                    new Field("GSP", 5, Channel.GROUND_SPEED, 360),
                    new Field("TRT", 5, Channel.TRACK, 100));

    @Override
    public String key() {
        return "igc";
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        Writer w = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.US_ASCII));
        List<Field> fields = FIELDS.stream().filter(f -> track.has(f.channel())).toList();
        List<Integer> rows = Segments.of(track).stream().flatMap(List::stream).toList();
        w.write("AXXX000" + END);
        date(w, track, rows.get(0));
        for (String header : HEADERS) {
            w.write(header + END);
        }
        w.write("HFALG:ELL" + END);
        w.write("HFALP:" + (track.has(Channel.PRESSURE_ALTITUDE) ? "ISA" : "NIL") + END);
        w.write(extensions(fields) + END);
        List<LogEvent> events = new ArrayList<>(track.report().events());
        int before = rows.get(0);
        for (int row : rows) {
            if (track.time_s(row) - track.time_s(before) > HALF_DAY_S) {
                date(w, track, row);
            }
            before = row;
            while (!events.isEmpty() && events.get(0).time_s() <= track.time_s(row)) {
                event(w, track, row, events.remove(0));
            }
            w.write(fix(track, row, fields) + END);
        }
        w.flush();
    }

    private static void date(Writer w, Track track, int row) throws IOException {
        w.write("HFDTE" + DATE.format(utc(track, row)) + END);
    }

    private static ZonedDateTime utc(Track track, int row) {
        Instant rounded = Segments.instant(track, row).plusNanos(500_000);
        return rounded.truncatedTo(ChronoUnit.MILLIS).atZone(ZoneOffset.UTC);
    }

    private static String extensions(List<Field> fields) {
        StringBuilder record = new StringBuilder();
        int at = IgcFix.LENGTH + 1;
        at = extension(record, at, 2, "LAD");
        at = extension(record, at, 2, "LOD");
        at = extension(record, at, 3, "TDS");
        for (Field field : fields) {
            at = extension(record, at, field.digits(), field.code());
        }
        return "I" + Decimal.padded(fields.size() + 3, 2) + record;
    }

    private static int extension(StringBuilder record, int at, int digits, String code) {
        record.append(Decimal.padded(at, 2))
                .append(Decimal.padded(at + digits - 1, 2))
                .append(code);
        return at + digits;
    }

    private static void event(Writer w, Track track, int row, LogEvent event) throws IOException {
        if (event.text().matches("[A-Z]{3}[ -~]{0,60}")) {
            w.write("E" + TIME.format(utc(track, row)) + event.text() + END);
        }
    }

    private static String fix(Track track, int row, List<Field> fields) {
        ZonedDateTime time = utc(track, row);
        double lat = track.value(Channel.LATITUDE, row);
        double lon = track.value(Channel.LONGITUDE, row);
        double height_m = EllipsoidHeight.of(track, row);
        StringBuilder b = new StringBuilder(80).append('B').append(TIME.format(time));
        StringBuilder more = new StringBuilder(20);
        degrees(b, more, lat, 2, lat < 0 ? 'S' : 'N');
        degrees(b, more, lon, 3, lon < 0 ? 'W' : 'E');
        b.append(Double.isNaN(height_m) ? 'V' : 'A');
        b.append(metres(track.value(Channel.PRESSURE_ALTITUDE, row)));
        b.append(metres(notZero(height_m)));
        more.append(Decimal.padded(time.getNano() / 1_000_000, 3));
        for (Field field : fields) {
            more.append(extra(track.value(field.channel(), row), field));
        }
        return b.append(more).toString();
    }

    private static void degrees(
            StringBuilder b, StringBuilder more, double degrees, int width, char hemisphere) {
        long steps = Math.round(Math.abs(degrees) * STEPS_PER_DEGREE);
        b.append(Decimal.padded(steps / STEPS_PER_DEGREE, width));
        b.append(Decimal.padded(steps % STEPS_PER_DEGREE / 100, 5)).append(hemisphere);
        more.append(Decimal.padded(steps % 100, 2));
    }

    /** A satellite height of 00000 means that there is none: the nearest metre beside it. */
    private static double notZero(double height_m) {
        return Math.round(height_m) == 0 && !Double.isNaN(height_m)
                ? height_m < 0 ? -1 : 1
                : height_m;
    }

    private static String metres(double value) {
        return Decimal.padded(Double.isNaN(value) ? 0 : Math.round(value), 5);
    }

    private static String extra(double value, Field field) {
        long most = Math.round(Math.pow(10, field.digits())) - 1;
        long scaled = Double.isNaN(value) ? 0 : Math.round(value * field.perUnit());
        return Decimal.padded(Math.max(0, Math.min(scaled, most)), field.digits());
    }
}
