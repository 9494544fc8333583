package pairdown.tail;

import pairdown.stats.Bootstrap;

/**
 * Thresholds of the tail analysis, by part. Most are common practice with no published source, from
 * simulated flights; each can be changed.
 */
public record TailSettings(
        Data data, Force force, Fit fit, Signs signs, Power power, Review review) {
    public static final TailSettings DEFAULT =
            new TailSettings(
                    Data.DEFAULT,
                    Force.DEFAULT,
                    Fit.DEFAULT,
                    Signs.DEFAULT,
                    Power.DEFAULT,
                    Review.DEFAULT);

    /**
     * How channels are read.
     *
     * @param smoothing_s sigma of the local line that smooths and differentiates rates: 0.12 s
     *     passes what a pilot commands (to about 1.5 Hz) and stops sensor noise
     * @param airSmoothing_s the same for airspeed and pressure height, whose noise is larger and
     *     whose changes are slower
     * @param leastRate_Hz controls and rates logged more slowly say nothing about effectiveness:
     *     the response to an input is over within half a second
     * @param leastStep_s finest analysis step
     * @param greatestStep_s coarsest analysis step
     * @param flying_mps below this calibrated airspeed the aircraft is taken to be on the ground
     */
    public record Data(
            double smoothing_s,
            double airSmoothing_s,
            double leastRate_Hz,
            double leastStep_s,
            double greatestStep_s,
            double flying_mps) {
        public static final Data DEFAULT = new Data(0.12, 0.5, 3.9, 0.05, 0.2, 22);
    }

    /**
     * The force balance.
     *
     * @param discDiameter_m the propeller's: 2.8 m is usual for a single turboprop of this size
     * @param idleLever_pct the lever within this of 0 is idle
     * @param idleSettle_s after the lever comes to idle, torque and blade need this long
     * @param leastIdle_s less time at idle in all gives no baseline
     * @param leastIdleSink_mps a slower sink at idle is a flare, a roll or not yet a descent
     * @param verticalAir_mps rising and sinking air that the balance takes for drag and power where
     *     the gusts can't be told from the log, one sigma between light and moderate (MIL-F-8785C)
     * @param verticalAir_s for how long: gusts of 530 m at 45 to 65 m/s
     * @param reverseErrorShare how far reverse may put a logged airspeed off: pick-ups near the
     *     wake
     * @param motionSpeedSigma_mps of the airspeed by motion and wind, over a descent
     * @param airspeedSigma_mps of a smoothed airspeed, for the sigma of the force
     * @param sinkSigma_mps of a smoothed sink
     * @param massSigma share of a given mass that is uncertain
     * @param usualMass_kg taken where none is given: the attempt file's documented default
     * @param usualMassSigma share of that which is uncertain
     */
    public record Force(
            double discDiameter_m,
            double idleLever_pct,
            double idleSettle_s,
            double leastIdle_s,
            double leastIdleSink_mps,
            double verticalAir_mps,
            double verticalAir_s,
            double reverseErrorShare,
            double motionSpeedSigma_mps,
            double airspeedSigma_mps,
            double sinkSigma_mps,
            double massSigma,
            double usualMass_kg,
            double usualMassSigma) {
        /** The propeller disc's area. */
        double disc_m2() {
            return Math.PI * discDiameter_m * discDiameter_m / 4;
        }

        public static final Force DEFAULT =
                new Force(2.8, 3, 1.5, 1, 2, 1.5, 8, 0.03, 1.2, 0.4, 0.3, 0.03, 2300, 0.25);
    }

    /**
     * Control effectiveness.
     *
     * @param leastBaseline_s less forward-thrust flight with enough input gives no baseline
     * @param leastInput_pct standard deviation of the control in the baseline under which its
     *     effect can't be judged: half a degree of a travel of 25°
     * @param greatestSigma the ratio is judged only where its sigma is smaller
     * @param pressureBand baseline samples lie within this share of the dive's dynamic pressure,
     *     where there are enough
     * @param reverseLever_pct the lever behind this counts as reverse
     * @param reverseBlade_deg where the lever is not logged, so does a blade angle under this: at
     *     idle blades stand at some 10° and more
     */
    public record Fit(
            double leastBaseline_s,
            double leastInput_pct,
            double greatestSigma,
            double pressureBand,
            double reverseLever_pct,
            double reverseBlade_deg) {
        public static final Fit DEFAULT = new Fit(15, 2, 0.15, 0.3, -5, 6);
    }

    /**
     * Signs of a blanked tail, and how they make an episode.
     *
     * @param lostBelow effectiveness under this share of the dive's own level …
     * @param lostFor_s … for this long is lost …
     * @param clearAbove … until it is above this share
     * @param activity control over response, as a multiple of the dive's own level
     * @param activityWindow_s over which both are taken
     * @param reversalSwing_pct a rudder reversal swings at least this far
     * @param reversals_perS from this rate on …
     * @param reversalsFor_s … over this long
     * @param nearStop_pct an elevator beyond this …
     * @param nearStopFor_s … for this long is near its stop
     * @param rate_dps pitch or yaw rate beyond this is an excursion
     * @param residualSigmas so many sigmas off the fitted response is one too
     * @param together_s two signs within this make an episode
     * @param clearFor_s it ends when all signs have been clear this long
     * @param strongShare effectiveness at or under this share of the dive's own level is strong
     * @param strongMargin_pct and so is an elevator with no more than this left
     */
    public record Signs(
            double lostBelow,
            double lostFor_s,
            double clearAbove,
            double activity,
            double activityWindow_s,
            double reversalSwing_pct,
            double reversals_perS,
            double reversalsFor_s,
            double nearStop_pct,
            double nearStopFor_s,
            double rate_dps,
            double residualSigmas,
            double together_s,
            double clearFor_s,
            double strongShare,
            double strongMargin_pct) {
        public static final Signs DEFAULT =
                new Signs(0.6, 0.7, 0.75, 1.8, 1.5, 10, 1.5, 1.5, 85, 0.5, 10, 3, 1.5, 1, 0.45, 5);
    }

    /**
     * Power changes.
     *
     * @param step_pct a move of the lever or torque by so much …
     * @param within_s … within this long is a step; 10 % of the way from idle to full reverse
     * @param bladeShare the blade angle's, as a share of the range it was logged over, forward and
     *     reverse: the lever's 10 are that share of its 200
     * @param coefficientRise Tc′ alone: a rise by so much
     * @param sameMove_s steps of two channels closer than this are one move, named by the lever
     * @param before_s a start is paired with the latest move towards reverse in this long before it
     */
    public record Power(
            double step_pct,
            double within_s,
            double bladeShare,
            double coefficientRise,
            double sameMove_s,
            double before_s) {
        public static final Power DEFAULT = new Power(10, 1, 0.05, 0.15, 1.5, 4);
    }

    /**
     * Tables and averages.
     *
     * @param averageBefore_s how far before a change the averages begin
     * @param averageAfter_s how far after it they end
     * @param averageStep_s from one point to the next
     * @param confidence of every interval
     * @param bootstrap for the bands
     * @param lagSearch_s lags up to this, either way
     * @param lagShifts circular shifts tried
     * @param leastEpisodes fewer episodes' lags are no median to quote
     * @param mapCoefficientStep width of a cell of the map
     * @param mapAirspeedStep_mps height of a cell
     * @param pushOver_deg path angle that counts as pushed over
     * @param trigger_deg path angle that starts the settling time where power is not logged
     * @param settled_s within both tolerances this long is stabilised
     * @param bridge_s excursions out of tolerance up to this long are bridged
     */
    public record Review(
            double averageBefore_s,
            double averageAfter_s,
            double averageStep_s,
            double confidence,
            Bootstrap bootstrap,
            double lagSearch_s,
            int lagShifts,
            int leastEpisodes,
            double mapCoefficientStep,
            double mapAirspeedStep_mps,
            double pushOver_deg,
            double trigger_deg,
            double settled_s,
            double bridge_s) {
        public static final Review DEFAULT =
                new Review(
                        4,
                        6,
                        0.1,
                        0.95,
                        new Bootstrap(20310514L, 400),
                        5,
                        199,
                        5,
                        0.1,
                        1,
                        5,
                        10,
                        5,
                        0.5);
    }
}
