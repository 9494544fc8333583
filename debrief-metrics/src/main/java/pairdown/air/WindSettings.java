package pairdown.air;

/**
 * How the wind is found.
 *
 * @param layer_m depth of a layer
 * @param refuseUnder_deg an arc of turn with less heading than this says nothing
 * @param warnUnder_deg and with less than this, too little to rely on
 * @param arcHeight_m an arc is cut where it has climbed or sunk this far
 * @param arcTime_s or lasted this long
 * @param speedWander_mps how far a steady machine's airspeed wanders, gusts included
 * @param wanderTime_s for how long it stays off
 * @param speedDrift_mps how far a machine's chosen speed drifts in a minute
 * @param shear_mps change of the wind from one layer to the next, in the mean of all and beside it
 * @param headingScale scale error of a logged airspeed, and heading error (rad): one sigma each
 * @param slip_mps wander across the heading (sideslip) of an aircraft
 * @param typed_mps error of a typed wind per axis
 * @param largestSigma_mps layers known no better are left out
 */
public record WindSettings(
        double layer_m,
        double refuseUnder_deg,
        double warnUnder_deg,
        double arcHeight_m,
        double arcTime_s,
        double speedWander_mps,
        double wanderTime_s,
        double speedDrift_mps,
        double shear_mps,
        double headingScale,
        double slip_mps,
        double typed_mps,
        double largestSigma_mps) {
    /**
     * Defaults. Arcs: simulated fits with 1 m/s of wander err by 3 m/s at 120°, 1.5 m/s at 180° and
     * 0.8 m/s at 360° (common practice, no published source). Shear: 2 to 4 m/s a kilometre are
     * usual, layers of 150 m differ by half a metre a second. Typed winds are forecasts or hours
     * old.
     */
    public static final WindSettings DEFAULT =
            new WindSettings(150, 120, 270, 300, 240, 1, 6, 1, 0.6, 0.03, 1.5, 2.5, 4);
}
