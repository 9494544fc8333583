package pairdown.clock;

/**
 * What the common clock is found with.
 *
 * @param minimumRide_s least length of a shared ride: shorter agreement happens by chance
 * @param minimumSpeed_mps slower than this nothing tells a ride from standing about
 * @param maximumSink_mps sinking faster than this is flight, not a ride, for logs of two people
 * @param rideResidual_mps velocity difference inside one vehicle beyond receivers' noise: seats
 *     swing about the centre in turns and gusts
 * @param ridePosition_m two receivers in one cabin read within this of each other, masked sky
 *     included (common practice, no published source)
 * @param seat_m unknown seat along the ship, one standard deviation; divided by its speed it is
 *     time
 * @param unobservable_s a shared ride that gives a sigma beyond this was flown too straight
 * @param keepWithin_s a satellite clock is believed unless the measured offset is beyond this and
 *     three sigma
 * @param ambiguity a second alignment whose residual is within this share of the best makes both
 *     worthless
 * @param maximumRate greatest relative rate error a recorder's clock is allowed
 * @param rateSigma usual rate error of an uncompensated quartz recorder
 * @param pressureLag_s usual lag of pressure instruments: what an air-data match without a second
 *     signal does not know (common practice, no published source)
 * @param latencySigma_s by how much satellite receivers differ in how late they are, where no
 *     shared ride tests it (common practice, no published source)
 * @param commonLatency_s how late they all are in the mean: each is late by 0 to 0.4 s, usually
 *     (common practice, no published source), and UTC as they tell it is not corrected for it
 * @param markSigma_s how well a person pins a clock
 * @param kernel_s width of the smoothing that both logs get alike before they are compared
 */
public record ClockSettings(
        double minimumRide_s,
        double minimumSpeed_mps,
        double maximumSink_mps,
        double rideResidual_mps,
        double ridePosition_m,
        double seat_m,
        double unobservable_s,
        double keepWithin_s,
        double ambiguity,
        double maximumRate,
        double rateSigma,
        double pressureLag_s,
        double latencySigma_s,
        double commonLatency_s,
        double markSigma_s,
        double kernel_s) {
    public static final ClockSettings DEFAULTS =
            new ClockSettings(
                    60, 5, 8, 0.6, 50, 1.5, 0.1, 0.1, 0.2, 200e-6, 30e-6, 0.5, 0.1, 0.2, 0.2, 1);

    public ClockSettings {
        if (!(minimumRide_s > 0 && kernel_s > 0 && seat_m >= 0)) {
            throw new IllegalArgumentException(
                    "minimumRide_s and kernel_s must be above 0, seat_m at least 0");
        }
    }
}
