package pairdown.demo;

import java.util.Locale;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Participant;
import pairdown.debrief.Debrief;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.time.TimeAxis;

/**
 * A pair's debrief against the truth, from eight seconds after the true exit to three after the
 * true leaving: where a debrief is asked for figures.
 *
 * <p>Times are taken by the lead's own log: how late a receiver tells all its times nobody can see
 * in logs that share no ride with it.
 */
final class PairScore {
    private static final double SETTLED_S = 8;
    private static final double AFTER_S = 3;
    private static final double NEAR_M = 50;

    private double separation2;
    private double separationNees;
    private double separationIn95;
    private double closure2;
    private double closureNees;
    private double closureIn95;
    private long separations;
    private long closures;
    private double nearSeparation2;
    private long nears;

    /** Adds another's. */
    PairScore plus(PairScore o) {
        PairScore sum = new PairScore();
        for (PairScore s : new PairScore[] {this, o}) {
            sum.separation2 += s.separation2;
            sum.separationNees += s.separationNees;
            sum.separationIn95 += s.separationIn95;
            sum.closure2 += s.closure2;
            sum.closureNees += s.closureNees;
            sum.closureIn95 += s.closureIn95;
            sum.separations += s.separations;
            sum.closures += s.closures;
            sum.nearSeparation2 += s.nearSeparation2;
            sum.nears += s.nears;
        }
        return sum;
    }

    static PairScore of(SimulatedAttempt attempt, Debrief debrief, PairDebrief pair) {
        TruePair truth = truth(attempt, pair.flyer());
        double lead_s =
                attempt.faults().stream()
                        .filter(f -> f.participant().equals(pair.lead()))
                        .flatMapToDouble(f -> f.offset_s().stream())
                        .findFirst()
                        .orElse(0);
        double axis_s =
                lead_s + new TimeAxis(attempt.truth().start()).seconds(debrief.axis().epoch());
        double from_s = truth.exit_s() + SETTLED_S;
        double to_s = truth.leaving_s(1.5, 1.0) + AFTER_S;
        PairScore score = new PairScore();
        PairSeries s = pair.series();
        for (int i = 0; i < s.size(); i++) {
            double true_s = s.time_s(i) + axis_s;
            if (true_s >= from_s && true_s <= to_s) {
                score.add(s, i, truth, true_s);
            }
        }
        return score;
    }

    static TruePair truth(SimulatedAttempt attempt, String flyer) {
        Participant lead = attempt.attempt().lead().orElseThrow();
        LeverArm slot =
                attempt.attempt()
                        .participant(flyer)
                        .flatMap(Participant::slot)
                        .map(n -> lead.slots().getOrDefault(n, LeverArm.NONE))
                        .orElse(LeverArm.NONE);
        return new TruePair(attempt.truth(), lead.id(), flyer, slot);
    }

    private void add(PairSeries s, int i, TruePair truth, double true_s) {
        double separation_m = truth.separation_m(true_s);
        double off_m = s.value(Figure.SEPARATION, i) - separation_m;
        double sigma_m = s.value(Figure.SEPARATION_SIGMA, i);
        if (Double.isFinite(off_m / sigma_m)) {
            separation2 += off_m * off_m;
            separationNees += off_m * off_m / (sigma_m * sigma_m);
            separationIn95 += Math.abs(off_m) < 1.96 * sigma_m ? 1 : 0;
            separations++;
            nearSeparation2 += separation_m < NEAR_M ? off_m * off_m : 0;
            nears += separation_m < NEAR_M ? 1 : 0;
        }
        double off_mps = s.value(Figure.CLOSURE_RATE, i) - truth.closure_mps(true_s);
        double sigma_mps = s.value(Figure.CLOSURE_SIGMA, i);
        if (Double.isFinite(off_mps / sigma_mps)) {
            closure2 += off_mps * off_mps;
            closureNees += off_mps * off_mps / (sigma_mps * sigma_mps);
            closureIn95 += Math.abs(off_mps) < 1.96 * sigma_mps ? 1 : 0;
            closures++;
        }
    }

    double separationRms_m() {
        return Math.sqrt(separation2 / separations);
    }

    double nearSeparationRms_m() {
        return Math.sqrt(nearSeparation2 / nears);
    }

    /** Root of the mean squared error over its sigma squared: 1 where sigmas are honest. */
    double separationRatio() {
        return Math.sqrt(separationNees / separations);
    }

    double closureRms_mps() {
        return Math.sqrt(closure2 / closures);
    }

    double closureRatio() {
        return Math.sqrt(closureNees / closures);
    }

    double separationInside() {
        return separationIn95 / separations;
    }

    double closureInside() {
        return closureIn95 / closures;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%6d rows  separation RMS %.2f m (under 50 m %.2f), over sigma %.2f, within 1.96"
                        + " sigma %.0f %%;  closure RMS %.3f m/s, over sigma %.2f, within %.0f %%",
                separations,
                separationRms_m(),
                nearSeparationRms_m(),
                separationRatio(),
                100 * separationInside(),
                closureRms_mps(),
                closureRatio(),
                100 * closureInside());
    }
}
