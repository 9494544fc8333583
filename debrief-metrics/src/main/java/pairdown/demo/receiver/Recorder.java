package pairdown.demo.receiver;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;

/** An aircraft's systems recorder: own zero, own rate, instruments' lag, noise and rounding. */
final class Recorder {
    /** A recorder is switched on within this of the truth's start (s). */
    private static final double LATEST_ZERO_S = 30;

    /** Lag of the airspeed's tubing and instrument (s; common practice, no published source). */
    private static final double AIRSPEED_LAG_S = 0.2;

    private static final Set<Channel> PRESSURES =
            Set.of(Channel.PRESSURE_ALTITUDE, Channel.STATIC_PRESSURE);

    private final Truth truth;
    private final TrueBody body;
    private final RecorderPlan plan;
    private final Draws draws;
    private final TrueReadings readings;
    private final Map<Channel, double[]> shown = new TreeMap<>();
    private final double zero_s;

    private Recorder(Truth truth, RecorderPlan plan, long seed) {
        this.truth = truth;
        this.plan = plan;
        this.body = truth.body(plan.participant());
        this.draws = Draws.of(seed, plan.participant(), plan.file(), "readings");
        this.readings = new TrueReadings(body);
        Draws clock = Draws.of(seed, plan.participant(), plan.file(), "clock");
        double from_s = Math.max(body.motion().start_s(), start_s());
        this.zero_s = plan.zero_s().orElse(from_s + clock.between(0, LATEST_ZERO_S));
        for (Channel channel : body.systems().keySet()) {
            if (plan.channels().contains(channel)) {
                shown.put(channel, readings.lagged(channel, lag_s(channel)));
            }
        }
        if (shown.isEmpty()) {
            throw new IllegalArgumentException(
                    "the truth has no systems of '" + plan.participant() + "' to record");
        }
    }

    static Recorded log(Truth truth, RecorderPlan plan, long seed) {
        return new Recorder(truth, plan, seed).log();
    }

    private double start_s() {
        return plan.kept().map(k -> k.start_s()).orElse(body.motion().start_s());
    }

    private double end_s() {
        double end_s = body.motion().end_s();
        return plan.kept().map(k -> Math.min(k.end_s(), end_s)).orElse(end_s);
    }

    private double lag_s(Channel channel) {
        if (!plan.noisy()) {
            return 0;
        }
        if (PRESSURES.contains(channel)) {
            return plan.pressureLag_s();
        }
        return channel == Channel.INDICATED_AIRSPEED && plan.pressureLag_s() > 0
                ? AIRSPEED_LAG_S
                : 0;
    }

    private Recorded log() {
        Track.Builder rows = new Track.Builder();
        double slow = 1 + plan.rate_ppm() * 1e-6;
        double from_s = Math.max(start_s(), body.motion().start_s());
        long first = Math.max(0, (long) Math.ceil((from_s - zero_s) / slow * plan.rate_Hz()));
        for (long k = first; zero_s + k / plan.rate_Hz() * slow <= end_s(); k++) {
            double true_s = zero_s + k / plan.rate_Hz() * slow;
            rows.row(k / plan.rate_Hz());
            shown.forEach((channel, values) -> read(rows, channel, values, true_s));
        }
        LogReport report = LogReport.whole(plan.file(), "csv");
        return new Recorded(rows.build(epoch(), HeightDatum.UNKNOWN, report), faults());
    }

    /** What a clock set by hand showed at the recorder's zero. */
    private Optional<Instant> epoch() {
        if (plan.offset_s().isEmpty()) {
            return Optional.empty();
        }
        double shown_s = zero_s - plan.offset_s().getAsDouble();
        return Optional.of(
                new TimeAxis(truth.start()).instant(shown_s).truncatedTo(ChronoUnit.MILLIS));
    }

    private Optional<Instant> ownZero() {
        return plan.offset_s().isPresent()
                ? Optional.empty()
                : Optional.of(new TimeAxis(truth.start()).instant(zero_s));
    }

    private void read(Track.Builder rows, Channel channel, double[] values, double true_s) {
        double value = readings.at(values, channel, true_s);
        double read = plan.noisy() ? Instrument.of(channel).read(value, draws) : value;
        rows.set(channel, channel.isCircular() ? Instrument.turned(read) : read);
    }

    private InjectedFaults faults() {
        return new InjectedFaults(
                plan.participant(),
                plan.file(),
                plan.offset_s(),
                ownZero(),
                plan.rate_ppm(),
                0,
                0,
                plan.pressureLag_s(),
                HeightDatum.UNKNOWN,
                0,
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
