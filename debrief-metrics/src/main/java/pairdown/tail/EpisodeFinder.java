package pairdown.tail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import pairdown.time.Span;
import pairdown.track.Channel;

/**
 * Signs to episodes: two signs within a short time begin one, and it ends when all have been clear.
 * Where effectiveness could be judged it must be one of the signs, and its loss bounds the episode:
 * a rough ride with a tail that answers is none. How strong the case for the loss must be follows
 * from the signs beside it: no bump holds an elevator near its stop, but rough air makes hands busy
 * and throws the nose about. Without effectiveness one of the signs must be the elevator near its
 * stop.
 */
final class EpisodeFinder {
    /** Looked at on either side of a change of effectiveness for its instant. */
    private static final double EDGE_S = 4;

    /**
     * Effectiveness does not fall at an instant but as blades turn and the slowed wake reaches the
     * tail (common practice, no published source): no start is known better than this.
     */
    private static final double FALLS_S = 0.35;

    /** One standard deviation of a start known from signs alone (common practice). */
    private static final double SIGNS_SIGMA_S = 2;

    /** Log odds, 20 to one, of lost control. */
    private static final double LIKELY = 3;

    /** Log odds, 400 to one, of lost control that need no control against its response. */
    private static final double BEYOND_DOUBT = 6;

    /** And of that by the slope of an attitude, where an elevator was held near its stop. */
    private static final double BY_ATTITUDE = 2;

    /** Where channels are missing an elevator must be held near its stop so many times as long. */
    private static final double HELD = 2;

    private final Flight flight;
    private final Grid grid;
    private final TailSettings.Signs settings;
    private final Optional<Effectiveness> judge;
    private final List<ControlLevels> controls;

    /**
     * @param judge the axis whose loss bounds an episode, if one could be measured
     * @param witness another axis, which the same wake covers
     */
    EpisodeFinder(
            Flight flight,
            Optional<Effectiveness> judge,
            Optional<Effectiveness> witness,
            TailSettings.Signs settings) {
        this.flight = flight;
        this.grid = flight.signals().grid();
        this.judge = judge;
        this.controls =
                Stream.concat(judge.stream(), witness.stream()).map(Effectiveness::levels).toList();
        this.settings = settings;
    }

    /** Whether signs of these kinds can make an episode at all. */
    static boolean canTell(Set<Episode.Sign> seen) {
        return seen.size() > 1
                && (seen.contains(Episode.Sign.LOST_EFFECTIVENESS)
                        || seen.contains(Episode.Sign.ELEVATOR_NEAR_STOP));
    }

    /** The episodes in order of time, not yet paired with power changes. */
    List<Episode> find(List<SignSpan> signs) {
        List<SignSpan> others =
                signs.stream().filter(s -> s.sign() != Episode.Sign.LOST_EFFECTIVENESS).toList();
        List<Episode> episodes = new ArrayList<>();
        for (Masks.Run lost : candidates()) {
            List<SignSpan> near = near(others, lost);
            Span span = grid.span(lost.from(), lost.to());
            if (!near.isEmpty() && episodes.stream().noneMatch(e -> e.span().overlaps(span))) {
                bounded(lost, near).ifPresent(episodes::add);
            }
        }
        List<Span> bounded = episodes.stream().map(Episode::span).toList();
        for (List<SignSpan> cluster : clusters(others)) {
            Masks.Run run = extent(cluster);
            Span span = grid.span(run.from(), run.to());
            boolean apart = bounded.stream().noneMatch(span::overlaps);
            if (apart && judge.isEmpty() && twoTogether(cluster)) {
                episodes.add(unbounded(cluster, run));
            }
        }
        episodes.sort(Comparator.comparingDouble(e -> e.span().start_s()));
        return episodes;
    }

    /** Where the likeliest course of a control is lost: the judge's first. */
    private List<Masks.Run> candidates() {
        List<Masks.Run> all = new ArrayList<>();
        for (ControlLevels control : controls) {
            boolean[] mask = new boolean[grid.size()];
            for (Masks.Run run : control.lost(settings, grid.steps(settings.lostFor_s()))) {
                Arrays.fill(mask, run.from(), run.to() + 1, true);
            }
            all.addAll(Masks.runs(mask, 1, grid.steps(settings.clearFor_s())));
        }
        return all;
    }

    private List<SignSpan> near(List<SignSpan> signs, Masks.Run run) {
        int reach = grid.steps(settings.together_s());
        return signs.stream()
                .filter(s -> s.from() <= run.to() + reach && s.to() >= run.from() - reach)
                .toList();
    }

    private List<List<SignSpan>> clusters(List<SignSpan> signs) {
        int bridge = grid.steps(settings.clearFor_s());
        List<List<SignSpan>> clusters = new ArrayList<>();
        int to = Integer.MIN_VALUE / 2;
        for (SignSpan s : signs) {
            if (s.from() - to > bridge) {
                clusters.add(new ArrayList<>());
            }
            clusters.get(clusters.size() - 1).add(s);
            to = Math.max(to, s.to());
        }
        return clusters;
    }

    private static Masks.Run extent(List<SignSpan> signs) {
        return new Masks.Run(
                signs.stream().mapToInt(SignSpan::from).min().orElseThrow(),
                signs.stream().mapToInt(SignSpan::to).max().orElseThrow());
    }

    /** Another sign beside an elevator near its stop: all others rough air shows as well. */
    private boolean twoTogether(List<SignSpan> signs) {
        int reach = grid.steps(settings.together_s());
        return signs.stream()
                .filter(a -> a.sign() == Episode.Sign.ELEVATOR_NEAR_STOP)
                .anyMatch(
                        a ->
                                signs.stream()
                                        .filter(b -> b.sign() != a.sign())
                                        .anyMatch(
                                                b ->
                                                        a.from() <= b.to() + reach
                                                                && b.from() <= a.to() + reach));
    }

    /** The episode about a stretch of lost effectiveness, if the case for that is strong enough. */
    private Optional<Episode> bounded(Masks.Run lost, List<SignSpan> near) {
        LostStretch stretch = LostStretch.of(controls, lost, grid.steps(EDGE_S), settings);
        if (!isShown(stretch, near)) {
            return Optional.empty();
        }
        LostStretch.Edge start = stretch.start();
        double start_s = grid.start_s() + start.place() * grid.step_s();
        double end_s = grid.start_s() + stretch.end().place() * grid.step_s();
        List<SignSpan> all = new ArrayList<>(near);
        all.add(new SignSpan(Episode.Sign.LOST_EFFECTIVENESS, lost.from(), lost.to()));
        return Optional.of(
                episode(
                        new Span(start_s, Math.max(start_s, end_s)),
                        Math.hypot(FALLS_S, start.sigma() * grid.step_s()),
                        all,
                        OptionalDouble.of(stretch.least()),
                        controls.get(0).own()[lost.from()]));
    }

    /**
     * Whether the case for a loss is as strong as the signs beside it ask for. A bump hardly holds
     * an elevator near its stop, and less so for long, but it does make hands busy: then the case
     * must stand against the hardest bump. The more channels are missing, the less well one is told
     * from the other, and the more is asked.
     */
    private boolean isShown(LostStretch stretch, List<SignSpan> near) {
        boolean lever = flight.signals().has(Channel.POWER_LEVER);
        boolean whole = lever && !bySlopes() && controls.size() > 1;
        double asked_s = whole ? 0 : HELD * settings.nearStopFor_s();
        if (lasts(near, Episode.Sign.ELEVATOR_NEAR_STOP, asked_s)) {
            return stretch.logOdds(grid.step_s()) > (bySlopes() ? BY_ATTITUDE : 0);
        }
        // Blades turn by themselves: without the lever, what power does to the trim is not told
        // well enough from what a tail no longer does; nor a busy hand by the slope of an attitude.
        boolean busy = lasts(near, Episode.Sign.RAISED_ACTIVITY, 0);
        boolean tells = !bySlopes() && (lever || busy);
        double needed = whole && busy ? LIKELY : BEYOND_DOUBT;
        return tells && stretch.logOddsAgainstHardBumps(grid.step_s()) > needed;
    }

    /** Whether a sign was on for so long (s), from the first sample to the last. */
    private boolean lasts(List<SignSpan> signs, Episode.Sign sign, double least_s) {
        return signs.stream()
                .anyMatch(
                        s ->
                                s.sign() == sign
                                        && (s.to() - s.from()) * grid.step_s() >= least_s - 1e-6);
    }

    /** Whether the rate that judges is the slope of an attitude. */
    private boolean bySlopes() {
        return judge.filter(j -> flight.signals().isFromAttitude(j.axis().rate())).isPresent();
    }

    private Episode unbounded(List<SignSpan> cluster, Masks.Run run) {
        return episode(
                grid.span(run.from(), run.to()),
                SIGNS_SIGMA_S,
                cluster,
                OptionalDouble.empty(),
                Double.NaN);
    }

    private Episode episode(
            Span span, double sigma_s, List<SignSpan> signs, OptionalDouble least, double own) {
        List<Episode.Sign> order =
                signs.stream()
                        .sorted(Comparator.comparingInt(SignSpan::from))
                        .map(SignSpan::sign)
                        .distinct()
                        .toList();
        OptionalDouble margin = margin(span);
        Grading grading = new Grading(settings, order, span, least, own, margin);
        return new Episode(
                span,
                sigma_s,
                order,
                grading.grade(),
                least,
                margin,
                Optional.empty(),
                Optional.empty(),
                grading.words());
    }

    private OptionalDouble margin(Span span) {
        double[] elevator = flight.signals().column(Channel.ELEVATOR);
        double most = Double.NEGATIVE_INFINITY;
        for (int i = grid.place(span.start_s()); i <= grid.place(span.end_s()); i++) {
            most = Double.isFinite(elevator[i]) ? Math.max(most, Math.abs(elevator[i])) : most;
        }
        return Double.isFinite(most)
                ? OptionalDouble.of(Math.max(0, 100 - most))
                : OptionalDouble.empty();
    }
}
