package pairdown.clock;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;

/** Weighs what a log says about its clock against what was measured. */
final class Verdict {
    /** Sigmas beyond which two statements disagree. */
    private static final double SIGMAS = 3;

    private final LoadedLog log;
    private final ClockSettings settings;

    Verdict(LoadedLog log, ClockSettings settings) {
        this.log = log;
        this.settings = settings;
    }

    /**
     * What is applied and what must be said.
     *
     * @param sigma_s of the offset against the other logs
     * @param own_s the part of it that is the log's own
     * @param beside_s where the log's own time was kept, give or take a known error: how far beside
     *     it the reference was measured
     */
    record Clock(
            ClockMap map,
            double sigma_s,
            double own_s,
            Optional<Estimate> beside_s,
            ClockMethod method,
            Optional<Instant> zero,
            List<String> words) {
        Clock from(Optional<Instant> other) {
            return new Clock(map, sigma_s, own_s, beside_s, method, other, words);
        }

        Clock saying(String more) {
            List<String> all = new ArrayList<>(words);
            all.add(more);
            return new Clock(map, sigma_s, own_s, beside_s, method, zero, List.copyOf(all));
        }
    }

    /** For a log that has absolute time. */
    Clock absolute(Optional<Estimate> measured) {
        Clock clock = judged(measured);
        return log.ref().clock().zero().isPresent()
                ? clock.saying("a clock's zero is for a log without absolute time: not used")
                : clock;
    }

    private Clock judged(Optional<Estimate> measured) {
        OptionalDouble mark = log.ref().clock().offset_s();
        if (mark.isPresent()) {
            return marked(mark.getAsDouble(), measured);
        }
        if (measured.isEmpty()) {
            return untied();
        }
        Estimate m = measured.get();
        double keep_s = Math.max(SIGMAS * m.sigma(), settings.keepWithin_s());
        if (Math.abs(m.value()) <= keep_s) {
            return kept(0, m, ClockMethod.GNSS_TIME, List.of());
        }
        OptionalDouble known_s = Told.knownOffset_s(m.value(), keep_s);
        double offset_s = known_s.orElse(m.value());
        List<String> words = new ArrayList<>();
        words.add("the clock was shifted by " + Told.seconds(offset_s) + " to fit its shared ride");
        Told.words(m.value()).ifPresent(words::add);
        return known_s.isPresent()
                ? kept(offset_s, m, ClockMethod.SHARED_RIDE, words)
                : set(offset_s, m.sigma(), ClockMethod.SHARED_RIDE, words);
    }

    /**
     * Of a log no shared ride tests, its own reference then: its latency and that of whatever it is
     * compared with.
     */
    private Clock untied() {
        return new Clock(
                ClockMap.IDENTITY,
                Math.sqrt(2) * settings.latencySigma_s(),
                0,
                Optional.empty(),
                ClockMethod.GNSS_TIME,
                Optional.empty(),
                List.of());
    }

    private Clock marked(double mark_s, Optional<Estimate> measured) {
        double sigma_s = settings.markSigma_s();
        List<String> words = new ArrayList<>();
        if (measured.isPresent()) {
            Estimate m = measured.get();
            double off_s = mark_s - m.value();
            sigma_s = Math.hypot(m.sigma(), off_s);
            if (Math.abs(off_s) > SIGMAS * m.sigma()) {
                words.add(disagreement(Told.seconds(mark_s), Told.seconds(m.value()), m.sigma()));
            }
        }
        return set(mark_s, sigma_s, ClockMethod.MARK, words);
    }

    private static String disagreement(String mark, String measured, double sigma_s) {
        return "the clock pinned by hand ("
                + mark
                + ") disagrees with the measured one ("
                + measured
                + ", sigma "
                + Told.seconds(sigma_s).substring(1)
                + ")";
    }

    /** At its own time, or that less a known error; a measurement beside it is not applied. */
    private static Clock kept(
            double offset_s, Estimate measured, ClockMethod method, List<String> words) {
        double beside_s = measured.value() - offset_s;
        double sigma_s = Math.hypot(measured.sigma(), beside_s);
        return new Clock(
                new ClockMap(offset_s, 0),
                sigma_s,
                sigma_s,
                Optional.of(new Estimate(beside_s, measured.sigma())),
                method,
                Optional.empty(),
                List.copyOf(words));
    }

    private static Clock set(
            double offset_s, double sigma_s, ClockMethod method, List<String> words) {
        return new Clock(
                new ClockMap(offset_s, 0),
                sigma_s,
                sigma_s,
                Optional.empty(),
                method,
                Optional.empty(),
                List.copyOf(words));
    }

    /**
     * For a log with its own zero.
     *
     * @param measured offset on {@code rough}: the instant of time 0, or of its mark plus this
     */
    Clock relative(Optional<Estimate> measured, TimeAxis rough) {
        Optional<Instant> mark = log.ref().clock().atZero();
        if (mark.isPresent()) {
            Clock c = marked(0, measured);
            return c.from(mark);
        }
        Clock clock = ownZero(measured, rough);
        return log.ref().clock().offset_s().isPresent()
                ? clock.saying("a log without absolute time needs a zero: its offset is not used")
                : clock;
    }

    private static Clock ownZero(Optional<Estimate> measured, TimeAxis rough) {
        return measured.map(
                        m ->
                                new Clock(
                                        ClockMap.IDENTITY,
                                        m.sigma(),
                                        m.sigma(),
                                        Optional.empty(),
                                        ClockMethod.SHARED_RIDE,
                                        Optional.of(rough.instant(m.value())),
                                        List.<String>of()))
                .orElseGet(
                        () ->
                                new Clock(
                                        ClockMap.IDENTITY,
                                        0,
                                        0,
                                        Optional.empty(),
                                        ClockMethod.NONE,
                                        Optional.empty(),
                                        List.of(
                                                "the log has no absolute time and shares no ride"
                                                        + " that could give it one")));
    }
}
