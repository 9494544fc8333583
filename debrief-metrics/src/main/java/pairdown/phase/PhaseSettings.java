package pairdown.phase;

/**
 * What phases and their bounds are found with.
 *
 * @param step_s spacing of the motion that is looked at
 * @param kernel_s smoothing of that motion: longer than a receiver's noise, shorter than an exit
 * @param flightSink_mps a jumper sinks faster than this in flight and slower under canopy
 * @param flightTime_s for at least this long
 * @param openingDeceleration_mps2 what an opening pulls at least, smoothed
 * @param openingReach_s how far from the crossing of {@code flightSink_mps} that pull may be
 * @param canopySpeed_mps a canopy flies no faster than this over ground, wind included
 * @param canopyTime_s slow sink for this long is a canopy, not a flare
 * @param shared_mps flyer and ship closer in velocity than this ride together
 * @param stableAcceleration_mps2 first stable flight has less than this …
 * @param stableTime_s … for this long
 * @param groundSpeed_mps slower than this is standing about
 * @param groundTime_s for this long
 * @param climb_mps an aircraft rising faster than this climbs
 * @param descentSink_mps an aircraft sinking faster than this descends …
 * @param descentTime_s … once it does so for this long
 */
public record PhaseSettings(
        double step_s,
        double kernel_s,
        double flightSink_mps,
        double flightTime_s,
        double openingDeceleration_mps2,
        double openingReach_s,
        double canopySpeed_mps,
        double canopyTime_s,
        double shared_mps,
        double stableAcceleration_mps2,
        double stableTime_s,
        double groundSpeed_mps,
        double groundTime_s,
        double climb_mps,
        double descentSink_mps,
        double descentTime_s) {
    public static final PhaseSettings DEFAULTS =
            new PhaseSettings(0.2, 0.5, 8, 8, 3, 6, 25, 10, 3, 2, 3, 2, 10, 1, 4, 8);
}
