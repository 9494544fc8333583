package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.LeverArm;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * What the lead's systems log shows of a touch: a jolt as it begins, and controls held differently
 * afterwards.
 */
final class AircraftResponse {
    /** A jolt may come this much before the lock shows, whose edge is half its window wide (s). */
    private static final double EARLY_S = 1;

    /** The level before a step is taken over this (s). */
    private static final double BASE_S = 0.5;

    /** A slot nearer than this to the middle has no side to roll to (m). */
    private static final double MIDDLE_M = 0.5;

    private final Map<Channel, Series> systems;
    private final LeverArm slot;
    private final PairSettings.Contact settings;

    AircraftResponse(Map<Channel, Series> systems, LeverArm slot, PairSettings.Contact settings) {
        this.systems = systems;
        this.slot = slot;
        this.settings = settings;
    }

    /** Whether a jolt falls into a lock, or just before it. */
    boolean joltIn(Span lock) {
        Span when = new Span(lock.start_s() - EARLY_S, lock.end_s());
        double side = Math.abs(slot.right_m()) < MIDDLE_M ? 0 : Math.signum(slot.right_m());
        return steps(Channel.ROLL_RATE, when, settings.rollStep_dps(), side)
                || steps(Channel.LATERAL_LOAD, when, settings.loadStep_g(), 0)
                || steps(Channel.NORMAL_LOAD, when, settings.loadStep_g(), 0);
    }

    /**
     * Whether a channel steps in a stretch: within the settings' time it leaves the mean of the
     * half second before by at least {@code least}, and by a multiple of its scatter over the
     * seconds before.
     *
     * @param side the sign the step must have, 0 for either
     */
    private boolean steps(Channel channel, Span when, double least, double side) {
        Optional<Series> found = fast(channel);
        if (found.isEmpty()) {
            return false;
        }
        Series series = found.get();
        for (int i = Math.max(0, series.indexAtOrBefore(when.start_s()));
                i < series.size() && series.time_s(i) <= when.end_s();
                i++) {
            double step = stepAfter(series, i);
            boolean towards = side == 0 || step * side > 0;
            if (towards && Math.abs(step) >= Math.max(least, scatterBefore(series, i))) {
                return true;
            }
        }
        return false;
    }

    private Optional<Series> fast(Channel channel) {
        return Optional.ofNullable(systems.get(channel))
                .filter(s -> s.size() > 1)
                .filter(
                        s ->
                                (s.size() - 1) / (s.time_s(s.size() - 1) - s.time_s(0))
                                        >= settings.jolt_Hz());
    }

    /**
     * How far the mean of the time after a sample leaves the mean of the time before it. Means, as
     * a single noisy sample is no step: a hand on a wing tip holds the roll rate for longer than
     * this.
     */
    private double stepAfter(Series series, int i) {
        double t_s = series.time_s(i);
        OptionalDouble before = mean(series, t_s - BASE_S, t_s);
        OptionalDouble after = mean(series, t_s, t_s + settings.stepWithin_s());
        return before.isPresent() && after.isPresent()
                ? after.getAsDouble() - before.getAsDouble()
                : 0;
    }

    private double scatterBefore(Series series, int i) {
        double t_s = series.time_s(i);
        List<Double> values = values(series, t_s - settings.quiet_s(), t_s);
        return settings.rollStepSigmas() * standardDeviation(values);
    }

    /** Whether aileron or rudder is held differently after a touch began, lastingly. */
    boolean trimShiftAfter(Span lock) {
        return shifts(Channel.AILERON, lock) || shifts(Channel.RUDDER, lock);
    }

    private boolean shifts(Channel channel, Span lock) {
        Series series = systems.get(channel);
        double end_s = lock.start_s() + EARLY_S + settings.trimFor_s();
        if (series == null || lock.end_s() < end_s) {
            return false;
        }
        double before_s = lock.start_s() - EARLY_S;
        OptionalDouble after = mean(series, lock.start_s() + EARLY_S, end_s);
        List<Double> means = new ArrayList<>();
        for (double t_s = before_s;
                t_s > before_s - 2 * settings.quiet_s();
                t_s -= settings.trimFor_s()) {
            mean(series, t_s - settings.trimFor_s(), t_s).ifPresent(means::add);
        }
        if (after.isEmpty() || means.size() < 3) {
            return false;
        }
        double level = means.stream().mapToDouble(m -> m).average().orElseThrow();
        double scatter = settings.trimSigmas() * standardDeviation(means);
        return Math.abs(after.getAsDouble() - level) >= Math.max(settings.trim_pct(), scatter);
    }

    private static OptionalDouble mean(Series series, double from_s, double to_s) {
        return values(series, from_s, to_s).stream().mapToDouble(v -> v).average();
    }

    /** Samples after {@code from_s}, up to and with {@code to_s}. */
    private static List<Double> values(Series series, double from_s, double to_s) {
        List<Double> values = new ArrayList<>();
        for (int i = series.indexAtOrBefore(from_s) + 1;
                i < series.size() && series.time_s(i) <= to_s;
                i++) {
            if (!Double.isNaN(series.value(i))) {
                values.add(series.value(i));
            }
        }
        return values;
    }

    private static double standardDeviation(List<Double> values) {
        if (values.size() < 2) {
            return 0;
        }
        double mean = values.stream().mapToDouble(v -> v).average().orElseThrow();
        double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(squares / (values.size() - 1));
    }
}
