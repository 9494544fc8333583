package pairdown.motion;

import java.util.Arrays;
import pairdown.clock.ClockDoubt;

/**
 * What two clocks' errors do to a difference. An error e of one clock moves its body by velocity ×
 * e; so the relative place errs by e·d with d = b·v_flyer − a·v_lead, where a and b (0 or 1) say
 * whose clock the error is in. Errors shared by both (their group's reference, how late all
 * receivers are) move only what changes between the two: the closer the velocities, the less.
 */
final class PairClocks {
    private final Source[] sources;

    private PairClocks(Source[] sources) {
        this.sources = sources;
    }

    /** An independent clock error and whose instants it moves. */
    private record Source(double sigma_s, boolean ofLead, boolean ofFlyer) {
        double rate(double lead, double flyer) {
            return (ofFlyer ? flyer : 0) - (ofLead ? lead : 0);
        }
    }

    static PairClocks of(SmoothedTrajectory lead, SmoothedTrajectory flyer) {
        ClockDoubt l = lead.clock();
        ClockDoubt f = flyer.clock();
        boolean together = l.group() == f.group();
        Source[] all = {
            new Source(l.own_s(), true, false),
            new Source(f.own_s(), false, true),
            new Source(l.group_s(), true, together),
            new Source(together ? 0 : f.group_s(), false, true),
            new Source(Math.min(l.common_s(), f.common_s()), true, true)
        };
        return new PairClocks(Arrays.stream(all).filter(s -> s.sigma_s > 0).toArray(Source[]::new));
    }

    /**
     * Covariance of one axis' error at an instant with another's at an other (or the same) instant,
     * from both bodies' rates of what is compared: velocities for places, accelerations for
     * velocities.
     */
    double covariance(double lead, double flyer, double otherLead, double otherFlyer) {
        double sum = 0;
        for (Source s : sources) {
            sum += s.sigma_s * s.sigma_s * s.rate(lead, flyer) * s.rate(otherLead, otherFlyer);
        }
        return sum;
    }
}
