package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.format.source.LogSource;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

class CsvLogsTest {
    @TempDir private Path folder = Path.of("");

    private Track mapped(String map, String csv) throws IOException, UnusableInputException {
        Path file = folder.resolve("columns.json");
        Files.writeString(file, map);
        return LogFiles.read(
                LogSource.of("log.csv", csv.getBytes(StandardCharsets.UTF_8)), Optional.of(file));
    }

    private Track timed(String time, String... cells) throws IOException, UnusableInputException {
        StringBuilder csv = new StringBuilder("T,A\n");
        for (String cell : cells) {
            csv.append(cell).append(",74\n");
        }
        return mapped(
                "{\"time\":"
                        + time
                        + ",\"channels\":{\"indicatedAirspeed_mps\":{\"column\":\"A\"}}}",
                csv.toString());
    }

    private static Instant first(Track track) {
        return track.axis().orElseThrow().instant(track.start_s());
    }

    /** Row 3: GPS week 2446, 259218 s is 2026-11-25T00:00:00Z (18 s ahead of UTC). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'column':'T','as':'iso'}|2031-05-14T15:02:11.350Z|2031-05-14T15:02:11.350Z",
                "{'column':'T','as':'unix-seconds'}|1936537331.25|2031-05-14T15:02:11.250Z",
                "{'column':'T','as':'gps-seconds-of-week','week':2446}|259218.0|2026-11-25T00:00:00Z",
                "{'column':'T','as':'unix-millis'}|1936537331250|2031-05-14T15:02:11.250Z",
                "{'column':'T','as':'local','zone':'Africa/Windhoek'}|2031-05-14 17:02:11|2031-05-14T15:02:11Z",
                "{'column':'T','as':'local','zone':'Africa/Windhoek','date':'2031-05-14'}|17:02:11.5|2031-05-14T15:02:11.500Z",
                "{'column':'T','as':'local','zone':'+02:00','date':'2031-05-14'}|01:02:11|2031-05-13T23:02:11Z"
            })
    void everyKindOfTimeIsRead(String time, String cell, Instant expected) throws Exception {
        Track track = timed(time.replace('\'', '"'), cell);
        assertEquals(expected, first(track));
    }

    /** The packaged list of leap seconds ends on 28 June 2026, in GPS week 2425. */
    @ParameterizedTest
    @CsvSource({"2424, false", "2446, true"})
    void gpsTimePastTheListOfLeapSecondsSaysSo(int week, boolean said) throws Exception {
        Track track =
                timed(
                        "{\"column\":\"T\",\"as\":\"gps-seconds-of-week\",\"week\":" + week + "}",
                        "259218.0");
        assertEquals(said, track.report().warnings().toString().contains("known until 2026-06-28"));
    }

    @Test
    void theWeekOfTheGpsSecondsMayBeAColumn() throws Exception {
        Track track =
                mapped(
                        """
                        {"time": {"column": "T", "as": "gps-seconds-of-week", "week": "W"},
                         "channels": {"indicatedAirspeed_mps": {"column": "A"}}}""",
                        "W,T,A\n2446,259218.0,40\n2446,259219.0,41\n");
        assertEquals(Instant.parse("2026-11-25T00:00:00Z"), first(track));
    }

    @Test
    void secondsHaveTheirOwnZero() throws Exception {
        Track track = timed("{\"column\":\"T\",\"as\":\"seconds\"}", "0.0", "0.1", "0.2");
        assertFalse(track.hasAbsoluteTime());
        assertEquals(0.2, track.end_s());
    }

    /**
     * Europe/Berlin went from 02:00 to 03:00 on 30 March 2025, and twice through 02:30 on 26
     * October.
     */
    @Test
    void anHourThatClocksSkipIsSaidAndARepeatedOneGoesOn() throws Exception {
        String zone = "{\"column\":\"T\",\"as\":\"local\",\"zone\":\"Europe/Berlin\"}";
        Track gap =
                timed(zone, "2025-03-30 01:59:59", "2025-03-30 02:30:00", "2025-03-30 03:00:00");
        assertEquals(2, gap.size());
        assertEquals(1, gap.end_s());
        assertTrue(gap.report().skipped().get(0).reason().contains("does not exist"));
        Track twice =
                timed(zone, "2025-10-26 02:59:59", "2025-10-26 02:00:00", "2025-10-26 02:00:01");
        assertEquals(2, twice.end_s());
        assertTrue(twice.report().warnings().toString().contains("come twice"));
    }

    @Test
    void aLocalTimePassesMidnight() throws Exception {
        Track track =
                timed(
                        "{\"column\":\"T\",\"as\":\"local\",\"zone\":\"UTC\",\"date\":\"2031-05-14\"}",
                        "23:59:59",
                        "00:00:01");
        assertEquals(2, track.end_s());
    }

    @Test
    void aMapTurnsItsColumnsIntoChannels() throws Exception {
        Track track =
                mapped(
                        """
                        {"skipRows": 1, "delimiter": ";", "decimal": ",",
                         "time": {"column": "Elapsed", "as": "seconds"},
                         "channels": {"bladeAngle_deg": {"column": "BETA"},
                          "elevator_pct": {"column": "ELEV", "scale": 2.0, "offset": -10.0},
                          "indicatedAirspeed_mps": {"column": "IAS", "unit": "kt"},
                          "height_m": {"column": "PALT", "unit": "ft", "datum": "pressure"}}}
                        """,
                        """
                        written by nobody
                        Elapsed;BETA;ELEV;IAS;PALT
                        0,0;5,5;20;100;10000
                        0,1;5,6;21;100;9990
                        """);
        assertEquals(5.5, track.value(Channel.BLADE_ANGLE, 0));
        assertEquals(30, track.value(Channel.ELEVATOR, 0));
        assertEquals(51.4444, track.value(Channel.INDICATED_AIRSPEED, 0), 1e-4);
        assertEquals(3048, track.value(Channel.PRESSURE_ALTITUDE, 0));
        assertFalse(track.has(Channel.HEIGHT));
        assertFalse(track.hasAbsoluteTime());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'channels':{'foo':{'column':'A'}}}|unknown channel 'foo'",
                "{'channels':{'height_m':{'column':'Q'}}}|no column 'Q'",
                "{'channels':{'height_m':{'column':'A','unit':'furlong'}}}|m, ft, km, NM, mi",
                "{'channels':{'height_m':{'column':'A','unit':'kt'}}}|does not fit",
                "{'channels':{'height_m':{'column':'A','datum':'moon'}}}|ellipsoid, msl or pressure",
                "{'time':{'column':'T','as':'lunar'},'channels':{'height_m':{'column':'A'}}}|time kind 'lunar'",
                "{'time':{'column':'T','as':'local'},'channels':{'height_m':{'column':'A'}}}|needs its zone",
                "{'chanels':{}}|'chanels' of the map is not known",
                "{'channels':{}}|maps no channel",
                "{|no JSON"
            })
    void aWrongMapIsRefusedWithTheMend(String map, String part) {
        UnusableInputException e =
                assertThrows(
                        UnusableInputException.class,
                        () -> mapped(map.replace('\'', '"'), "T,A\n2031-05-14T15:02:11Z,1\n"));
        assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
    }

    @Test
    void unitsInASecondHeaderRowAreUsed() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon,alt,speed",
                        ",(deg),(deg),(ft),(km/h)",
                        "2031-05-14T15:02:11Z,-24.5,15.5,10000,36");
        assertEquals(3048, track.value(Channel.HEIGHT, 0));
        assertEquals(10, track.value(Channel.GROUND_SPEED, 0));
        assertEquals(HeightDatum.UNKNOWN, track.datum());
    }

    @Test
    void decimalCommasAreFoundByContent() throws Exception {
        Track track =
                TestLogs.read(
                        "Zeit time;Latitude (deg);Longitude (deg);Altitude MSL (m)"
                                .replace("Zeit ", ""),
                        "2031-05-14T15:02:11Z;-24,5;15,25;3600,5",
                        "2031-05-14T15:02:12Z;-24,5;15,25;3590,5");
        assertEquals(-24.5, track.value(Channel.LATITUDE, 0));
        assertEquals(3600.5, track.value(Channel.HEIGHT, 0));
        assertEquals(HeightDatum.MSL, track.datum());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "14.05.2031|15:02:11",
                "2031-05-14|15:02:11",
                "14/05/2031|15:02:11",
                "05/14/2031|3:02:11 PM",
                "140531|150211",
                "20310514|15:02:11Z"
            })
    void dateAndTimeOfDayMayStandInTwoColumns(String date, String time) throws Exception {
        Track track = TestLogs.read("Date,Time,lat,lon", date + "," + time + ",1,2");
        assertEquals(Instant.parse("2031-05-14T15:02:11Z"), first(track));
    }

    @Test
    void degreesMayCarryTheirHemisphere() throws Exception {
        Track track = TestLogs.read("time,lat,lon", "2031-05-14T15:02:11Z,24.5 S,15°30'00\" W");
        assertEquals(-24.5, track.value(Channel.LATITUDE, 0));
        assertEquals(-15.5, track.value(Channel.LONGITUDE, 0));
    }

    @Test
    void verticalSpeedTurnsOutToCountDownWhereTheHeightsSaySo() throws Exception {
        StringBuilder csv = new StringBuilder("time,lat,lon,alt,vertical speed (m/s)\n");
        for (int i = 0; i < 40; i++) {
            csv.append("2031-05-14T15:02:").append(i + 10).append("Z,1,2,");
            csv.append(3000 - 17 * i).append(",17\n");
        }
        Track track = TestLogs.read(csv.toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(17, track.value(Channel.VELOCITY_DOWN, 5));
        Track up =
                TestLogs.read(
                        csv.toString().replace(",17\n", ",-17\n").getBytes(StandardCharsets.UTF_8));
        assertEquals(17, up.value(Channel.VELOCITY_DOWN, 5));
    }

    @Test
    void aStrayQuoteCostsOneRecord() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon,note",
                        "2031-05-14T15:02:11Z,1,2,\"ok, fine\"",
                        "2031-05-14T15:02:12Z,1,2,\"never closed",
                        "2031-05-14T15:02:13Z,1,2,ok");
        assertEquals(3, track.size());
    }

    @Test
    void whoStandsOnThe180thMeridianDoesNotMove() throws Exception {
        StringBuilder csv = new StringBuilder("time,latitude,longitude\n");
        for (int i = 0; i < 9; i++) {
            String sign = i == 0 || i == 8 ? "" : "-";
            csv.append("2031-05-14T15:02:1%dZ,-17.5,%s179.9999999\n".formatted(i, sign));
        }
        Track track = TestLogs.read(csv.toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(9, TestLogs.fixes(track), () -> track.report().toString());
    }
}
