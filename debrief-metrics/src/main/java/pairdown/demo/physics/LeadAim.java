package pairdown.demo.physics;

/**
 * What the lead's pilot wants of the aircraft at a moment.
 *
 * @param airspeed_mps true airspeed, held by pitch
 * @param turn_radps turn rate, right positive
 * @param slip_rad sideslip held with the rudder, wind from the right positive
 * @param flap 0 to 1
 * @param flare sink to be held by pitch instead of the airspeed; NaN for none
 */
record LeadAim(double airspeed_mps, double turn_radps, double slip_rad, double flap, double flare) {
    LeadAim(double airspeed_mps, double turn_radps, double flap) {
        this(airspeed_mps, turn_radps, 0, flap, Double.NaN);
    }
}
