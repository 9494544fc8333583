package pairdown.demo.physics;

/** A value that follows another with a first-order lag. */
final class Lag {
    private final double time_s;
    private double value;

    Lag(double time_s, double value) {
        this.time_s = time_s;
        this.value = value;
    }

    double step(double wanted, double dt_s) {
        value += (wanted - value) * Math.min(1, dt_s / time_s);
        return value;
    }

    double value() {
        return value;
    }
}
