package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.debrief.Debrief;
import pairdown.motion.Trajectory;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.phase.EventKind;
import pairdown.report.ReportModel.HeightPart;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/**
 * What the height between the first exit and the last flyer's opening was used for, on the lead's
 * height.
 */
final class HeightBudget {
    private final Debrief debrief;
    private final Words words;
    private final Figures figures;

    HeightBudget(Debrief debrief, Words words, Figures figures) {
        this.debrief = debrief;
        this.words = words;
        this.figures = figures;
    }

    List<HeightPart> parts() {
        Optional<Trajectory> lead = debrief.lead().flatMap(l -> l.trajectory());
        OptionalDouble exit_s = first(EventKind.EXIT);
        OptionalDouble end_s = end();
        if (lead.isEmpty() || exit_s.isEmpty() || end_s.isEmpty()) {
            return List.of();
        }
        double top_m = height_m(lead.get(), exit_s.getAsDouble());
        double bottom_m = height_m(lead.get(), end_s.getAsDouble());
        if (!(top_m - bottom_m > 1)) {
            return List.of();
        }
        Optional<MatchedWindow> best = best();
        List<HeightPart> parts = new ArrayList<>();
        if (best.isEmpty()) {
            add(parts, "approach", top_m, bottom_m, top_m - bottom_m);
            return parts;
        }
        double from_m = clamp(height_m(lead.get(), best.get().span().start_s()), bottom_m, top_m);
        double to_m = clamp(height_m(lead.get(), best.get().span().end_s()), bottom_m, from_m);
        add(parts, "approach", top_m, from_m, top_m - bottom_m);
        add(parts, "matched", from_m, to_m, top_m - bottom_m);
        add(parts, "after", to_m, bottom_m, top_m - bottom_m);
        return parts;
    }

    String says() {
        return parts().isEmpty()
                ? words.get("report.budget.none")
                : words.get("report.budget.says");
    }

    private void add(List<HeightPart> parts, String key, double from_m, double to_m, double all_m) {
        parts.add(
                new HeightPart(
                        words.get("report.budget." + key),
                        figures.text(Measure.HEIGHT, from_m - to_m),
                        (int) Math.round(100 * (from_m - to_m) / all_m),
                        key));
    }

    private Optional<MatchedWindow> best() {
        return debrief.pairs().stream()
                .map(PairDebrief::matched)
                .flatMap(m -> m.longest().stream())
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()));
    }

    private OptionalDouble first(EventKind kind) {
        return debrief.events().stream()
                .filter(e -> e.kind() == kind && e.participants().stream().anyMatch(this::jumps))
                .mapToDouble(e -> e.time_s())
                .min();
    }

    /** The last break-off, or where there is none the first opening. */
    private OptionalDouble end() {
        OptionalDouble breakOff_s =
                debrief.events().stream()
                        .filter(e -> e.kind() == EventKind.BREAK_OFF)
                        .mapToDouble(e -> e.time_s())
                        .max();
        return breakOff_s.isPresent() ? breakOff_s : first(EventKind.OPENING);
    }

    private boolean jumps(String id) {
        return debrief.participant(id)
                .map(p -> p.participant().role())
                .filter(Role::isJumper)
                .isPresent();
    }

    private static double height_m(Trajectory motion, double t_s) {
        double inside_s = clamp(t_s, motion.start_s(), motion.end_s());
        return motion.at(inside_s).position_m().z();
    }

    private static double clamp(double v, double low, double high) {
        return Math.max(low, Math.min(high, v));
    }
}
