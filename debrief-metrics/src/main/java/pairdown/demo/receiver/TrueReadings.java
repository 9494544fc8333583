package pairdown.demo.receiver;

import java.util.Objects;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.track.Channel;

/** True values of a body's systems at any time, linear between rows. */
final class TrueReadings {
    private final TrueBody body;

    TrueReadings(TrueBody body) {
        this.body = body;
    }

    /** A channel's true value; that of the nearest row outside the truth's span. */
    double at(Channel channel, double time_s) {
        double[] rows = Objects.requireNonNull(body.systems().get(channel), channel::key);
        return at(rows, channel, time_s);
    }

    /** The same of rows like the body's. */
    double at(double[] rows, Channel channel, double time_s) {
        TrueMotion motion = body.motion();
        double x = (time_s - motion.start_s()) / motion.step_s();
        int i = (int) Math.max(0, Math.min(rows.length - 2, Math.floor(x)));
        double u = Math.max(0, Math.min(1, x - i));
        double step = rows[i + 1] - rows[i];
        if (channel.isCircular()) {
            step -= 360 * Math.rint(step / 360);
            double turned = (rows[i] + u * step) % 360;
            return turned < 0 ? turned + 360 : turned;
        }
        return rows[i] + u * step;
    }

    /** A channel's rows as an instrument with a first-order lag shows them. */
    double[] lagged(Channel channel, double lag_s) {
        double[] rows = Objects.requireNonNull(body.systems().get(channel), channel::key);
        if (!(lag_s > 0)) {
            return rows;
        }
        double keep = StrictMath.exp(-body.motion().step_s() / lag_s);
        double[] shown = rows.clone();
        for (int i = 1; i < rows.length; i++) {
            shown[i] = keep * shown[i - 1] + (1 - keep) * (rows[i - 1] + rows[i]) / 2;
        }
        return shown;
    }
}
