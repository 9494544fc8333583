package pairdown.demo.truth;

/**
 * The lead's tail as it truly was, a value a row of the lead's motion.
 *
 * @param coefficient braking coefficient Tc′ at the disc, all retarding thrust over q·A
 * @param elevator dynamic pressure at the elevator over that of the flight
 * @param rudder the same at the rudder
 * @param diving whether the lead was in its planned dive
 */
// Columns handed out as they are: copies would cost more than they guard in tests and demos.
@SuppressWarnings("ArrayRecordComponent")
public record TrueTail(
        double[] coefficient, double[] elevator, double[] rudder, boolean[] diving) {}
