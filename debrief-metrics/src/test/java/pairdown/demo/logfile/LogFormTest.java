package pairdown.demo.logfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.demo.logfile.TableForm.Heading;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.GnssPlan.ClockPlan;
import pairdown.demo.receiver.GnssPlan.HeightPlan;
import pairdown.demo.receiver.Logging;
import pairdown.demo.receiver.MadeTruth;
import pairdown.demo.receiver.RecorderPlan;
import pairdown.demo.receiver.Sight;
import pairdown.format.LogFiles;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;
import pairdown.units.Unit;

class LogFormTest {
    private static final GnssPlan PLAN =
            GnssPlan.of("blue", "blue.log", "csv")
                    .heights(HeightPlan.MSL)
                    .clock(ClockPlan.TRUE)
                    .sight(Sight.OPEN)
                    .keeping(100, 140);

    private static final List<Heading> HEADINGS =
            List.of(
                    Heading.of(Channel.LATITUDE, "Lat (deg)"),
                    Heading.of(Channel.LONGITUDE, "Lon (deg)"),
                    Heading.in(Unit.FOOT, Channel.HEIGHT, "Alt MSL (ft)"),
                    Heading.in(Unit.KNOT, Channel.VELOCITY_NORTH, "Vel N (kt)"),
                    Heading.in(Unit.KNOT, Channel.VELOCITY_EAST, "Vel E (kt)"),
                    Heading.in(Unit.KILOMETRE_PER_HOUR, Channel.VELOCITY_DOWN, "Vel D (km/h)"));

    private static final List<Heading> SHORT =
            List.of(
                    Heading.of(Channel.LATITUDE, "Y"),
                    Heading.of(Channel.LONGITUDE, "X"),
                    Heading.of(Channel.HEIGHT, "Z"));

    @TempDir private Path folder;

    static Stream<LogForm> forms() {
        return Stream.of(
                OpenForm.of("csv"),
                OpenForm.of("gpx"),
                OpenForm.of("kml"),
                OpenForm.plain("nmea"),
                OpenForm.of("igc"),
                table(new TimeForm.Iso("time"), HEADINGS, false, false),
                table(new TimeForm.UnixMillis("time_ms"), HEADINGS, false, false),
                table(new TimeForm.Local("Clock", ZoneId.of("+08:45")), SHORT, true, true),
                table(new TimeForm.GpsSeconds("TOW", 2679), SHORT, false, true));
    }

    private static TableForm table(
            TimeForm time, List<Heading> headings, boolean comma, boolean mapped) {
        return new TableForm(
                mapped ? List.of("sheet 2") : List.of(), comma, time, headings, mapped);
    }

    private Track written(LogForm form, Track track, List<Damage> damage) throws Exception {
        Path file = folder.resolve("log.txt");
        Files.writeString(file, Damage.all(form.text(track), damage));
        Optional<Path> map = Optional.empty();
        if (form.columnMap().isPresent()) {
            map = Optional.of(folder.resolve("log.columns.json"));
            Files.writeString(map.get(), form.columnMap().get());
        }
        return LogFiles.read(file, map);
    }

    private static Track track() {
        return Logging.of(MadeTruth.of(), List.of(PLAN), Map.of(), 4).get(0).track();
    }

    @ParameterizedTest
    @MethodSource("forms")
    void whatIsWrittenIsReadBack(LogForm form) throws Exception {
        Track track = track();
        Track read = written(form, track, List.of());
        assertEquals(track.size(), read.size());
        double shift_s = track.axis().orElseThrow().seconds(read.epoch().orElseThrow());
        boolean isIgc = form.equals(OpenForm.of("igc"));
        for (int i = 0; i < read.size(); i += 7) {
            assertEquals(track.time_s(i), read.time_s(i) + shift_s, 2e-3);
            assertEquals(track.value(Channel.LATITUDE, i), read.value(Channel.LATITUDE, i), 2e-7);
            assertEquals(
                    EllipsoidHeight.of(track, i),
                    EllipsoidHeight.of(read, i),
                    isIgc ? 0.51 : 0.011);
            if (read.has(Channel.VELOCITY_DOWN)) {
                assertEquals(
                        track.value(Channel.VELOCITY_DOWN, i),
                        read.value(Channel.VELOCITY_DOWN, i),
                        6e-3);
            }
        }
        assertEquals(List.of(), read.report().skipped());
    }

    @Test
    void aRecordersShortNamesAreUnderstoodByTheirMap() throws Exception {
        RecorderPlan plan = RecorderPlan.of("lead", "systems.csv").zero(7).keeping(100, 140);
        Track track = Logging.of(MadeTruth.of(), List.of(plan), Map.of(), 4).get(0).track();
        TableForm form =
                table(
                        new TimeForm.Elapsed("T"),
                        List.of(
                                Heading.in(Unit.KNOT, Channel.INDICATED_AIRSPEED, "IAS"),
                                Heading.in(Unit.FOOT, Channel.PRESSURE_ALTITUDE, "PALT"),
                                Heading.of(Channel.YAW_RATE, "R")),
                        false,
                        true);
        Track read = written(form, track, List.of());
        assertTrue(read.epoch().isEmpty());
        for (Channel c : List.of(Channel.INDICATED_AIRSPEED, Channel.PRESSURE_ALTITUDE)) {
            assertEquals(track.value(c, 50), read.value(c, 50), 0.06, c.key());
        }
        assertEquals(track.value(Channel.YAW_RATE, 50), read.value(Channel.YAW_RATE, 50), 1e-6);
        assertEquals(track.time_s(50), read.time_s(50), 1e-3);
    }

    @Test
    void damageIsNoticedAndTheRestRead() throws Exception {
        Track track = track();
        List<Damage> damage =
                List.of(
                        new Damage.ColdDate("2031-05-14", "1980-01-06", 5),
                        new Damage.Repeated(0.3, 3),
                        new Damage.OutOfOrder(0.5, 2),
                        new Damage.Rubbish(0.7, "#;;;restart 0x1F"),
                        new Damage.CutEnd());
        Track read =
                written(table(new TimeForm.Iso("time"), HEADINGS, false, false), track, damage);
        // Five cold records and the one cut are lost.
        assertEquals(track.size() - 6, read.size());
        String said = read.report().skipped() + " " + read.report().warnings();
        for (String word : List.of("1980-01-06", "duplicate", "out of order", "cut short")) {
            assertTrue(said.contains(word), word + " not in " + said);
        }
        for (int i = 1; i < read.size(); i++) {
            assertTrue(read.time_s(i) > read.time_s(i - 1));
        }
    }
}
