package pairdown.pair;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import pairdown.pair.PairSeries.Figure;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** Puts a pair's rows and what was found in them into the columns of its series. */
final class SeriesBuilder {
    private final PairRows rows;
    private final Map<Figure, float[]> columns = new EnumMap<>(Figure.class);

    SeriesBuilder(PairRows rows) {
        this.rows = rows;
        put(Figure.SEPARATION, rows.separation_m);
        put(Figure.SEPARATION_SIGMA, rows.separationSigma_m);
        put(Figure.GAP, rows.gap_m);
        put(Figure.GAP_SIGMA, rows.gapSigma_m);
        put(Figure.CLOSURE_RATE, rows.closure_mps);
        put(Figure.CLOSURE_SIGMA, rows.closureSigma_mps);
        put(Figure.AHEAD, rows.position_m[0]);
        put(Figure.RIGHT, rows.position_m[1]);
        put(Figure.ABOVE, rows.position_m[2]);
        put(Figure.AHEAD_RATE, rows.rate_mps[0]);
        put(Figure.RIGHT_RATE, rows.rate_mps[1]);
        put(Figure.ABOVE_RATE, rows.rate_mps[2]);
        put(Figure.PREDICTED_MISS, rows.miss_m);
        put(Figure.PREDICTED_MISS_SIGMA, rows.missSigma_m);
        put(Figure.PREDICTED_MISS_IN, rows.missIn_s);
        put(Figure.SINK_DIFFERENCE, i -> rows.flyerSink_mps[i] - rows.leadSink_mps[i]);
    }

    private void put(Figure figure, double[] values) {
        put(figure, i -> values[i]);
    }

    private void put(Figure figure, IntToDoubleFunction value) {
        float[] column = new float[rows.size];
        for (int i = 0; i < rows.size; i++) {
            column[i] = (float) value.applyAsDouble(i);
        }
        columns.put(figure, column);
    }

    SeriesBuilder airspeeds(PairInput input) {
        put(Figure.AIRSPEED_DIFFERENCE, i -> MatchJudge.airspeedDifference_mps(input, rows, i));
        return this;
    }

    SeriesBuilder limit(double[] limit_mps) {
        put(Figure.CLOSING_LIMIT, limit_mps);
        return this;
    }

    SeriesBuilder match(MatchRates rates, List<MatchedWindow> windows) {
        put(Figure.LEVEL_MATCH_RATE, rates.level_mps);
        put(Figure.VERTICAL_MATCH_RATE, rates.vertical_mps);
        put(Figure.MATCHED, flags(windows.stream().map(MatchedWindow::span).toList()));
        return this;
    }

    SeriesBuilder touch(List<Touch> touches) {
        put(Figure.TOUCH, flags(touches.stream().map(Touch::span).toList()));
        return this;
    }

    private double[] flags(List<Span> spans) {
        double[] flags = new double[rows.size];
        for (Span span : spans) {
            for (int i = rows.rowAtOrAfter(span.start_s());
                    i <= rows.rowAtOrBefore(span.end_s());
                    i++) {
                flags[i] = 1;
            }
        }
        return flags;
    }

    SeriesBuilder anchored(RelativeMotion anchored) {
        double[] separation_m = new double[rows.size];
        double[] sigma_m = new double[rows.size];
        double[] gap_m = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            separation_m[i] = Double.NaN;
            sigma_m[i] = Double.NaN;
            gap_m[i] = Double.NaN;
            if (rows.measured[i]) {
                RelativeMotion.Sample s = anchored.sample(rows.time_s[i]);
                Optional<Vec3> gap = s.gapVector_m();
                separation_m[i] = s.separation_m;
                sigma_m[i] = s.separationSigma_m;
                gap_m[i] = gap.map(Vec3::norm).orElse(Double.NaN);
            }
        }
        put(Figure.ANCHORED_SEPARATION, separation_m);
        put(Figure.ANCHORED_SEPARATION_SIGMA, sigma_m);
        put(Figure.ANCHORED_GAP, gap_m);
        return this;
    }

    PairSeries build() {
        return new PairSeries(rows.start_s, rows.step_s, rows.size, columns);
    }
}
