package pairdown.safety;

/**
 * How limits are judged.
 *
 * @param sigmas a value beyond its limit by more than this many of its sigmas is exceeded, by less
 *     either way within uncertainty: 95 %
 * @param debounce_s a value must be beyond for this long, so that one row is none
 * @param afterExit_s separations count from this long after the later exit, when both have flown
 *     clear of the exit aircraft
 * @param hole_s longer than this between two fixes and nothing is measured there
 * @param step_s separations near the least are read this often
 * @param airspeedSigma_mps one standard deviation of an airspeed beside that of the wind: the
 *     velocity's and the air's gusts (common practice, no published source)
 * @param closureChange_mps2 how fast a closure can change inside a hole: what a braking or diving
 *     pose gives (common practice, no published source)
 */
public record SafetySettings(
        double sigmas,
        double debounce_s,
        double afterExit_s,
        double hole_s,
        double step_s,
        double airspeedSigma_mps,
        double closureChange_mps2) {
    public static final SafetySettings DEFAULT = new SafetySettings(2, 0.3, 8, 1.05, 0.05, 0.5, 3);
}
