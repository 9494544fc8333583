package pairdown.tail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * The pilot's review of power and tail, from whatever subset of channels was logged; what these
 * data can't show is said in the notes.
 */
public final class TailAnalysis {
    /** Less of the dives unjudged than this is not worth a word. */
    private static final double SILENT_SHARE = 0.1;

    private TailAnalysis() {}

    /** Analyses one aircraft's attempt. */
    public static TailControl analyse(TailInput input) {
        return Flight.of(input).map(f -> analyse(input, f)).orElseGet(() -> nothing(input));
    }

    private static TailControl nothing(TailInput input) {
        return new TailControl(
                input.participant(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                Map.of(),
                List.of("no systems channel and no airspeed: power and tail can't be seen"),
                false,
                TailReview.NONE);
    }

    private static TailControl analyse(TailInput input, Flight flight) {
        List<String> notes = new ArrayList<>(flight.notes());
        Optional<Effectiveness> pitch = Effectiveness.of(ControlAxis.PITCH, input, flight, notes);
        Optional<Effectiveness> yaw = Effectiveness.of(ControlAxis.YAW, input, flight, notes);
        Optional<Effectiveness> judge = judge(pitch, yaw, notes);
        SignFinder finder = new SignFinder(flight, input.settings());
        List<SignSpan> signs = finder.find(judge);
        List<Episode> found =
                new EpisodeFinder(
                                flight,
                                judge,
                                witness(judge, yaw, flight),
                                input.settings().signs())
                        .find(signs);
        List<PowerChange> changes =
                new PowerSteps(input).find(flight.signals(), flight.balance(), notes);
        Pairing.Paired paired = new Pairing(input.settings().power()).pair(found, changes);
        judge.ifPresent(j -> saySilence(j, flight, notes));
        boolean tells = tells(input, judge, finder, !found.isEmpty(), notes);
        Map<String, Series> figures = figures(flight, judge, pitch, yaw);
        Optional<Effectiveness> level = judge.or(() -> pitch).or(() -> yaw);
        TailControl bare =
                new TailControl(
                        input.participant(),
                        level.map(Effectiveness::standing).orElse(OptionalDouble.empty()),
                        paired.episodes(),
                        paired.changes(),
                        figures,
                        notes,
                        tells,
                        TailReview.NONE);
        return new Reviewer(input, flight, judge).review(bare);
    }

    /** Says how much of the dives a control that hardly moved leaves unjudged. */
    private static void saySilence(Effectiveness judge, Flight flight, List<String> notes) {
        int all = 0;
        int silent = 0;
        for (Masks.Run run : flight.reviewed()) {
            for (int i = run.from(); i <= run.to(); i++) {
                all++;
                silent += Double.isFinite(judge.ratio()[i]) ? 0 : 1;
            }
        }
        if (silent >= SILENT_SHARE * all && silent > 0) {
            notes.add(
                    String.format(
                            Locale.ROOT,
                            "over %.0f %% of the dives the %s moved too little to judge its"
                                    + " effectiveness: an episode there may go unseen",
                            100.0 * silent / all,
                            judge.axis().words()));
        }
    }

    /**
     * Whether no episode would mean that there was none: where effectiveness could be judged.
     * Elsewhere a tail that went soft unnoticed by its pilot leaves no sign.
     */
    private static boolean tells(
            TailInput input,
            Optional<Effectiveness> judge,
            SignFinder finder,
            boolean isFound,
            List<String> notes) {
        if (input.descents().isEmpty()) {
            notes.add("no descent was found: episodes are looked for in descents only");
            return false;
        }
        if (!EpisodeFinder.canTell(finder.sees(judge))) {
            notes.add("these data can't show a tail episode: none listed does not mean none");
            return false;
        }
        if (judge.isEmpty()) {
            notes.add(
                    "without elevator effectiveness only an elevator near its stop shows a tail"
                            + " episode: none listed does not mean none");
        }
        return judge.isPresent() || isFound;
    }

    /**
     * The axis that bounds episodes: the elevator. A rudder alone, moved little and in slip and
     * rough air most, does not tell lost control from those.
     */
    private static Optional<Effectiveness> judge(
            Optional<Effectiveness> pitch, Optional<Effectiveness> yaw, List<String> notes) {
        if (pitch.isEmpty() && yaw.isPresent()) {
            notes.add(
                    "rudder effectiveness alone can't be told from sideslip and rough air: it is"
                            + " shown, but no episode is drawn from it");
        }
        return pitch;
    }

    /** The rudder beside the elevator, where its slip is told from its loss. */
    private static Optional<Effectiveness> witness(
            Optional<Effectiveness> judge, Optional<Effectiveness> yaw, Flight flight) {
        return yaw.filter(y -> judge.isPresent() && flight.signals().has(Channel.LATERAL_LOAD));
    }

    private static Map<String, Series> figures(
            Flight flight,
            Optional<Effectiveness> judge,
            Optional<Effectiveness> pitch,
            Optional<Effectiveness> yaw) {
        Grid grid = flight.signals().grid();
        Map<String, Series> figures = new LinkedHashMap<>();
        judge.or(() -> yaw)
                .ifPresent(
                        e -> {
                            figures.put(TailFigures.EFFECTIVENESS, grid.series(e.ratio()));
                            figures.put(TailFigures.EFFECTIVENESS_SIGMA, grid.series(e.sigma()));
                        });
        if (pitch.isPresent() && yaw.isPresent()) {
            figures.put(TailFigures.RUDDER_EFFECTIVENESS, grid.series(yaw.get().ratio()));
        }
        if (flight.air().hasPath()) {
            figures.put(TailFigures.RETARDING_SHARE, grid.series(flight.balance().share()));
        }
        if (flight.balance().hasCoefficient()) {
            figures.put(TailFigures.RETARDING_FORCE, grid.series(flight.balance().force_N()));
            figures.put(
                    TailFigures.RETARDING_COEFFICIENT, grid.series(flight.balance().coefficient()));
            figures.put(
                    TailFigures.RETARDING_COEFFICIENT_SIGMA,
                    grid.series(flight.balance().coefficientSigma()));
        }
        return figures;
    }
}
