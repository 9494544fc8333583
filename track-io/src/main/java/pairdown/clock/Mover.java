package pairdown.clock;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import pairdown.attempt.Role;
import pairdown.geodesy.LocalFrame;
import pairdown.time.TimeAxis;
import pairdown.track.Velocities;
import pairdown.units.Estimate;

/** A log that says where it moved, as the search for shared rides sees it. */
final class Mover {
    /** Positions and velocities of one receiver differ by no more than this on a ride (m/s). */
    private static final double LATENCY_RESIDUAL_MPS = 1;

    /** A latency known worse than this is not told. */
    private static final double MOST_SIGMA_S = 0.05;

    /** Filters of receivers are shorter than this (common practice, no published source). */
    private static final double MOST_LATENCY_S = 1;

    /**
     * How late a receiver's velocities are, 0.1 to 0.3 s, where it was not measured (common
     * practice, no published source).
     */
    private static final double UNKNOWN_LAG_S = 0.15;

    private final int index;
    private final LoadedLog log;
    private final Velocities velocities;
    private final OptionalDouble base_s;
    private final double hypothesis_s;
    private final LocalFrame frame;
    private final double leastKernel_s;
    private final Map<Double, RideMotion> motions = new ConcurrentHashMap<>();
    private final Optional<Estimate> latency_s;

    private Mover(
            int index,
            LoadedLog log,
            OptionalDouble base_s,
            double hypothesis_s,
            LocalFrame frame,
            ClockSettings settings) {
        this.index = index;
        this.log = log;
        this.velocities = Velocities.of(log.track());
        this.base_s = base_s;
        this.hypothesis_s = hypothesis_s;
        this.frame = frame;
        this.leastKernel_s = settings.kernel_s();
        this.latency_s = measureLatency(settings);
    }

    /**
     * A mover on a rough axis of the logs' own clocks.
     *
     * @param settings smoothing, unless the log is slower than that
     */
    static Mover of(
            int index, LoadedLog log, TimeAxis rough, LocalFrame frame, ClockSettings settings) {
        OptionalDouble base_s =
                log.track()
                        .epoch()
                        .or(() -> log.ref().clock().atZero())
                        .map(e -> OptionalDouble.of(rough.seconds(e)))
                        .orElse(OptionalDouble.empty());
        double hypothesis_s =
                log.track().hasAbsoluteTime() ? log.ref().clock().offset_s().orElse(0) : 0;
        return new Mover(index, log, base_s, hypothesis_s, frame, settings);
    }

    /**
     * How much the log's positions lag behind its velocities (s, negative where the velocities are
     * late, as filtered ones are): the lag between the derivative of position and velocity. Empty
     * for a log without velocities of its own, or flown too straight to tell.
     */
    Optional<Estimate> latency_s() {
        return latency_s;
    }

    private Optional<Estimate> measureLatency(ClockSettings settings) {
        if (velocities.isLevelDifferenced() || velocities.levelCount() == 0) {
            return Optional.empty();
        }
        RideFit.Rules throughout =
                new RideFit.Rules(
                        LATENCY_RESIDUAL_MPS,
                        Double.POSITIVE_INFINITY,
                        settings.minimumRide_s(),
                        settings.minimumSpeed_mps(),
                        Double.POSITIVE_INFINITY);
        return RideFit.near(motionByPosition(), motion(kernel_s()), 0, throughout)
                .filter(r -> r.sigma_s() < MOST_SIGMA_S && Math.abs(r.lag_s()) < MOST_LATENCY_S)
                .map(r -> new Estimate(r.lag_s(), r.sigma_s()));
    }

    /** What takes times of the log's positions to times of its velocities' content (s). */
    double velocityLag_s() {
        return latency_s.map(e -> -e.value()).orElse(0.0);
    }

    double velocityLagSigma_s() {
        boolean own = !velocities.isLevelDifferenced() && velocities.levelCount() > 0;
        return latency_s.map(Estimate::sigma).orElse(own ? UNKNOWN_LAG_S : 0);
    }

    /** Place in the list of logs. */
    int index() {
        return index;
    }

    LoadedLog log() {
        return log;
    }

    /** Whether the log says, or a person said, what UTC its times are. */
    boolean isAbsolute() {
        return base_s.isPresent();
    }

    /** The rough axis at the log's own time 0; 0 for a log without absolute time. */
    double base_s() {
        return base_s.orElse(0);
    }

    /** The offset to be tested: 0, or what a person pinned. */
    double hypothesis_s() {
        return hypothesis_s;
    }

    /** What takes the mover's time to UTC on the rough axis, once its clock is known. */
    double toRough_s(ClockResult r, TimeAxis rough) {
        return log.track().hasAbsoluteTime()
                ? r.map().offset_s()
                : rough.seconds(r.zero().orElseThrow()) - base_s();
    }

    double start_s() {
        return log.track().start_s() + base_s() + hypothesis_s;
    }

    double end_s() {
        return log.track().end_s() + base_s() + hypothesis_s;
    }

    /** Root mean square speed (m/s); empty where none is known. */
    OptionalDouble speed_mps() {
        RideMotion m = motion(kernel_s());
        double squares = 0;
        int n = 0;
        for (int k = 0; k < m.size(); k++) {
            double square = 0;
            for (int axis = 0; axis < (m.hasUp ? 3 : 2); axis++) {
                square += m.velocity[axis][k] * m.velocity[axis][k];
            }
            squares += Double.isNaN(square) ? 0 : square;
            n += Double.isNaN(square) ? 0 : 1;
        }
        return n == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / n));
    }

    /** Satellite-native formats tell UTC themselves. */
    boolean isNative() {
        String format = log.track().report().format();
        return log.track().hasAbsoluteTime() && (format.equals("nmea") || format.equals("igc"));
    }

    boolean isOf(Mover other) {
        return log.participant().id().equals(other.log.participant().id());
    }

    Role role() {
        return log.participant().role();
    }

    String name() {
        return log.participant().id() + " (" + log.ref().file() + ")";
    }

    double kernel_s() {
        return RideMotion.kernelFor(velocities, leastKernel_s);
    }

    double medianStep_s() {
        return velocities.medianStep_s();
    }

    boolean isDifferenced() {
        return velocities.isLevelDifferenced() || velocities.isVerticalDifferenced();
    }

    /** The motion that positions alone tell, at {@link #kernel_s}: it has no filter's lag. */
    RideMotion motionByPosition() {
        return RideMotion.of(
                log.track(), Velocities.ofPositions(log.track()), base_s(), kernel_s(), frame);
    }

    RideMotion motion(double kernel_s) {
        return motions.computeIfAbsent(
                kernel_s, k -> RideMotion.of(log.track(), velocities, base_s(), k, frame));
    }
}
