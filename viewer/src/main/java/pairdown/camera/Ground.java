package pairdown.camera;

/** How high the ground is, in the attempt's frame. */
@FunctionalInterface
public interface Ground {
    /** Up coordinate of the ground (m) at a place. */
    double up_m(double east_m, double north_m);

    /** A plain at one height. */
    static Ground flat(double up_m) {
        return (east_m, north_m) -> up_m;
    }
}
