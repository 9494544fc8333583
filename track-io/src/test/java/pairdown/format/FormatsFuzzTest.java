package pairdown.format;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.csv.CsvFormat;
import pairdown.format.geojson.GeoJsonFormat;
import pairdown.format.gpx.GpxFormat;
import pairdown.format.igc.IgcFormat;
import pairdown.format.kml.KmlFormat;
import pairdown.format.nmea.NmeaFormat;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.track.Track;

/**
 * Each importer against bytes made up by a fuzzer that begins with real logs. In a build the seeds
 * and the cases once found are run; {@code JAZZER_FUZZ=1} makes the fuzzer search for new ones.
 */
class FormatsFuzzTest {
    /** Longer seeds slow the search and show it nothing new. */
    private static final int SEED_BYTES = 2500;

    private static void read(TrackFormat format, byte[] bytes) {
        Hostile.check(bytes.length, () -> format.read(LogSource.of("log", bytes)));
    }

    @MethodSource("geojsonSeeds")
    @FuzzTest
    void geojson(byte[] bytes) {
        read(new GeoJsonFormat(), bytes);
    }

    @MethodSource("gpxSeeds")
    @FuzzTest
    void gpx(byte[] bytes) {
        read(new GpxFormat(), bytes);
    }

    @MethodSource("kmlSeeds")
    @FuzzTest
    void kml(byte[] bytes) {
        read(new KmlFormat(), bytes);
    }

    @MethodSource("igcSeeds")
    @FuzzTest
    void igc(byte[] bytes) {
        read(new IgcFormat(), bytes);
    }

    @MethodSource("nmeaSeeds")
    @FuzzTest
    void nmea(byte[] bytes) {
        read(new NmeaFormat(), bytes);
    }

    @MethodSource("csvSeeds")
    @FuzzTest
    void csv(byte[] bytes) {
        read(new CsvFormat(), bytes);
    }

    /** Whatever the wrapping and the format: archives, encodings, and telling formats apart. */
    @MethodSource("packedSeeds")
    @FuzzTest
    void packed(byte[] bytes) {
        Hostile.check(
                bytes.length, () -> LogFiles.read(LogSource.of("log", bytes), Optional.empty()));
    }

    private static byte[] head(String reference) {
        byte[] whole = TestLogs.reference(reference);
        return Arrays.copyOf(whole, Math.min(whole.length, SEED_BYTES));
    }

    private static Stream<byte[]> withExports(String format, byte[]... seeds) {
        List<byte[]> all = new ArrayList<>(List.of(seeds));
        for (String log :
                List.of("igc-bad-line.igc", "kml-track.kml", "nmea-cold-start-1980.nmea")) {
            try {
                Track track = TestLogs.read(TestLogs.reference(log));
                all.add(TestLogs.written(track, format));
            } catch (Exception e) {
                throw new AssertionError(log, e);
            }
        }
        return all.stream();
    }

    static Stream<byte[]> geojsonSeeds() {
        return withExports(
                "geojson",
                """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","properties":{"time":"2031-05-14T15:02:11Z","speed":38.5},
                 "geometry":{"type":"Point","coordinates":[15.5,-24.5,3600]}},
                {"type":"Feature","properties":{"coordTimes":["2031-05-14T15:02:12Z",1936537333]},
                 "geometry":{"type":"LineString","coordinates":[[15.5,-24.5],[15.5004,-24.4996]]}}]}
                """
                        .getBytes(StandardCharsets.UTF_8));
    }

    static Stream<byte[]> gpxSeeds() {
        return withExports("gpx", head("gpx-ride.gpx"));
    }

    static Stream<byte[]> kmlSeeds() {
        return withExports("kml", head("kml-track.kml"), head("kml-track-coord-missing.kml"));
    }

    static Stream<byte[]> igcSeeds() {
        return withExports(
                "igc",
                head("igc-spec-example.igc"),
                head("igc-bad-line.igc"),
                head("igc-extra-decimals-geoid.igc"));
    }

    static Stream<byte[]> nmeaSeeds() {
        return withExports(
                "nmea",
                head("nmea-2hz-moving.nmea"),
                head("nmea-cold-start-1980.nmea"),
                head("nmea-rtk-10hz.nmea"),
                head("pair-a.nmea"));
    }

    static Stream<byte[]> csvSeeds() {
        return withExports(
                "csv",
                """
                Date;Time;Latitude (deg);Longitude (deg);Altitude MSL (ft);Speed (km/h);vz (m/s)
                14.05.2031;15:02:11,5;-24,5;15,25;10000,5;137,1;-17,5
                14.05.2031;15:02:12,5;S 24°30'00";15,25;9990,5;;nan
                """
                        .getBytes(StandardCharsets.UTF_8),
                """
                elapsed (ms),IAS,PALT,pitch,elevator
                ,kt,ft,deg,%
                0,74,12000,-21,"4,5"
                100,75,11990,-21.5,
                """
                        .getBytes(StandardCharsets.UTF_8),
                "week,tow,lat,lon\n2446,259218.5,-24.5,15.5\n2446,259219.5,-24.5,15.5\n"
                        .getBytes(StandardCharsets.UTF_8));
    }

    static Stream<byte[]> packedSeeds() {
        byte[] csv = csvSeeds().findFirst().orElseThrow();
        return Stream.concat(
                Stream.of(
                        TestLogs.gzip(csv),
                        TestLogs.zip(csv, "../../a log.csv"),
                        TestLogs.zip(head("kml-track.kml"), "doc.kml"),
                        new String(csv, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_16),
                        new String(csv, StandardCharsets.UTF_8)
                                .getBytes(StandardCharsets.UTF_16LE)),
                Stream.of(geojsonSeeds(), gpxSeeds(), igcSeeds(), nmeaSeeds())
                        .map(s -> s.findFirst().orElseThrow()));
    }
}
