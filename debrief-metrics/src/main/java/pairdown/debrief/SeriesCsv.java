package pairdown.debrief;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Phase;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.vector.Vec3;

/** The series of a debrief as CSV with one header row; a cell that can't be known is empty. */
public final class SeriesCsv {
    private static final List<Figure> PAIR_COLUMNS =
            List.of(
                    Figure.SEPARATION,
                    Figure.SEPARATION_SIGMA,
                    Figure.GAP,
                    Figure.CLOSURE_RATE,
                    Figure.CLOSURE_SIGMA,
                    Figure.AHEAD,
                    Figure.RIGHT,
                    Figure.ABOVE,
                    Figure.AHEAD_RATE,
                    Figure.RIGHT_RATE,
                    Figure.ABOVE_RATE,
                    Figure.AIRSPEED_DIFFERENCE,
                    Figure.SINK_DIFFERENCE,
                    Figure.MATCHED,
                    Figure.TOUCH);
    private static final String PARTICIPANT_COLUMNS =
            "time,latitude_deg,longitude_deg,height_m,east_m,north_m,up_m,velocityEast_mps,"
                    + "velocityNorth_mps,velocityUp_mps,positionSigma_m,velocitySigma_mps,"
                    + "trueAirspeed_mps,calibratedAirspeed_mps,sink_mps,phase";
    private static final double LEAST_RATE_HZ = 10;

    private final Debrief debrief;
    private final JsonValues values;

    public SeriesCsv(Debrief debrief) {
        this.debrief = debrief;
        this.values = new JsonValues(debrief.axis());
    }

    /** Writes {@code pairs/LEAD-FLYER.csv}. */
    public void write(PairDebrief pair, Writer out) throws IOException {
        CsvRow row = new CsvRow(out);
        row.text("time");
        for (Figure figure : PAIR_COLUMNS) {
            row.text(figure.key());
        }
        row.end();
        PairSeries series = pair.series();
        for (int i = 0; i < series.size(); i++) {
            row.text(values.time(series.time_s(i)));
            for (Figure figure : PAIR_COLUMNS) {
                double v = series.value(figure, i);
                if (figure == Figure.MATCHED || figure == Figure.TOUCH) {
                    row.flag(v);
                } else {
                    row.number(v, 3);
                }
            }
            row.end();
        }
    }

    /**
     * Writes {@code participants/ID.csv} at 10 Hz or the log's rate, whichever is higher; nothing
     * if the participant has no trajectory. A true airspeed that was logged stands beside the one
     * computed as {@code loggedTrueAirspeed_mps}.
     */
    public void write(ParticipantDebrief participant, Writer out) throws IOException {
        Map<Channel, Series> systems = new TreeMap<>(participant.systems());
        List<Series> columns = new ArrayList<>(systems.values());
        CsvRow row = new CsvRow(out);
        row.text(PARTICIPANT_COLUMNS);
        systems.keySet().forEach(c -> row.text(column(c)));
        row.end();
        Optional<Trajectory> motion = participant.trajectory();
        if (motion.isEmpty()) {
            return;
        }
        double step_s = 1 / Math.max(LEAST_RATE_HZ, rate_Hz(motion.get()));
        long rows = (long) Math.floor((motion.get().end_s() - motion.get().start_s()) / step_s) + 1;
        for (long i = 0; i < rows; i++) {
            double t_s = Math.min(motion.get().start_s() + i * step_s, motion.get().end_s());
            motionCells(row, participant, motion.get().at(t_s));
            for (Series column : columns) {
                row.number(column.at(t_s), 4);
            }
            row.end();
        }
    }

    /** A channel's key, or, where a computed column has that name, one of its own. */
    private static String column(Channel channel) {
        String key = channel.key();
        return List.of(PARTICIPANT_COLUMNS.split(",")).contains(key)
                ? "logged" + Character.toUpperCase(key.charAt(0)) + key.substring(1)
                : key;
    }

    /** The median rate of a trajectory's fixes, rounded to whole hertz, at most 50. */
    static double rate_Hz(Trajectory motion) {
        int n = motion.fixCount();
        if (n < 2) {
            return 1;
        }
        double[] steps = new double[n - 1];
        for (int i = 1; i < n; i++) {
            steps[i - 1] = motion.fixTime_s(i) - motion.fixTime_s(i - 1);
        }
        Arrays.sort(steps);
        double median_s = steps[steps.length / 2];
        return median_s > 0 ? Math.min(50, Math.max(1, Math.rint(1 / median_s))) : 1;
    }

    private void motionCells(CsvRow row, ParticipantDebrief participant, State state) {
        LocalFrame frame = debrief.frame();
        Geodetic place = frame.toGeodetic(state.position_m());
        double t_s = state.time_s();
        row.text(values.time(t_s));
        row.number(place.latitude_deg(), 9);
        row.number(place.longitude_deg(), 9);
        row.number(place.height_m(), 3);
        vector(row, state.position_m());
        vector(row, state.velocity_mps());
        row.number(largest(state.positionSigma_m()), 3);
        row.number(largest(state.velocitySigma_mps()), 3);
        row.number(at(participant.trueAirspeed_mps(), t_s), 3);
        row.number(at(participant.calibratedAirspeed_mps(), t_s), 3);
        row.number(-state.velocity_mps().z(), 3);
        row.text(participant.phaseAt(t_s).map(Phase::key).orElse(""));
    }

    private static void vector(CsvRow row, Vec3 v) {
        row.number(v.x(), 3);
        row.number(v.y(), 3);
        row.number(v.z(), 3);
    }

    private static double largest(Vec3 v) {
        return Math.max(v.x(), Math.max(v.y(), v.z()));
    }

    private static double at(Optional<Series> series, double t_s) {
        return series.map(s -> s.at(t_s)).orElse(Double.NaN);
    }
}
