package pairdown.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Time to an event where some never showed it: the product-limit curve with its variance.
 *
 * <p>Sources: E. L. Kaplan and P. Meier, JASA 53 (1958) 457–481; M. Greenwood's formula for the
 * variance; intervals on the log(−log) scale, which stay between 0 and 1 (J. D. Kalbfleisch and R.
 * L. Prentice, The Statistical Analysis of Failure Time Data). At equal times an event counts
 * before a case lost from view.
 */
public final class Survival {
    private final int cases;
    private final double longest_s;
    private final List<Step> steps;

    private Survival(int cases, double longest_s, List<Step> steps) {
        this.cases = cases;
        this.longest_s = longest_s;
        this.steps = List.copyOf(steps);
    }

    /**
     * One case.
     *
     * @param time_s when the event came, or how long the case was watched without it
     * @param happened whether the event came
     */
    public record Case(double time_s, boolean happened) {
        public Case {
            if (!(time_s >= 0)) {
                throw new IllegalArgumentException("a time is at least 0, not " + time_s);
            }
        }
    }

    /**
     * The curve just after an event time.
     *
     * @param time_s the event time
     * @param atRisk cases still watched just before it
     * @param events how many events came at it
     * @param surviving the share estimated to last beyond it
     * @param sigma one standard deviation of that (Greenwood)
     */
    public record Step(double time_s, int atRisk, int events, double surviving, double sigma) {}

    /** The curve of a set of cases; with none it has no steps and stays at 1. */
    public static Survival of(List<Case> cases) {
        List<Case> sorted = new ArrayList<>(cases);
        sorted.sort(Comparator.comparingDouble(Case::time_s));
        List<Step> steps = new ArrayList<>();
        double surviving = 1;
        double greenwood = 0;
        int i = 0;
        while (i < sorted.size()) {
            double t_s = sorted.get(i).time_s();
            int atRisk = sorted.size() - i;
            int events = 0;
            for (; i < sorted.size() && sorted.get(i).time_s() == t_s; i++) {
                events += sorted.get(i).happened() ? 1 : 0;
            }
            if (events == 0) {
                continue;
            }
            surviving *= 1 - (double) events / atRisk;
            greenwood += events == atRisk ? 0 : events / (atRisk * (double) (atRisk - events));
            steps.add(new Step(t_s, atRisk, events, surviving, surviving * Math.sqrt(greenwood)));
        }
        double longest_s = sorted.isEmpty() ? 0 : sorted.get(sorted.size() - 1).time_s();
        return new Survival(sorted.size(), longest_s, steps);
    }

    /** Cases from times and whether the event came, in step. */
    public static Survival of(double[] time_s, boolean[] happened) {
        if (time_s.length != happened.length) {
            throw new IllegalArgumentException(
                    time_s.length + " times for " + happened.length + " outcomes");
        }
        Case[] cases = new Case[time_s.length];
        Arrays.setAll(cases, i -> new Case(time_s[i], happened[i]));
        return of(List.of(cases));
    }

    public int cases() {
        return cases;
    }

    /** The longest time any case was watched: beyond it nothing is known; 0 without cases. */
    public double longest_s() {
        return longest_s;
    }

    public int events() {
        return steps.stream().mapToInt(Step::events).sum();
    }

    /** One step an event time, rising. */
    public List<Step> steps() {
        return steps;
    }

    /** The share estimated to last beyond {@code time_s}. */
    public double surviving(double time_s) {
        double surviving = 1;
        for (Step step : steps) {
            if (step.time_s() > time_s) {
                break;
            }
            surviving = step.surviving();
        }
        return surviving;
    }

    /**
     * The first time by which at least {@code share} of the cases are estimated to have had the
     * event: 0.5 for the median. Absent where the curve never falls so far.
     */
    public OptionalDouble quantile(double share) {
        // Half a rounding error of slack, so that a curve which is 0.5 on paper counts as 0.5.
        double wanted = 1 - share + 1e-12;
        return steps.stream()
                .filter(s -> s.surviving() <= wanted)
                .mapToDouble(Step::time_s)
                .findFirst();
    }

    /**
     * The interval of a step's surviving share on the log(−log) scale; 0 to 1 where all have had
     * the event, for which the formula says nothing.
     *
     * @throws IllegalArgumentException unless 0 &lt; confidence &lt; 1
     */
    public static Interval interval(Step step, double confidence) {
        double z =
                -new NormalDistribution().inverseCumulativeProbability(Interval.tail(confidence));
        double s = step.surviving();
        if (!(s > 0 && s < 1)) {
            return new Interval(0, 1, confidence);
        }
        double spread = z * step.sigma() / (s * Math.abs(Math.log(s)));
        return new Interval(
                Math.pow(s, Math.exp(spread)), Math.pow(s, Math.exp(-spread)), confidence);
    }
}
