package pairdown.export;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.debrief.SeriesCsv;
import pairdown.pair.PairDebrief;
import pairdown.time.Span;

/**
 * The series of a debrief without place and date: time in seconds from the first exit, from there
 * to the last opening; where somebody was, only as seen from the lead; heights only as what the
 * lead had at the first exit and lost since.
 */
final class StrippedSeries {
    /** What a participant's series keeps, besides the time and the height. */
    private static final List<String> KEPT =
            List.of(
                    "positionSigma_m",
                    "velocitySigma_mps",
                    "trueAirspeed_mps",
                    "calibratedAirspeed_mps",
                    "sink_mps",
                    "phase",
                    "pitch_deg",
                    "roll_deg",
                    "pitchRate_dps",
                    "rollRate_dps",
                    "yawRate_dps",
                    "normalLoad_g",
                    "longitudinalLoad_g",
                    "lateralLoad_g",
                    "powerLever_pct",
                    "bladeAngle_deg",
                    "torque_pct",
                    "propellerSpeed_rpm",
                    "flap_deg",
                    "elevator_pct",
                    "rudder_pct",
                    "aileron_pct");

    private final Debrief debrief;
    private final Span told;
    private final double height_m;

    /**
     * @param told from the first exit to the last opening
     * @param height_m the lead's at the first exit, above the ellipsoid
     */
    StrippedSeries(Debrief debrief, Span told, double height_m) {
        this.debrief = debrief;
        this.told = told;
        this.height_m = height_m;
    }

    /** All columns of a pair's series are relative to the lead but the time. */
    String of(PairDebrief pair) {
        StringWriter all = new StringWriter();
        try {
            new SeriesCsv(debrief).write(pair, all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        StringBuilder out = new StringBuilder();
        for (String line : all.toString().lines().toList()) {
            int comma = line.indexOf(',');
            String first = line.substring(0, comma);
            String time = out.length() == 0 ? "time_s" : seconds(first);
            out.append(time).append(line, comma, line.length()).append('\n');
        }
        return out.toString();
    }

    String of(ParticipantDebrief participant) {
        StringWriter all = new StringWriter();
        try {
            new SeriesCsv(debrief).write(participant, all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> lines = all.toString().lines().toList();
        List<String> header = Arrays.asList(lines.get(0).split(",", -1));
        List<String> kept = KEPT.stream().filter(header::contains).toList();
        StringBuilder out = new StringBuilder("time_s,heightFromExit_m");
        kept.forEach(column -> out.append(',').append(column));
        out.append('\n');
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = Arrays.asList(line.split(",", -1));
            if (told.contains(debrief.axis().seconds(Instant.parse(cells.get(0))))) {
                out.append(String.join(",", row(header, kept, cells))).append('\n');
            }
        }
        return out.toString();
    }

    private List<String> row(List<String> header, List<String> kept, List<String> cells) {
        List<String> row = new ArrayList<>();
        row.add(seconds(cells.get(0)));
        String height = cells.get(header.indexOf("height_m"));
        row.add(height.isEmpty() ? "" : decimals(Double.parseDouble(height) - height_m));
        kept.forEach(column -> row.add(cells.get(header.indexOf(column))));
        return row;
    }

    private String seconds(String instant) {
        return decimals(debrief.axis().seconds(Instant.parse(instant)) - told.start_s());
    }

    private static String decimals(double value) {
        return String.format(Locale.ROOT, "%.3f", Math.rint(value * 1000) / 1000 + 0.0);
    }
}
