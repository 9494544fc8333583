package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairdown.stats.Robust;

/** Effectiveness over Tc′ and calibrated airspeed: one sample a second, cells that have any. */
final class EffectivenessMap {
    private final Flight flight;
    private final TailSettings.Review settings;

    EffectivenessMap(Flight flight, TailSettings.Review settings) {
        this.flight = flight;
        this.settings = settings;
    }

    private record Sample(double effectiveness, boolean inEpisode) {}

    List<TailReview.MapCell> cells(Effectiveness e, List<Episode> episodes, boolean[] diving) {
        Map<Long, Map<Long, List<Sample>>> bins = new TreeMap<>();
        Grid grid = flight.signals().grid();
        for (int i = 0; i < grid.size(); i += grid.steps(1)) {
            double t_s = grid.time_s(i);
            double x = flight.balance().coefficient()[i] / settings.mapCoefficientStep();
            double y = flight.air().calibrated_mps()[i] / settings.mapAirspeedStep_mps();
            if (diving[i] && Double.isFinite(x + y + e.ratio()[i])) {
                boolean in = episodes.stream().anyMatch(p -> p.span().contains(t_s));
                bins.computeIfAbsent((long) Math.floor(x), k -> new TreeMap<>())
                        .computeIfAbsent((long) Math.floor(y), k -> new ArrayList<>())
                        .add(new Sample(e.ratio()[i], in));
            }
        }
        List<TailReview.MapCell> cells = new ArrayList<>();
        bins.forEach((x, row) -> row.forEach((y, samples) -> cells.add(cell(x, y, samples))));
        return cells;
    }

    private TailReview.MapCell cell(long x, long y, List<Sample> samples) {
        double[] values = samples.stream().mapToDouble(Sample::effectiveness).toArray();
        return new TailReview.MapCell(
                x * settings.mapCoefficientStep(),
                y * settings.mapAirspeedStep_mps(),
                settings.mapCoefficientStep(),
                settings.mapAirspeedStep_mps(),
                Robust.median(values).orElseThrow(),
                samples.size(),
                (int) samples.stream().filter(Sample::inEpisode).count());
    }
}
