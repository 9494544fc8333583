package pairdown.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;

/** Summaries with figures chosen by hand. */
final class SeasonSamples {
    static final Season NONE = Season.of(List.of(), SeasonPlan.of(Criteria.NONE));
    static final Target TARGET = new Target(38, AirspeedKind.TRUE, 17.78, 1.5, 1.0, 10);

    private SeasonSamples() {}

    /** The n-th attempt, with one flyer at a gap. */
    static AttemptSummary attempt(int n, double gate_m, FlyerSummary... flyers) {
        return summary(n, OptionalDouble.of(gate_m), List.of(flyers), Optional.empty(), List.of());
    }

    /** The n-th attempt: a descent alone, held or not, steady after a time or never. */
    static AttemptSummary dive(int n, boolean held, OptionalDouble stabilise_s, int episodes) {
        return dive(n, "idle", held, stabilise_s, episodes, List.of(), List.of());
    }

    /** One of a configuration. */
    static AttemptSummary dive(int n, String configuration, boolean held) {
        return dive(n, configuration, held, OptionalDouble.of(6), 0, List.of(), List.of());
    }

    /** One that was held, but for limits exceeded. */
    static AttemptSummary exceeding(List<String> byAnyone, List<String> byLead) {
        return dive(1, "idle", true, OptionalDouble.of(6), 0, byAnyone, byLead);
    }

    private static AttemptSummary dive(
            int n,
            String configuration,
            boolean held,
            OptionalDouble stabilise_s,
            int episodes,
            List<String> exceeded,
            List<String> exceededByLead) {
        Dive dive =
                new Dive(
                        configuration,
                        held,
                        held ? 12 : 4,
                        stabilise_s,
                        60,
                        OptionalDouble.of(0.4),
                        OptionalDouble.empty());
        AttemptSummary s =
                summary(n, OptionalDouble.empty(), List.of(), Optional.of(dive), List.of());
        return new AttemptSummary(
                s.attempt(),
                s.folder(),
                s.reason(),
                s.start(),
                s.gate_m(),
                s.flyers(),
                s.dive(),
                Optional.of(episodes),
                0,
                true,
                exceeded,
                exceededByLead,
                s.target(),
                s.tail(),
                s.segments());
    }

    static AttemptSummary closingUntold(AttemptSummary a) {
        return told(a, a.folder(), a.episodes(), false);
    }

    static AttemptSummary tailUntold(AttemptSummary a) {
        return told(a, a.folder(), Optional.empty(), a.closureTold());
    }

    /** The same in another folder. */
    static AttemptSummary in(String folder, AttemptSummary a) {
        return told(a, folder, a.episodes(), a.closureTold());
    }

    private static AttemptSummary told(
            AttemptSummary a, String folder, Optional<Integer> episodes, boolean closureTold) {
        return new AttemptSummary(
                a.attempt(),
                folder,
                a.reason(),
                a.start(),
                a.gate_m(),
                a.flyers(),
                a.dive(),
                episodes,
                a.closureExceedances(),
                closureTold,
                a.exceeded(),
                a.exceededByLead(),
                a.target(),
                a.tail(),
                a.segments());
    }

    static AttemptSummary flown(int n, SteadySegment... segments) {
        return summary(n, OptionalDouble.empty(), List.of(), Optional.empty(), List.of(segments));
    }

    private static AttemptSummary summary(
            int n,
            OptionalDouble gate_m,
            List<FlyerSummary> flyers,
            Optional<Dive> dive,
            List<SteadySegment> segments) {
        String name = String.format(java.util.Locale.ROOT, "%02d", n);
        return new AttemptSummary(
                name,
                "day/" + name,
                Optional.empty(),
                "2031-06-02T" + name + ":00:00.000Z",
                gate_m,
                flyers,
                dive,
                Optional.empty(),
                0,
                true,
                List.of(),
                List.of(),
                Optional.of(TARGET),
                Optional.empty(),
                segments);
    }

    static FlyerSummary flyer(String name, double medianGap_m, double sigma_m, String verdict) {
        return new FlyerSummary(
                name,
                OptionalDouble.of(medianGap_m - 1),
                OptionalDouble.of(medianGap_m),
                OptionalDouble.of(sigma_m),
                OptionalDouble.of(9),
                OptionalDouble.of(12),
                Optional.of(0),
                Optional.of(verdict),
                Optional.empty());
    }

    static FlyerSummary withoutSigma(FlyerSummary f) {
        return new FlyerSummary(
                f.flyer(),
                f.leastGap_m(),
                f.medianGap_m(),
                OptionalDouble.empty(),
                f.held_s(),
                f.matchedLongest_s(),
                f.overshoots(),
                f.verdict(),
                f.spread());
    }

    static SteadySegment segment(
            String machine, String role, String configuration, double v_mps, double sink_mps) {
        return new SteadySegment(
                machine,
                role,
                configuration,
                0,
                5,
                v_mps,
                v_mps,
                sink_mps,
                OptionalDouble.of(18_632 / 9.80665));
    }
}
