package pairdown.season;

import java.util.Arrays;
import java.util.Optional;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.track.Series;

/** Airspeeds and sink of one machine on an even grid over a stretch; NaN where unknown. */
final class SpeedSeries {
    /** Fine enough for stretches of seconds. */
    static final double STEP_S = 0.2;

    private final double start_s;
    private final double[] calibrated_mps;
    private final double[] true_mps;
    private final double[] sink_mps;

    private SpeedSeries(double start_s, int n) {
        this.start_s = start_s;
        this.calibrated_mps = new double[n];
        this.true_mps = new double[n];
        this.sink_mps = new double[n];
    }

    static Optional<SpeedSeries> of(ParticipantDebrief p, Span span) {
        if (p.trajectory().isEmpty()
                || p.calibratedAirspeed_mps().isEmpty()
                || p.trueAirspeed_mps().isEmpty()) {
            return Optional.empty();
        }
        Trajectory motion = p.trajectory().get();
        double from_s = Math.max(span.start_s(), motion.start_s());
        double to_s = Math.min(span.end_s(), motion.end_s());
        int n = (int) Math.floor((to_s - from_s) / STEP_S) + 1;
        if (n < 2) {
            return Optional.empty();
        }
        Series calibrated = p.calibratedAirspeed_mps().get();
        Series truly = p.trueAirspeed_mps().get();
        SpeedSeries s = new SpeedSeries(from_s, n);
        double[] values = new double[Trajectory.VALUES];
        for (int i = 0; i < n; i++) {
            double t_s = from_s + i * STEP_S;
            boolean gap = motion.inGap(t_s);
            motion.read(t_s, values);
            s.calibrated_mps[i] = gap ? Double.NaN : calibrated.at(t_s);
            s.true_mps[i] = gap ? Double.NaN : truly.at(t_s);
            s.sink_mps[i] = gap ? Double.NaN : -values[5];
        }
        return Optional.of(s);
    }

    boolean anyAirspeed() {
        return Arrays.stream(calibrated_mps).anyMatch(v -> !Double.isNaN(v));
    }

    int size() {
        return sink_mps.length;
    }

    double time_s(int i) {
        return start_s + i * STEP_S;
    }

    double calibrated_mps(int i) {
        return calibrated_mps[i];
    }

    double true_mps(int i) {
        return true_mps[i];
    }

    double sink_mps(int i) {
        return sink_mps[i];
    }

    /** Slope of the path through the air below the horizon; NaN where unknown. */
    double path_deg(int i) {
        return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sink_mps[i] / true_mps[i]))));
    }
}
