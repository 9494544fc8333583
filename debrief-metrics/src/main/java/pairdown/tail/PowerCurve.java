package pairdown.tail;

/**
 * What effectiveness and retarding force did about one power change in a dive.
 *
 * @param towardReverse its direction
 * @param effectiveness at the steps of an {@link EventAverage}; NaN where not judged
 * @param whole all retarding force over q·A, idle drag included; NaN where not known
 * @param idleTerms what {@link IdleDrag}'s coefficients are multiplied by at the change
 */
// Curves of the package's own making, handed to a file as they are.
@SuppressWarnings("ArrayRecordComponent")
public record PowerCurve(
        boolean towardReverse, double[] effectiveness, double[] whole, double[] idleTerms) {
    /** Tc′ by an aircraft's drag at idle: the whole less that drag over the disc. */
    double[] coefficient(IdleDrag idle, double disc_m2) {
        double idleShare = idle.area_m2(idleTerms) / disc_m2;
        double[] beyond = whole.clone();
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] -= idleShare;
        }
        return beyond;
    }
}
