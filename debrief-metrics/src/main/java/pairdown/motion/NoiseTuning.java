package pairdown.motion;

import pairdown.motion.NoiseScale.Group;
import pairdown.motion.NoiseScale.Part;

/**
 * Finds the noise under which a log's own innovations are most likely, so that their squares come
 * out as they should: maximum likelihood over the factors of {@link NoiseScale}, one at a time by
 * parabola, level and vertical in the same pass. A weak prior holds what a log cannot tell.
 */
final class NoiseTuning {
    /** Steps of ln(factor), coarse to fine. */
    private static final double[] STEPS = {Math.log(4), Math.log(2), Math.log(1.4)};

    /** Spread of ln(factor) before looking at the log: a factor of three in sigma. */
    private static final double PRIOR = 2 * Math.log(3);

    private final ForwardPass pass;
    private final double least;
    private final double leastNoise;
    private final double most;

    NoiseTuning(ForwardPass pass, SmootherSettings settings) {
        this.pass = pass;
        this.least = settings.smallestScale() * settings.smallestScale();
        double smallest =
                pass.medianStep_s() > settings.coarseStep_s()
                        ? settings.smallestCoarseScale()
                        : settings.smallestScale();
        this.leastNoise = smallest * smallest;
        this.most = settings.largestScale() * settings.largestScale();
    }

    /** A point of the search with its score, by direction. */
    private record Scored(Group group, double score) {}

    NoiseScale tune(int sweeps) {
        Scored[] best = run(NoiseScale.NONE.level(), NoiseScale.NONE.vertical());
        for (int sweep = 0; sweep < Math.min(sweeps, STEPS.length); sweep++) {
            for (Part part : Part.values()) {
                best = improved(best, part, STEPS[sweep]);
            }
        }
        return new NoiseScale(best[0].group(), best[1].group());
    }

    private Scored[] run(Group level, Group vertical) {
        pass.run(new NoiseScale(level, vertical));
        return new Scored[] {scored(level, 0), scored(vertical, 1)};
    }

    private Scored scored(Group group, int direction) {
        double score = pass.logLikelihood(direction);
        for (Part part : Part.values()) {
            double x = Math.log(group.get(part)) / PRIOR;
            score -= 0.5 * x * x;
        }
        return new Scored(group, score);
    }

    private Scored[] improved(Scored[] at, Part part, double h) {
        Scored[] down = run(moved(at[0], part, -h), moved(at[1], part, -h));
        Scored[] up = run(moved(at[0], part, h), moved(at[1], part, h));
        Scored[] vertex =
                run(
                        moved(at[0], part, vertex(down[0], at[0], up[0], h)),
                        moved(at[1], part, vertex(down[1], at[1], up[1], h)));
        Scored[] best = at.clone();
        for (Scored[] candidate : new Scored[][] {down, up, vertex}) {
            for (int i = 0; i < best.length; i++) {
                if (candidate[i].score() > best[i].score()) {
                    best[i] = candidate[i];
                }
            }
        }
        return best;
    }

    private Group moved(Scored from, Part part, double by) {
        double factor = from.group().get(part) * Math.exp(by);
        double floor = part == Part.JERK ? least : leastNoise;
        return from.group().with(part, Math.max(floor, Math.min(most, factor)));
    }

    /** Where the parabola through three points at −h, 0, h peaks, within ±2h. */
    private static double vertex(Scored down, Scored at, Scored up, double h) {
        double curvature = down.score() - 2 * at.score() + up.score();
        double slope = up.score() - down.score();
        if (!(curvature < 0)) {
            return slope > 0 ? 2 * h : -2 * h;
        }
        return Math.max(-2 * h, Math.min(2 * h, -0.5 * h * slope / curvature));
    }
}
