package pairdown.pair;

/**
 * The thresholds that pair figures are judged by. What a team sets for itself (tolerances, gate,
 * limits) is in the attempt; what is here is fixed by the definitions of the results or by what
 * receivers can tell.
 *
 * @param rows_Hz least rate of a pair's series
 * @param hole_s longer than this between two fixes and nothing is measured there; the allowance of
 *     5 % is for loggers whose second is not quite one
 * @param blankBelowSigmas a range under this many of its sigmas has no direction: no closure rate
 * @param logged_deg one standard deviation per axis of a logged attitude (common practice, no
 *     published source)
 * @param assumed_deg the same for an attitude laid level along the motion: sideslip and bank
 *     (common practice, no published source)
 * @param horizon_s a miss is not predicted further ahead, nor a closing rate judged that the ship
 *     gave a flyer who is not there yet by then
 * @param unforeseen_mps2 one standard deviation of the acceleration nobody foresees
 * @param holding_mps slower than this against each other two bodies hold, and there is no miss
 * @param over_mps a closing limit counts as passed only by more than this …
 * @param overSigmas … and by this many sigmas of the closure rate …
 * @param overFor_s … for this long
 * @param breakOff_mps separation opening faster than this after the last match is a break-off
 * @param breakOffFor_s for at least this long, so that noise is none
 * @param bearingLine_deg where a formation's line lies, from the lead's nose (common practice, no
 *     published source: 45° off the tail)
 * @param settled_s a flyer that never matched has its closest approach, and any its closing rate
 *     judged, from this long after its exit: until then it has the ship's speed
 */
public record PairSettings(
        double rows_Hz,
        double hole_s,
        double blankBelowSigmas,
        double logged_deg,
        double assumed_deg,
        double horizon_s,
        double unforeseen_mps2,
        double holding_mps,
        double over_mps,
        double overSigmas,
        double overFor_s,
        double breakOff_mps,
        double breakOffFor_s,
        double bearingLine_deg,
        double settled_s,
        Match match,
        Grades grades,
        Contact touch) {

    public static final PairSettings DEFAULT =
            new PairSettings(
                    10,
                    1.05,
                    3,
                    2,
                    5,
                    5,
                    1,
                    0.3,
                    0.3,
                    2,
                    0.5,
                    3,
                    0.3,
                    135,
                    8,
                    Match.DEFAULT,
                    Grades.DEFAULT,
                    Contact.DEFAULT);

    /**
     * How matched windows begin and end.
     *
     * @param leaveFactor a window ends at this multiple of a tolerance
     * @param bridge_s excursions and missing data up to this long are bridged
     * @param smoothing_s rates are averaged over this, centred; at most 1 s by definition
     * @param turn_s the lead's turn rate is averaged over this, centred
     * @param leastSigmas a tolerance under this many sigmas of the data is refused
     */
    public record Match(
            double leaveFactor,
            double bridge_s,
            double smoothing_s,
            double turn_s,
            double leastSigmas) {
        public static final Match DEFAULT = new Match(1.5, 0.5, 0.9, 2, 3);
    }

    /**
     * What logs of each grade may be asked (common practice, no published source).
     *
     * @param slowest_Hz slower than one fix a second, less jitter, nothing of a pair can be told
     * @param fast_Hz from here on, five fixes a second less jitter, all may be asked
     * @param slowDwell_s least dwell of a match under that rate
     * @param slowGate_m least gate that is judged under it with the receivers' velocities …
     * @param positionOnlyGate_m … and with positions alone
     * @param positionOnlyLimit_m with positions alone under it, no closing limit is judged nearer
     *     than this
     * @param slowTolerances two are slow against each other up to this multiple of the tolerances:
     *     there it is asked whether the tolerances are too fine
     */
    public record Grades(
            double slowest_Hz,
            double fast_Hz,
            double slowDwell_s,
            double slowGate_m,
            double positionOnlyGate_m,
            double positionOnlyLimit_m,
            double slowTolerances) {
        public static final Grades DEFAULT = new Grades(0.95, 4.5, 4, 8, 15, 50, 3);
    }

    /**
     * When something speaks for a touch.
     *
     * @param reach_m one standard deviation per axis of where on the slot a flyer's logger is
     * @param consistent squared distance in sigmas from the slot: 95 % of three degrees of freedom
     * @param contradicted the same at 99.9 %: beyond it a velocity lock is no touch
     * @param positionFor_s a position alone must hold this long
     * @param lockWindow_s the relative velocity's mean square is taken over this
     * @param lockFactor it must stay under this multiple of the noise expected
     * @param releaseFactor a lock once found lasts while it stays under this: with a window of some
     *     ten independent values the mean square of mere noise wanders by a fifth
     * @param lock_Hz slowest log that shows a velocity lock; five fixes a second, less jitter
     * @param jolt_Hz slowest systems log that shows a jolt in the roll rate: two rows within the
     *     time of a step
     * @param load_Hz slowest one that shows it in the loads
     * @param blow_Hz slowest flyer's log that shows the blow of hand on metal
     * @param blow_g least change of the flyer's load that is one
     * @param rollStep_dps least step of the roll rate
     * @param rollStepSigmas … and this multiple of its scatter over the seconds before; the same
     *     for loads
     * @param rollAloneSigmas the multiple where the roll rate is all that speaks for a touch
     * @param stepWithin_s … within this time
     * @param quiet_s the scatter is taken over this time before
     * @param loadStep_g least step of the side or normal load
     * @param trim_pct least lasting change of the mean aileron or rudder
     * @param trimSigmas … and this multiple of the scatter of such means before
     * @param trimFor_s … lasting this long
     * @param trimBefore_s the level and scatter before are taken over this
     * @param trimAround_s the usual level is taken over this before and after
     */
    public record Contact(
            double reach_m,
            double consistent,
            double contradicted,
            double positionFor_s,
            double lockWindow_s,
            double lockFactor,
            double releaseFactor,
            double lock_Hz,
            double jolt_Hz,
            double load_Hz,
            double blow_Hz,
            double blow_g,
            double rollStep_dps,
            double rollStepSigmas,
            double rollAloneSigmas,
            double stepWithin_s,
            double quiet_s,
            double loadStep_g,
            double trim_pct,
            double trimSigmas,
            double trimFor_s,
            double trimBefore_s,
            double trimAround_s) {
        public static final Contact DEFAULT =
                new Contact(
                        0.5, 7.8, 16.3, 1, 2, 1.3, 1.7, 4.5, 6.7, 9.5, 24, 0.3, 1.5, 3, 4.5, 0.3, 5,
                        0.1, 3, 4, 2, 20, 40);
    }
}
