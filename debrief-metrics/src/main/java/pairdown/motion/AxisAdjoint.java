package pairdown.motion;

/**
 * The backward half of the fixed-interval smoother of one axis, after Bryson and Frazier: an
 * adjoint vector λ and matrix Λ that collect what later measurements say, so that
 *
 * <pre>
 * smoothed state      = x − P λ
 * smoothed covariance = P − P Λ P
 * </pre>
 *
 * with x and P filtered to the same instant. No covariance is ever inverted. Source: G. J. Bierman,
 * "Fixed interval smoothing with discrete measurements", Int. J. Control 18 (1973) 65–75, written
 * here with the filtered (not the predicted) covariance: K = P⁺HᵀR⁻¹ and S⁻¹ν = R⁻¹(z − Hx⁺). A
 * missing measurement has an infinite variance.
 */
final class AxisAdjoint {
    private final double lag_s;

    double l0;
    double l1;
    double l2;
    double l3;
    double m00;
    double m01;
    double m02;
    double m03;
    double m11;
    double m12;
    double m13;
    double m22;
    double m23;
    double m33;

    AxisAdjoint(double lag_s) {
        this.lag_s = lag_s;
    }

    /**
     * Passes the measurements of one epoch backwards.
     *
     * @param saved state and covariance after both, as {@link AxisFilter#save} wrote them
     * @param zp position, with {@code ip} the inverse of its variance, 0 where there is none
     * @param zv velocity, with {@code iv} the inverse of its variance, 0 where there is none
     */
    void measurement(double[] saved, int at, double zp, double ip, double zv, double iv) {
        double l = lag_s;
        double pv = saved[at + 5];
        double vv = saved[at + 8];
        double vb = saved[at + 10];
        double kp0 = (saved[at + 4] + l * pv + saved[at + 7]) * ip;
        double kp1 = (pv + l * vv + vb) * ip;
        double kp2 = (saved[at + 6] + l * saved[at + 9] + saved[at + 12]) * ip;
        double kp3 = (saved[at + 7] + l * vb + saved[at + 13]) * ip;
        double kv0 = pv * iv;
        double kv1 = vv * iv;
        double kv2 = saved[at + 9] * iv;
        double kv3 = vb * iv;

        double ep = ip == 0 ? 0 : (zp - saved[at] - l * saved[at + 1] - saved[at + 3]) * ip;
        double ev = iv == 0 ? 0 : (zv - saved[at + 1]) * iv;
        double gp = kp0 * l0 + kp1 * l1 + kp2 * l2 + kp3 * l3 + ep;
        double gv = kv0 * l0 + kv1 * l1 + kv2 * l2 + kv3 * l3 + ev;
        l0 -= gp;
        l1 -= l * gp + gv;
        l3 -= gp;

        double u0 = m00 * kp0 + m01 * kp1 + m02 * kp2 + m03 * kp3;
        double u1 = m01 * kp0 + m11 * kp1 + m12 * kp2 + m13 * kp3;
        double u2 = m02 * kp0 + m12 * kp1 + m22 * kp2 + m23 * kp3;
        double u3 = m03 * kp0 + m13 * kp1 + m23 * kp2 + m33 * kp3;
        double w0 = m00 * kv0 + m01 * kv1 + m02 * kv2 + m03 * kv3;
        double w1 = m01 * kv0 + m11 * kv1 + m12 * kv2 + m13 * kv3;
        double w2 = m02 * kv0 + m12 * kv1 + m22 * kv2 + m23 * kv3;
        double w3 = m03 * kv0 + m13 * kv1 + m23 * kv2 + m33 * kv3;
        double cpp = kp0 * u0 + kp1 * u1 + kp2 * u2 + kp3 * u3;
        double cpv = kp0 * w0 + kp1 * w1 + kp2 * w2 + kp3 * w3;
        double cvv = kv0 * w0 + kv1 * w1 + kv2 * w2 + kv3 * w3;
        cpp += (1 - kp0 - l * kp1 - kp3) * ip;
        cpv -= (kv0 + l * kv1 + kv3) * ip;
        cvv += (1 - kv1) * iv;

        m00 += cpp - 2 * u0;
        m01 += l * cpp + cpv - l * u0 - u1 - w0;
        m02 -= u2;
        m03 += cpp - u0 - u3;
        m11 += l * (l * cpp + 2 * cpv) + cvv - 2 * (l * u1 + w1);
        m12 -= l * u2 + w2;
        m13 += l * cpp + cpv - u1 - l * u3 - w3;
        m23 -= u2;
        m33 += cpp - 2 * u3;
    }

    /** Carries λ and Λ back over {@code dt}, in which the bias keeps the share {@code f}. */
    void back(double dt, double f) {
        double h = 0.5 * dt * dt;
        l2 += h * l0 + dt * l1;
        l1 += dt * l0;
        l3 *= f;
        double n01 = dt * m00 + m01;
        double n02 = h * m00 + dt * m01 + m02;
        double n11 = dt * m01 + m11;
        double n12 = h * m01 + dt * m11 + m12;
        double n22 = h * m02 + dt * m12 + m22;
        m22 = h * n02 + dt * n12 + n22;
        m12 = dt * n02 + n12;
        m11 = dt * n01 + n11;
        m02 = n02;
        m01 = n01;
        m23 = f * (h * m03 + dt * m13 + m23);
        m13 = f * (dt * m03 + m13);
        m03 *= f;
        m33 *= f * f;
    }

    void saveMatrix(float[] into, int at) {
        into[at] = (float) m00;
        into[at + 1] = (float) m01;
        into[at + 2] = (float) m02;
        into[at + 3] = (float) m03;
        into[at + 4] = (float) m11;
        into[at + 5] = (float) m12;
        into[at + 6] = (float) m13;
        into[at + 7] = (float) m22;
        into[at + 8] = (float) m23;
        into[at + 9] = (float) m33;
    }

    void loadMatrix(float[] from, int at) {
        m00 = from[at];
        m01 = from[at + 1];
        m02 = from[at + 2];
        m03 = from[at + 3];
        m11 = from[at + 4];
        m12 = from[at + 5];
        m13 = from[at + 6];
        m22 = from[at + 7];
        m23 = from[at + 8];
        m33 = from[at + 9];
    }

    void loadMatrix(double[] from, int at) {
        m00 = from[at];
        m01 = from[at + 1];
        m02 = from[at + 2];
        m03 = from[at + 3];
        m11 = from[at + 4];
        m12 = from[at + 5];
        m13 = from[at + 6];
        m22 = from[at + 7];
        m23 = from[at + 8];
        m33 = from[at + 9];
    }

    void saveMatrix(double[] into, int at) {
        into[at] = m00;
        into[at + 1] = m01;
        into[at + 2] = m02;
        into[at + 3] = m03;
        into[at + 4] = m11;
        into[at + 5] = m12;
        into[at + 6] = m13;
        into[at + 7] = m22;
        into[at + 8] = m23;
        into[at + 9] = m33;
    }
}
