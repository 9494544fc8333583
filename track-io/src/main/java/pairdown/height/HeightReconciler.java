package pairdown.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import pairdown.clock.ClockSolution;
import pairdown.clock.LoadedLog;
import pairdown.clock.SharedRide;
import pairdown.track.HeightDatum;
import pairdown.units.Estimate;

/**
 * Brings the heights of all logs above the ellipsoid and takes off the constant bias between them
 * that a shared ride measures. Pressure heights are never mixed in.
 */
public final class HeightReconciler {
    private final List<LoadedLog> logs;
    private final ClockSolution clock;
    private final HeightSettings settings;
    private final List<EllipsoidHeights> heights = new ArrayList<>();
    private final List<List<String>> warnings = new ArrayList<>();

    private HeightReconciler(List<LoadedLog> logs, ClockSolution clock, HeightSettings settings) {
        this.logs = logs;
        this.clock = clock;
        this.settings = settings;
        for (LoadedLog log : logs) {
            heights.add(EllipsoidHeights.of(log.track()));
            warnings.add(new ArrayList<>());
        }
    }

    /** With the usual settings. */
    public static List<AlignedLog> reconcile(List<LoadedLog> logs, ClockSolution clock) {
        return reconcile(logs, clock, HeightSettings.DEFAULTS);
    }

    /**
     * The logs whose clock is known, in the order given, on the common clock and above the
     * ellipsoid; what was found out about each one's heights is its {@link AlignedLog#height}.
     */
    public static List<AlignedLog> reconcile(
            List<LoadedLog> logs, ClockSolution clock, HeightSettings settings) {
        return new HeightReconciler(logs, clock, settings).run();
    }

    private List<AlignedLog> run() {
        decideDatums();
        List<Optional<Estimate>> bias_m = network().solve();
        return IntStream.range(0, logs.size())
                .filter(i -> clock.results().get(i).isUsable())
                .mapToObj(i -> aligned(i, bias_m.get(i)))
                .toList();
    }

    /** The evidence of the rides may turn a log's datum; then the rides are looked at again. */
    private void decideDatums() {
        BiasNetwork network = network();
        DatumEvidence evidence =
                new DatumEvidence(
                        logs,
                        List.copyOf(heights),
                        network.differences(),
                        settings.datumTolerance_m());
        for (int i = 0; i < logs.size(); i++) {
            int index = i;
            evidence.of(i)
                    .ifPresent(
                            f -> {
                                heights.set(index, heights.get(index).readAs(f.datum()));
                                warnings.get(index).add(f.words());
                            });
        }
    }

    private BiasNetwork network() {
        double[] prior_m = heights.stream().mapToDouble(this::prior_m).toArray();
        BiasNetwork network = new BiasNetwork(prior_m);
        List<Optional<RideHeights>> series = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            int index = i;
            boolean rode =
                    clock.rides().stream().anyMatch(r -> r.first() == index || r.second() == index);
            series.add(
                    rode
                            ? Optional.of(
                                    RideHeights.of(
                                            logs.get(i),
                                            clock.results().get(i),
                                            clock.axis(),
                                            heights.get(i)))
                            : Optional.empty());
        }
        for (SharedRide ride : clock.rides()) {
            OptionalDouble above_m =
                    series.get(ride.first())
                            .orElseThrow()
                            .above_m(series.get(ride.second()).orElseThrow(), ride);
            above_m.ifPresent(
                    d ->
                            network.add(
                                    new BiasNetwork.Difference(
                                            ride.first(), ride.second(), d, sigma_m(ride))));
        }
        return network;
    }

    private double prior_m(EllipsoidHeights h) {
        return h.isOwn() ? settings.ellipsoidBiasSigma_m() : settings.modelBiasSigma_m();
    }

    /** The mean of a wandering bias over T forgets as √(2τ/T). */
    private double sigma_m(SharedRide ride) {
        double forgets = Math.min(1, 2 * settings.wanderTime_s() / ride.duration_s());
        return Math.hypot(settings.wander_m() * Math.sqrt(forgets), settings.seatHeight_m());
    }

    private AlignedLog aligned(int i, Optional<Estimate> bias_m) {
        LoadedLog log = logs.get(i);
        EllipsoidHeights h = heights.get(i);
        boolean assumed = log.track().datum() == HeightDatum.UNKNOWN && !h.carriesGeoid();
        if (assumed && warnings.get(i).isEmpty()) {
            warnings.get(i).add("nothing says what its heights are from: mean sea level assumed");
        }
        double taken_m = bias_m.map(Estimate::value).orElse(0.0);
        float[] column = new float[log.track().size()];
        for (int row = 0; row < column.length; row++) {
            column[row] = (float) (h.at(row) - taken_m);
        }
        HeightResult result =
                new HeightResult(
                        log.participant().id(),
                        log.ref().file(),
                        h.datum(),
                        h.added_m(),
                        bias_m,
                        bias_m.map(Estimate::sigma).orElse(prior_m(h)),
                        warnings.get(i));
        return new AlignedLog(
                log.participant(),
                log.ref(),
                log.track(),
                clock.axis(),
                clock.results().get(i),
                result,
                column);
    }
}
