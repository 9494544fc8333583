package pairdown.clock;

import pairdown.track.EvenSeries;

/**
 * One satellite signal as a scaled and shifted recorder signal, plus what the wind makes of it: the
 * recorder moves with the air, the satellite log over the ground.
 */
final class ScaledSignal implements LagFit.Problem {
    /** Scale, constant, then east and north wind, and their change with height. */
    private static final int SCALED = 2;

    /** How strong a wind is usually, and how much it changes with height (m/s, each way). */
    static final double USUAL_WIND_MPS = 10;

    private final SystemsSignals systems;
    private final double[] recorded;
    private final EvenSeries of;
    private final EvenSeries[] perWind;
    private final boolean timesRecorded;

    private ScaledSignal(
            SystemsSignals systems,
            double[] recorded,
            EvenSeries of,
            EvenSeries[] perWind,
            boolean timesRecorded) {
        this.systems = systems;
        this.recorded = recorded;
        this.of = of;
        this.perWind = perWind;
        this.timesRecorded = timesRecorded;
    }

    /** A signal that no wind changes. */
    static ScaledSignal still(SystemsSignals systems, double[] recorded, EvenSeries of) {
        return new ScaledSignal(systems, recorded, of, new EvenSeries[0], false);
    }

    /**
     * The turn of the track over ground. With V over ground and a steady airspeed, track and
     * heading turn as χ̇ = ψ̇(1 − w·V/V²), exactly.
     */
    static ScaledSignal turn(SystemsSignals systems, VehicleSignals vehicle) {
        return new ScaledSignal(
                systems, systems.turn_dps, vehicle.turn_dps, vehicle.windOnTurn(), true);
    }

    /**
     * The load along the path over ground, V·f/|V|; along that through the air it is less w·f/|V|.
     */
    static ScaledSignal thrust(SystemsSignals systems, VehicleSignals vehicle) {
        return new ScaledSignal(
                systems, systems.longitudinal_g, vehicle.thrust_g, vehicle.windOnThrust(), false);
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
        return SCALED + perWind.length;
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
    public double term(int k, int j, double t_s) {
        return switch (j) {
            case 0 -> recorded[k];
            case 1 -> 1;
            default -> factor(k) * perWind[j - SCALED].at(t_s);
        };
    }

    @Override
    public double termSlope(int k, int j, double t_s) {
        return j < SCALED ? 0 : factor(k) * perWind[j - SCALED].slopeAt(t_s);
    }

    @Override
    public double usual(int j) {
        return j < SCALED ? Double.POSITIVE_INFINITY : USUAL_WIND_MPS;
    }

    private double factor(int k) {
        return timesRecorded ? recorded[k] : 1;
    }
}
