package pairdown.pair;

import pairdown.motion.Attitude;
import pairdown.time.Span;

/** Decides, once for a pair, what gives its axes. */
final class PairAxes {
    /** Instants at which the logged attitude is looked for. */
    private static final int LOOKS = 64;

    /** Share of them that must have one. */
    private static final double ENOUGH = 0.9;

    private PairAxes() {}

    static RelativeMotion motion(PairInput input, PairSettings settings) {
        RelativeTrack track = RelativeTrack.of(input.lead(), input.flyer(), input.frame());
        return motion(input, track, settings);
    }

    static RelativeMotion motion(PairInput input, RelativeTrack track, PairSettings settings) {
        LeadAxes axes =
                new LeadAxes(
                        kind(input),
                        input.lead().trajectory(),
                        input.lead().attitude(),
                        input.wind(),
                        settings);
        return new RelativeMotion(track, axes, input, settings);
    }

    private static Axes kind(PairInput input) {
        if (attitudeIsLogged(input)) {
            return Axes.BODY;
        }
        return input.wind().isKnown() ? Axes.AIR : Axes.GROUND;
    }

    private static boolean attitudeIsLogged(PairInput input) {
        Span span = Flight.of(input).span();
        int found = 0;
        for (int i = 0; i < LOOKS; i++) {
            double t_s = span.start_s() + (i + 0.5) / LOOKS * span.duration_s();
            if (input.lead()
                    .attitude()
                    .at(t_s)
                    .filter(a -> a.source() == Attitude.Source.LOGGED)
                    .isPresent()) {
                found++;
            }
        }
        return found >= ENOUGH * LOOKS;
    }
}
