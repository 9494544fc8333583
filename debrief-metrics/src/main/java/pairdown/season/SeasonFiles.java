package pairdown.season;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pairdown.debrief.ResultFolder;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;

/** Writes a season's files other than its page: {@code season.json} and the tables. */
public final class SeasonFiles {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private static final String JSON = "season.json";
    private static final String ATTEMPTS = "attempts.csv";
    private static final String FLYERS = "flyers.csv";
    private static final String SEGMENTS = "segments.csv";

    /** The files written. */
    public static final List<String> NAMES = List.of(JSON, ATTEMPTS, FLYERS, SEGMENTS);

    private static final String[] ATTEMPT_COLUMNS = {
        "attempt",
        "folder",
        "usable",
        "start",
        "gate_m",
        "configuration",
        "descentHeld",
        "longestOnTarget_s",
        "timeToStabilise_s",
        "airspeedSd_mps",
        "peakElevator_pct",
        "episodes",
        "closureExceedances",
        "exceeded",
        "reason"
    };
    private static final String[] FLYER_COLUMNS = {
        "attempt",
        "folder",
        "start",
        "gate_m",
        "flyer",
        "leastGap_m",
        "medianGap_m",
        "sigma_m",
        "held_s",
        "matchedLongest_s",
        "overshoots",
        "verdict",
        "ahead_m",
        "right_m",
        "above_m",
        "aheadSd_m",
        "rightSd_m",
        "aboveSd_m",
        "correlation"
    };
    private static final String[] SEGMENT_COLUMNS = {
        "attempt",
        "machine",
        "role",
        "configuration",
        "duration_s",
        "calibratedAirspeed_mps",
        "trueAirspeed_mps",
        "sink_mps"
    };

    private SeasonFiles() {}

    /** Writes all of them into a folder. */
    public static void write(Season season, ResultFolder folder) throws IOException {
        folder.text(
                JSON,
                out -> out.append(MAPPER.writeValueAsString(SeasonJson.of(season))).append('\n'));
        folder.text(ATTEMPTS, out -> attempts(season, csv(out, ATTEMPT_COLUMNS)));
        folder.text(FLYERS, out -> flyers(season, csv(out, FLYER_COLUMNS)));
        folder.text(SEGMENTS, out -> segments(season, csv(out, SEGMENT_COLUMNS)));
    }

    private static CSVPrinter csv(Appendable out, String[] header) throws IOException {
        return CSVFormat.DEFAULT
                .builder()
                .setHeader(header)
                .setRecordSeparator("\n")
                .get()
                .print(out);
    }

    private static void attempts(Season season, CSVPrinter csv) throws IOException {
        for (AttemptSummary a : season.attempts()) {
            csv.printRecord(
                    a.attempt(),
                    a.folder(),
                    a.usable() ? "1" : "0",
                    a.start(),
                    cell(a.gate_m()),
                    a.dive().map(Dive::configuration).orElse(""),
                    a.descentHeld().map(h -> h ? "1" : "0").orElse(""),
                    a.dive().map(d -> cell(d.longest_s())).orElse(""),
                    a.dive().map(d -> cell(d.stabilise_s())).orElse(""),
                    a.dive().map(d -> cell(d.airspeedSd_mps())).orElse(""),
                    a.dive().map(d -> cell(d.peakElevator_pct())).orElse(""),
                    a.episodes().map(String::valueOf).orElse(""),
                    a.closureTold() || a.closureExceedances() > 0
                            ? String.valueOf(a.closureExceedances())
                            : "",
                    String.join(" ", a.exceeded()),
                    a.reason().orElse(""));
        }
    }

    private static void flyers(Season season, CSVPrinter csv) throws IOException {
        for (AttemptSummary a : season.attempts()) {
            for (FlyerSummary f : a.flyers()) {
                csv.printRecord(
                        a.attempt(),
                        a.folder(),
                        a.start(),
                        cell(a.gate_m()),
                        f.flyer(),
                        cell(f.leastGap_m()),
                        cell(f.medianGap_m()),
                        cell(f.sigma_m()),
                        cell(f.held_s()),
                        cell(f.matchedLongest_s()),
                        f.overshoots().map(String::valueOf).orElse(""),
                        f.verdict().orElse(""),
                        f.spread().map(p -> cell(p.ahead_m())).orElse(""),
                        f.spread().map(p -> cell(p.right_m())).orElse(""),
                        f.spread().map(p -> cell(p.above_m())).orElse(""),
                        f.spread().map(p -> cell(p.aheadSd_m())).orElse(""),
                        f.spread().map(p -> cell(p.rightSd_m())).orElse(""),
                        f.spread().map(p -> cell(p.aboveSd_m())).orElse(""),
                        f.spread().map(p -> cell(p.correlation())).orElse(""));
            }
        }
    }

    private static void segments(Season season, CSVPrinter csv) throws IOException {
        for (AttemptSummary a : season.attempts()) {
            for (SteadySegment s : a.segments()) {
                csv.printRecord(
                        a.attempt(),
                        s.machine(),
                        s.role(),
                        s.configuration(),
                        cell(s.duration_s()),
                        cell(s.calibratedAirspeed_mps()),
                        cell(s.trueAirspeed_mps()),
                        cell(s.sink_mps()));
            }
        }
    }

    private static String cell(OptionalDouble value) {
        return value.isPresent() ? cell(value.getAsDouble()) : "";
    }

    private static String cell(double value) {
        // A table of segments has tens of thousands of cells: a format string each would take
        // longest.
        return Double.toString(Math.rint(value * 1000) / 1000);
    }
}
