package pairdown.clock;

/**
 * Ground velocity as airspeed along the heading, turned and scaled by a constant (declination,
 * instrument), plus a wind that changes with height along a parabola: with a straight line, a wind
 * that veers looks like a heading that is off on straight legs, and that like a lag. Points come in
 * pairs: all east components, then all north ones.
 */
record HeadingSignal(SystemsSignals systems, VehicleSignals vehicle) implements LagFit.Problem {
    /** A heading and airspeed are level flight's; steeper than this they are left out (m/s). */
    private static final double LEVEL_MPS = 8;

    /** The first of the two terms that change the wind evenly with height … */
    private static final int CHANGE = 4;

    /** … and of those that bend that line, and how much it is bent usually (m/s, each way). */
    private static final int BEND = 6;

    private static final double USUAL_BEND_MPS = 3;

    /** Stands for an airspeed that was not logged: the scale is fitted. */
    private static final double USUAL_MPS = 50;

    /** Length of the mean heading vector below which the aircraft flew round: 1 is straight. */
    private static final double SPREAD = 0.6;

    /**
     * Whether headings are spread enough to tell a wind from a turn: on few headings a wind that
     * changes with height looks like a lag.
     */
    static boolean turns(SystemsSignals systems) {
        double sin = 0;
        double cos = 0;
        int n = 0;
        for (int k = 0; k < systems.size; k++) {
            if (!Double.isNaN(systems.headingSin[k] + systems.headingCos[k])) {
                sin += systems.headingSin[k];
                cos += systems.headingCos[k];
                n++;
            }
        }
        return n > 0 && Math.hypot(sin, cos) / n < SPREAD;
    }

    /** How far a compass is turned against the track, by a fit of this signal (degrees). */
    static double turned_deg(LagFit.Fit fit) {
        return Math.toDegrees(Math.atan2(fit.factors().get(1), fit.factors().get(0)));
    }

    @Override
    public int size() {
        return 2 * systems.size;
    }

    @Override
    public double time_s(int k) {
        return systems.time_s(k % systems.size);
    }

    @Override
    public double middle_s() {
        return systems.middle_s();
    }

    @Override
    public int terms() {
        return 8;
    }

    private boolean isEast(int k) {
        return k < systems.size;
    }

    @Override
    public double signal(int k, double t_s) {
        boolean level = Math.abs(vehicle.velocity[2].at(t_s)) < LEVEL_MPS;
        double e = vehicle.velocity[0].at(t_s);
        double n = vehicle.velocity[1].at(t_s);
        boolean moving = Math.hypot(e, n) > VehicleSignals.MOVING_MPS;
        return level && moving ? isEast(k) ? e : n : Double.NaN;
    }

    @Override
    public double slope(int k, double t_s) {
        return vehicle.velocity[isEast(k) ? 0 : 1].slopeAt(t_s);
    }

    @Override
    public double term(int k, int j, double t_s) {
        int i = k % systems.size;
        double v = systems.hasAirspeed ? systems.airspeed_mps[i] : USUAL_MPS;
        double east = v * systems.headingSin[i];
        double north = v * systems.headingCos[i];
        double height = vehicle.height.at(t_s);
        return switch (j) {
            case 0 -> isEast(k) ? east : north;
            case 1 -> isEast(k) ? north : -east;
            case 2 -> isEast(k) ? 1 : 0;
            case 3 -> isEast(k) ? 0 : 1;
            case 4 -> isEast(k) ? height : 0;
            case 5 -> isEast(k) ? 0 : height;
            case BEND -> isEast(k) ? height * height : 0;
            default -> isEast(k) ? 0 : height * height;
        };
    }

    @Override
    public double termSlope(int k, int j, double t_s) {
        boolean rises = j >= CHANGE && isEast(k) == (j % 2 == 0);
        double bent = j < BEND ? 1 : 2 * vehicle.height.at(t_s);
        return rises ? bent * vehicle.height.slopeAt(t_s) : 0;
    }

    @Override
    public double usual(int j) {
        if (j < CHANGE) {
            return Double.POSITIVE_INFINITY;
        }
        return j < BEND ? ScaledSignal.USUAL_WIND_MPS : USUAL_BEND_MPS;
    }
}
