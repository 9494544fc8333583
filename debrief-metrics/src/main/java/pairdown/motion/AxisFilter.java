package pairdown.motion;

/**
 * The forward filter of one axis. State: position p (m), velocity v (m/s), acceleration a (m/s²)
 * and receiver bias b (m). Motion: white jerk of density q; bias: first-order Gauss–Markov. A
 * position measurement sees p + l·v + b, where l is minus the receiver's latency; a velocity
 * measurement sees v.
 *
 * <p>The covariance's upper triangle is kept in ten fields and every update is scalar, so nothing
 * is allocated. Source: A. Gelb (ed.), Applied Optimal Estimation (1974), section 4.2; process
 * noise of the white-jerk model: Y. Bar-Shalom et al., Estimation with Applications to Tracking and
 * Navigation (2001), section 6.2.3 one order higher.
 */
public final class AxisFilter {
    /** Values a saved state takes: the state and the covariance's upper triangle by rows. */
    static final int SAVED = 14;

    private final double biasVariance_m2;
    private final double biasRate_ps;
    private final double lag_s;

    double p;
    double v;
    double a;
    double b;
    double pp;
    double pv;
    double pa;
    double pb;
    double vv;
    double va;
    double vb;
    double aa;
    double ab;
    double bb;

    private double lastDt_s = Double.NaN;
    private double decay;

    /**
     * @param bias_m one standard deviation of the bias
     * @param biasTime_s its time constant
     * @param lag_s coefficient l of velocity in a position measurement
     */
    public AxisFilter(double bias_m, double biasTime_s, double lag_s) {
        this.biasVariance_m2 = bias_m * bias_m;
        this.biasRate_ps = 1 / biasTime_s;
        this.lag_s = lag_s;
    }

    /** Starts anywhere: at a position and velocity with wide sigmas, the bias at its own spread. */
    public void start(double p0, double pSigma, double v0, double vSigma, double aSigma) {
        p = p0;
        v = v0;
        a = 0;
        b = 0;
        pp = pSigma * pSigma;
        vv = vSigma * vSigma;
        aa = aSigma * aSigma;
        bb = biasVariance_m2;
        pv = 0;
        pa = 0;
        pb = 0;
        va = 0;
        vb = 0;
        ab = 0;
    }

    /** Share of the bias that is left after {@code dt_s}. */
    double biasDecay(double dt_s) {
        if (dt_s != lastDt_s) {
            lastDt_s = dt_s;
            decay = Math.exp(-dt_s * biasRate_ps);
        }
        return decay;
    }

    /** Carries the state over {@code dt_s} with jerk density {@code q}. */
    public void predict(double dt, double q) {
        double f = biasDecay(dt);
        double h = 0.5 * dt * dt;
        p += dt * v + h * a;
        v += dt * a;
        b *= f;
        double m00 = pp + dt * pv + h * pa;
        double m01 = pv + dt * vv + h * va;
        double m02 = pa + dt * va + h * aa;
        double m03 = pb + dt * vb + h * ab;
        double m11 = vv + dt * va;
        double m12 = va + dt * aa;
        double m13 = vb + dt * ab;
        double q2 = q * dt;
        double q12 = q2 * dt / 2;
        double q02 = q2 * dt * dt / 6;
        pp = m00 + dt * m01 + h * m02 + q02 * dt * dt * 0.3;
        pv = m01 + dt * m02 + q02 * dt * 0.75;
        pa = m02 + q02;
        pb = f * m03;
        vv = m11 + dt * m12 + q02 * 2;
        va = m12 + q12;
        vb = f * m13;
        aa += q2;
        ab *= f;
        bb = f * f * bb + biasVariance_m2 * (1 - f * f);
    }

    /** Position measured minus expected. */
    public double positionInnovation(double z) {
        return z - p - lag_s * v - b;
    }

    /** Variance of the expected position measurement, its own noise left out. */
    public double positionVariance() {
        double l = lag_s;
        return pp + bb + 2 * pb + l * (2 * pv + 2 * vb + l * vv);
    }

    public double velocityInnovation(double z) {
        return z - v;
    }

    public double velocityVariance() {
        return vv;
    }

    /** Takes a position with noise variance {@code r}. */
    public void updatePosition(double z, double r) {
        double l = lag_s;
        double h0 = pp + l * pv + pb;
        double h1 = pv + l * vv + vb;
        double h2 = pa + l * va + ab;
        double h3 = pb + l * vb + bb;
        absorb(positionInnovation(z), h0 + l * h1 + h3 + r, h0, h1, h2, h3);
    }

    /** Takes a velocity with noise variance {@code r}. */
    public void updateVelocity(double z, double r) {
        absorb(z - v, vv + r, pv, vv, va, vb);
    }

    private void absorb(double nu, double s, double h0, double h1, double h2, double h3) {
        double i = 1 / s;
        double g = nu * i;
        p += h0 * g;
        v += h1 * g;
        a += h2 * g;
        b += h3 * g;
        double k0 = h0 * i;
        double k1 = h1 * i;
        double k2 = h2 * i;
        pp -= k0 * h0;
        pv -= k0 * h1;
        pa -= k0 * h2;
        pb -= k0 * h3;
        vv -= k1 * h1;
        va -= k1 * h2;
        vb -= k1 * h3;
        aa -= k2 * h2;
        ab -= k2 * h3;
        bb -= h3 * i * h3;
    }

    /** Lets the bias step: what the receiver said before no longer binds it. */
    public void loosenBias(double extraVariance_m2) {
        bb += extraVariance_m2;
    }

    /**
     * Lets velocity and acceleration step, as when a body leaves another.
     *
     * @param velocityVariance_m2ps2 of a push of unknown direction
     * @param acceleration_mps2 what the acceleration steps by
     * @param accelerationVariance_m2ps4 how well that is known
     */
    public void step(
            double velocityVariance_m2ps2,
            double acceleration_mps2,
            double accelerationVariance_m2ps4) {
        vv += velocityVariance_m2ps2;
        a += acceleration_mps2;
        aa += accelerationVariance_m2ps4;
    }

    /** Lets the acceleration fade to a share of itself, as drag takes over. */
    public void fade(double share) {
        a *= share;
        pa *= share;
        va *= share;
        ab *= share;
        aa *= share * share;
    }

    /** The same filter in the same state, apart from this one. */
    public AxisFilter copy() {
        AxisFilter other = new AxisFilter(Math.sqrt(biasVariance_m2), 1 / biasRate_ps, lag_s);
        double[] saved = new double[SAVED];
        save(saved, 0);
        other.p = p;
        other.v = v;
        other.a = a;
        other.b = b;
        other.loadCovariance(saved, SAVED - 10);
        return other;
    }

    void save(double[] into, int at) {
        into[at] = p;
        into[at + 1] = v;
        into[at + 2] = a;
        into[at + 3] = b;
        into[at + 4] = pp;
        into[at + 5] = pv;
        into[at + 6] = pa;
        into[at + 7] = pb;
        into[at + 8] = vv;
        into[at + 9] = va;
        into[at + 10] = vb;
        into[at + 11] = aa;
        into[at + 12] = ab;
        into[at + 13] = bb;
    }

    /** Restores a covariance saved as floats; the state is left as it is. */
    void loadCovariance(float[] from, int at) {
        pp = from[at];
        pv = from[at + 1];
        pa = from[at + 2];
        pb = from[at + 3];
        vv = from[at + 4];
        va = from[at + 5];
        vb = from[at + 6];
        aa = from[at + 7];
        ab = from[at + 8];
        bb = from[at + 9];
    }

    void loadCovariance(double[] from, int at) {
        pp = from[at];
        pv = from[at + 1];
        pa = from[at + 2];
        pb = from[at + 3];
        vv = from[at + 4];
        va = from[at + 5];
        vb = from[at + 6];
        aa = from[at + 7];
        ab = from[at + 8];
        bb = from[at + 9];
    }
}
