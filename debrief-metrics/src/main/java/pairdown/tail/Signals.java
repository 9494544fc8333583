package pairdown.tail;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import pairdown.stats.Robust;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** The logged channels on one grid, with the rate each was logged at. */
final class Signals {
    private static final List<Channel> USED =
            List.of(
                    Channel.ELEVATOR,
                    Channel.RUDDER,
                    Channel.PITCH_RATE,
                    Channel.YAW_RATE,
                    Channel.POWER_LEVER,
                    Channel.BLADE_ANGLE,
                    Channel.TORQUE,
                    Channel.FLAP,
                    Channel.NORMAL_LOAD,
                    Channel.LATERAL_LOAD,
                    Channel.INDICATED_AIRSPEED,
                    Channel.PRESSURE_ALTITUDE,
                    Channel.STATIC_PRESSURE,
                    Channel.OUTSIDE_AIR_TEMPERATURE);

    private final Grid grid;
    private final Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
    private final Map<Channel, Double> rate_Hz = new EnumMap<>(Channel.class);
    private final Set<Channel> fromAttitude = EnumSet.noneOf(Channel.class);

    private Signals(Grid grid) {
        this.grid = grid;
    }

    /** The channels of an input; empty where it spans no time. */
    static Optional<Signals> of(TailInput input) {
        Optional<Span> span = span(input);
        if (span.isEmpty() || span.get().duration_s() <= 0) {
            return Optional.empty();
        }
        TailSettings.Data data = input.settings().data();
        double fastest_s =
                USED.stream()
                        .flatMap(c -> input.system(c).stream())
                        .mapToDouble(Signals::step_s)
                        .min()
                        .orElse(data.greatestStep_s());
        double step_s = Math.max(data.leastStep_s(), Math.min(data.greatestStep_s(), fastest_s));
        Signals signals = new Signals(Grid.over(span.get(), step_s));
        for (Channel c : USED) {
            Optional<Series> logged = input.system(c);
            logged.ifPresent(s -> signals.add(c, s));
            if (logged.isEmpty()) {
                AttitudeRates.of(c, input)
                        .ifPresent(
                                s -> {
                                    signals.add(c, s);
                                    signals.fromAttitude.add(c);
                                });
            }
        }
        return Optional.of(signals);
    }

    private static Optional<Span> span(TailInput input) {
        List<Span> spans =
                Stream.concat(
                                USED.stream().flatMap(c -> input.system(c).stream()),
                                Stream.concat(
                                        input.motion().calibratedAirspeed_mps().stream(),
                                        input.motion().trueAirspeed_mps().stream()))
                        .filter(s -> s.size() > 1)
                        .map(s -> new Span(s.time_s(0), s.time_s(s.size() - 1)))
                        .toList();
        double start_s = spans.stream().mapToDouble(Span::start_s).min().orElse(0);
        double end_s = spans.stream().mapToDouble(Span::end_s).max().orElse(start_s);
        return spans.isEmpty() ? Optional.empty() : Optional.of(new Span(start_s, end_s));
    }

    /** The median step between samples that differ in time (s). */
    static double step_s(Series series) {
        int n = series.size() - 1;
        double[] steps = new double[n];
        for (int i = 0; i < n; i++) {
            double step_s = series.time_s(i + 1) - series.time_s(i);
            steps[i] = step_s > 0 ? step_s : Double.NaN;
        }
        return Robust.median(steps).orElse(Double.POSITIVE_INFINITY);
    }

    private void add(Channel channel, Series series) {
        double[] column = grid.read(series);
        for (double v : column) {
            if (Double.isFinite(v)) {
                columns.put(channel, column);
                rate_Hz.put(channel, 1 / step_s(series));
                return;
            }
        }
    }

    Grid grid() {
        return grid;
    }

    boolean has(Channel channel) {
        return columns.containsKey(channel);
    }

    /** Samples a second as logged; 0 for a channel that is not. */
    double rate_Hz(Channel channel) {
        return rate_Hz.getOrDefault(channel, 0.0);
    }

    /** The channel on the grid; all NaN for one that is not logged. Not to be changed. */
    double[] column(Channel channel) {
        double[] column = columns.get(channel);
        return column == null ? nothing(grid.size()) : column;
    }

    /** Whether a rate was not logged but is the slope of the attitude. */
    boolean isFromAttitude(Channel rate) {
        return fromAttitude.contains(rate);
    }

    /**
     * How much of what a rate's samples seem to say they do say: the slope of an attitude carries
     * the error of every angle twice, so that only every second sample tells something new.
     */
    double evidence(Channel rate) {
        return isFromAttitude(rate) ? 0.5 : 1;
    }

    static double[] nothing(int size) {
        double[] none = new double[size];
        Arrays.fill(none, Double.NaN);
        return none;
    }
}
