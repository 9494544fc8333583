package pairdown.clock;

import pairdown.track.EvenSeries;

/** One satellite signal as a scaled and shifted recorder signal. */
final class ScaledSignal implements LagFit.Problem {
    private final SystemsSignals systems;
    private final double[] recorded;
    private final EvenSeries of;

    ScaledSignal(SystemsSignals systems, double[] recorded, EvenSeries of) {
        this.systems = systems;
        this.recorded = recorded;
        this.of = of;
    }

    @Override
    public int size() {
        return systems.size;
    }

    @Override
    public double time_s(int k) {
        return systems.time_s(k);
    }

    @Override
    public double middle_s() {
        return systems.middle_s();
    }

    @Override
    public int terms() {
        return 2;
    }

    @Override
    public double signal(int k, double t_s) {
        return of.at(t_s);
    }

    @Override
    public double slope(int k, double t_s) {
        return of.slopeAt(t_s);
    }

    @Override
    public double term(int k, int j) {
        return j == 0 ? recorded[k] : 1;
    }
}
