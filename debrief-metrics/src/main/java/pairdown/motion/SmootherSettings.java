package pairdown.motion;

/**
 * What the smoother assumes of motion and receivers. Every threshold of this package stands here.
 *
 * @param gap_s longer than this without an accepted fix is a gap
 * @param gateProbability share of sound fixes that pass the outlier gate
 * @param aircraftJerk_m2ps5 white-jerk density of an aircraft
 * @param flyerJerk_m2ps5 white-jerk density of a person in flight or under a canopy
 * @param transientJerk_m2ps5 white-jerk density around exit and opening
 * @param unknownPhaseJerk_m2ps5 for a person while the phases are not yet known
 * @param beforeTransient_s the transient density begins this long before exit or opening
 * @param afterTransient_s and ends this long after
 * @param receiver the receiver's errors where the log says nothing better
 * @param reacquire_m one standard deviation of the extra position error just after a gap
 * @param reacquireTime_s it fades with this time constant
 * @param relock_s positions refused for this long are a shift of the receiver, no outliers
 * @param tuningPasses sweeps of the search for consistent innovations; 0 for none, 3 at most
 * @param smallestScale least factor on an assumed standard deviation (squared: on a density)
 * @param largestScale greatest factor on it
 * @param coarseStep_s a log with fixes further apart cannot tell its noise from the motion between
 * @param smallestCoarseScale so its noise is not taken for less than this times what is assumed
 */
public record SmootherSettings(
        double gap_s,
        double gateProbability,
        double aircraftJerk_m2ps5,
        double flyerJerk_m2ps5,
        double transientJerk_m2ps5,
        double unknownPhaseJerk_m2ps5,
        double beforeTransient_s,
        double afterTransient_s,
        ReceiverNoise receiver,
        double reacquire_m,
        double reacquireTime_s,
        double relock_s,
        int tuningPasses,
        double smallestScale,
        double largestScale,
        double coarseStep_s,
        double smallestCoarseScale) {
    /**
     * Defaults. Densities: an aeroplane's gusts and pilot, a flyer's body, and the seconds of exit
     * and opening, in which acceleration changes by tens of m/s² a second. Five metres and eight
     * seconds after a loss: receivers come back 5 to 20 m off and settle within 5 to 15 s (common
     * practice, no published source). Before phases are known a flyer's density lies between flight
     * and opening, so that neither is refused as an outlier.
     */
    public static final SmootherSettings DEFAULT =
            new SmootherSettings(
                    2,
                    0.999,
                    1,
                    5,
                    200,
                    60,
                    1.5,
                    6,
                    ReceiverNoise.DEFAULT,
                    5,
                    8,
                    3,
                    3,
                    0.2,
                    8,
                    0.4,
                    0.8);

    public SmootherSettings {
        if (!(gateProbability > 0 && gateProbability < 1)) {
            throw new IllegalArgumentException(
                    "gateProbability must lie between 0 and 1, not " + gateProbability);
        }
        if (!(gap_s > 0 && reacquireTime_s > 0 && relock_s > 0)) {
            throw new IllegalArgumentException("gap_s, reacquireTime_s and relock_s must be > 0");
        }
    }

    /** The same with other receiver errors. */
    public SmootherSettings withReceiver(ReceiverNoise other) {
        return new SmootherSettings(
                gap_s,
                gateProbability,
                aircraftJerk_m2ps5,
                flyerJerk_m2ps5,
                transientJerk_m2ps5,
                unknownPhaseJerk_m2ps5,
                beforeTransient_s,
                afterTransient_s,
                other,
                reacquire_m,
                reacquireTime_s,
                relock_s,
                tuningPasses,
                smallestScale,
                largestScale,
                coarseStep_s,
                smallestCoarseScale);
    }

    /** The same without fitting the measurement noise to the innovations. */
    public SmootherSettings withoutTuning() {
        return new SmootherSettings(
                gap_s,
                gateProbability,
                aircraftJerk_m2ps5,
                flyerJerk_m2ps5,
                transientJerk_m2ps5,
                unknownPhaseJerk_m2ps5,
                beforeTransient_s,
                afterTransient_s,
                receiver,
                reacquire_m,
                reacquireTime_s,
                relock_s,
                0,
                smallestScale,
                largestScale,
                coarseStep_s,
                smallestCoarseScale);
    }
}
