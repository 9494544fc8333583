package pairdown.pair;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.LeverArm;
import pairdown.stats.Robust;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * What the lead's systems log shows of a touch: a jolt as it begins, and the aileron held against
 * the weight on one wing while it lasts.
 *
 * <p>Both have a side: a hand on the left tip rolls the lead to the left, and its pilot holds right
 * aileron. So another flyer's touch on the other tip is not taken for this one's.
 */
final class AircraftResponse {
    /** A jolt may come this much before the lock shows, whose edge is half its window wide (s). */
    private static final double EARLY_S = 1;

    /** The level before a step is taken over this (s). */
    private static final double BASE_S = 0.5;

    /** A slot nearer than this to the middle has no side to roll to (m). */
    private static final double MIDDLE_M = 0.5;

    /** A lasting change is looked for every so often (s). */
    private static final double TRIM_STEP_S = 0.25;

    private final Map<Channel, Series> systems;
    private final double side;
    private final PairSettings.Contact settings;

    AircraftResponse(Map<Channel, Series> systems, LeverArm slot, PairSettings.Contact settings) {
        this.systems = systems;
        this.side = Math.abs(slot.right_m()) < MIDDLE_M ? 0 : Math.signum(slot.right_m());
        this.settings = settings;
    }

    /** Whether a jolt falls into a lock, or just before it. */
    boolean joltIn(Span lock) {
        return rollsIn(lock, settings.rollStepSigmas())
                || loadsStepIn(lock, Channel.LATERAL_LOAD)
                || loadsStepIn(lock, Channel.NORMAL_LOAD);
    }

    /**
     * Whether a jolt alone speaks for a touch. In rough air a lock of ten seconds has a step of the
     * roll rate by chance: it must stand out further, and counts only where no logged control could
     * have answered a weight on the tip.
     */
    boolean joltAloneIn(Span lock) {
        return loadsStepIn(lock, Channel.LATERAL_LOAD)
                || loadsStepIn(lock, Channel.NORMAL_LOAD)
                || (!trimWouldShowIn(lock) && rollsIn(lock, settings.rollAloneSigmas()));
    }

    private boolean rollsIn(Span lock, double sigmas) {
        return steps(
                Channel.ROLL_RATE, settings.jolt_Hz(), lock, settings.rollStep_dps(), sigmas, side);
    }

    private boolean loadsStepIn(Span lock, Channel channel) {
        return steps(
                channel,
                settings.load_Hz(),
                lock,
                settings.loadStep_g(),
                settings.rollStepSigmas(),
                0);
    }

    /**
     * Whether a channel steps in a lock or just before it: within the settings' time it leaves the
     * mean of the half second before by at least {@code least}, and by a multiple of its scatter
     * over the seconds before.
     *
     * @param sigmas that multiple
     * @param towards the sign the step must have, 0 for either
     */
    private boolean steps(
            Channel channel,
            double least_Hz,
            Span lock,
            double least,
            double sigmas,
            double towards) {
        Optional<Series> found =
                Optional.ofNullable(systems.get(channel))
                        .filter(s -> SeriesStatistics.rate_Hz(s) >= least_Hz);
        if (found.isEmpty()) {
            return false;
        }
        Series series = found.get();
        for (int i = Math.max(0, series.indexAtOrBefore(lock.start_s() - EARLY_S));
                i < series.size() && series.time_s(i) <= lock.end_s();
                i++) {
            double t_s = series.time_s(i);
            double step = stepAfter(series, t_s);
            double size = towards == 0 ? Math.abs(step) : step * towards;
            if (size >= least
                    && size
                            >= sigmas
                                    * SeriesStatistics.scatter(
                                            series, t_s - settings.quiet_s(), t_s)) {
                return true;
            }
        }
        return false;
    }

    /**
     * How far the mean of the time after an instant leaves the mean of the time before it. Means,
     * as a single noisy sample is no step: a hand on a wing tip holds the roll rate for longer than
     * this.
     */
    private double stepAfter(Series series, double t_s) {
        OptionalDouble before = SeriesStatistics.mean(series, t_s - BASE_S, t_s);
        OptionalDouble after = SeriesStatistics.mean(series, t_s, t_s + settings.stepWithin_s());
        return before.isPresent() && after.isPresent()
                ? after.getAsDouble() - before.getAsDouble()
                : 0;
    }

    /**
     * Whether the controls are held differently in a lock, lastingly and against the weight on that
     * side: the aileron or, where none is logged, the rudder. The change must show against the time
     * before, and against the usual trim of the time around as well: when the other tip is let go,
     * the aileron changes too, but back to the usual.
     */
    boolean trimShiftIn(Span lock) {
        Optional<Series> series = trimmed();
        double last_s = lock.end_s() - settings.trimFor_s();
        for (double t_s = lock.start_s(); series.isPresent() && t_s <= last_s; t_s += TRIM_STEP_S) {
            if (shiftsAt(series.get(), t_s)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether controls are logged and a lock lasts long enough for them to answer a touch in it.
     */
    private boolean trimWouldShowIn(Span lock) {
        return trimmed().isPresent() && lock.duration_s() >= 2 * settings.trimFor_s();
    }

    private Optional<Series> trimmed() {
        Series rudder = systems.get(Channel.RUDDER);
        return Optional.ofNullable(systems.getOrDefault(Channel.AILERON, rudder));
    }

    private boolean shiftsAt(Series series, double t_s) {
        double each_s = settings.trimFor_s();
        OptionalDouble held = SeriesStatistics.mean(series, t_s, t_s + each_s);
        double[] before =
                SeriesStatistics.means(series, t_s - settings.trimBefore_s(), t_s - BASE_S, each_s);
        double[] around =
                SeriesStatistics.means(
                        series,
                        t_s - settings.trimAround_s(),
                        t_s + settings.trimAround_s(),
                        each_s);
        if (held.isEmpty() || before.length < 3) {
            return false;
        }
        double least =
                Math.max(
                        settings.trim_pct(),
                        settings.trimSigmas() * Robust.sigma(before).orElseThrow());
        return shift(held.getAsDouble(), before) >= least
                && shift(held.getAsDouble(), around) >= least;
    }

    /**
     * How far a control is held away from its usual place, against the weight on the slot's side.
     */
    private double shift(double held, double[] usual) {
        double off = held - Robust.median(usual).orElseThrow();
        return side == 0 ? Math.abs(off) : -side * off;
    }
}
