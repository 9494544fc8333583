package pairdown.tail;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import pairdown.stats.Robust;
import pairdown.time.Span;
import pairdown.track.Channel;

/**
 * Signs to episodes: two signs within a short time begin one, and it ends when all have been clear.
 * Where effectiveness could be judged it must be one of the signs, and its loss bounds the episode:
 * a rough ride with a tail that answers is none. Where it could not, one of the signs must set the
 * control against its response or near its stop, since reversals and excursions alone are what
 * turbulence looks like.
 */
final class EpisodeFinder {
    /** Looked at on either side of a change of effectiveness for its instant. */
    private static final double EDGE_S = 2.5;

    /** One standard deviation of a start known from signs alone (common practice). */
    private static final double SIGNS_SIGMA_S = 2;

    /** Effectiveness speaks for a stretch if it was judged over this share of it. */
    private static final double JUDGED_SHARE = 0.3;

    private static final Set<Episode.Sign> AGAINST_RESPONSE =
            EnumSet.of(Episode.Sign.RAISED_ACTIVITY, Episode.Sign.ELEVATOR_NEAR_STOP);

    private final Flight flight;
    private final Grid grid;
    private final TailSettings.Signs settings;
    private final Optional<Effectiveness> judge;

    /**
     * @param judge the axis whose loss bounds an episode, if one could be measured
     */
    EpisodeFinder(Flight flight, Optional<Effectiveness> judge, TailSettings.Signs settings) {
        this.flight = flight;
        this.grid = flight.signals().grid();
        this.judge = judge;
        this.settings = settings;
    }

    /** Whether signs of these kinds can make an episode at all. */
    static boolean canTell(Set<Episode.Sign> seen) {
        return seen.size() > 1
                && (seen.contains(Episode.Sign.LOST_EFFECTIVENESS)
                        || seen.stream().anyMatch(AGAINST_RESPONSE::contains));
    }

    /** The episodes in order of time, not yet paired with power changes. */
    List<Episode> find(List<SignSpan> signs) {
        List<SignSpan> others =
                signs.stream().filter(s -> s.sign() != Episode.Sign.LOST_EFFECTIVENESS).toList();
        List<Episode> episodes = new ArrayList<>();
        for (Masks.Run lost : joined(signs, Episode.Sign.LOST_EFFECTIVENESS)) {
            List<SignSpan> near = near(others, lost);
            if (!near.isEmpty()) {
                judge.ifPresent(e -> episodes.add(bounded(lost, near, e)));
            }
        }
        List<Span> bounded = episodes.stream().map(Episode::span).toList();
        for (List<SignSpan> cluster : clusters(others)) {
            Masks.Run run = extent(cluster);
            Span span = grid.span(run.from(), run.to());
            boolean apart = bounded.stream().noneMatch(span::overlaps);
            if (apart && !judged(run) && twoTogether(cluster)) {
                episodes.add(unbounded(cluster, run));
            }
        }
        episodes.sort(Comparator.comparingDouble(e -> e.span().start_s()));
        return episodes;
    }

    private List<Masks.Run> joined(List<SignSpan> signs, Episode.Sign sign) {
        boolean[] mask = new boolean[grid.size()];
        for (SignSpan s : signs) {
            for (int i = s.from(); s.sign() == sign && i <= s.to(); i++) {
                mask[i] = true;
            }
        }
        return Masks.runs(mask, 1, grid.steps(settings.clearFor_s()));
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

    private boolean judged(Masks.Run run) {
        return judge.isPresent() && count(judge.get().ratio(), run) >= JUDGED_SHARE * run.length();
    }

    private static int count(double[] column, Masks.Run run) {
        int n = 0;
        for (int i = run.from(); i <= run.to(); i++) {
            n += Double.isFinite(column[i]) ? 1 : 0;
        }
        return n;
    }

    private boolean twoTogether(List<SignSpan> signs) {
        int reach = grid.steps(settings.together_s());
        for (SignSpan a : signs) {
            for (SignSpan b : signs) {
                boolean together = a.from() <= b.to() + reach && b.from() <= a.to() + reach;
                if (a.sign() != b.sign()
                        && together
                        && (AGAINST_RESPONSE.contains(a.sign())
                                || AGAINST_RESPONSE.contains(b.sign()))) {
                    return true;
                }
            }
        }
        return false;
    }

    private Episode bounded(Masks.Run lost, List<SignSpan> near, Effectiveness e) {
        double own = e.own()[lost.from()];
        double least = least(e, lost);
        double inside = inside(e, lost, own);
        int edge = grid.steps(EDGE_S);
        int middle = (lost.from() + lost.to()) / 2;
        EdgeFit start =
                EdgeFit.of(
                        e,
                        Math.max(0, lost.from() - edge),
                        Math.min(Math.max(middle, lost.from() + edge / 2), lost.from() + edge),
                        level(e, lost.from() - 2 * edge, lost.from() - edge / 2, own),
                        inside);
        EdgeFit end =
                EdgeFit.of(
                        e,
                        Math.max(Math.min(middle, lost.to() - edge / 2), lost.to() - edge),
                        Math.min(grid.size() - 1, lost.to() + edge),
                        inside,
                        level(e, lost.to() + edge / 2, lost.to() + 2 * edge, own));
        double start_s = grid.start_s() + start.place() * grid.step_s();
        double end_s = Math.max(start_s, grid.start_s() + end.place() * grid.step_s());
        List<SignSpan> all = new ArrayList<>(near);
        all.add(new SignSpan(Episode.Sign.LOST_EFFECTIVENESS, lost.from(), lost.to()));
        Span span = new Span(start_s, end_s);
        return episode(span, start.sigma() * grid.step_s(), all, OptionalDouble.of(least), own);
    }

    /**
     * The level judged between two places inside the same descent, never one that counts as lost.
     */
    private double level(Effectiveness e, int from, int to, double own) {
        double[] kept =
                IntStream.rangeClosed(Math.max(0, from), Math.min(grid.size() - 1, to))
                        .filter(i -> flight.descending()[i])
                        .mapToDouble(i -> e.ratio()[i])
                        .toArray();
        return Math.max(settings.clearAbove() * own, Robust.median(kept).orElse(own));
    }

    /** One fit over the whole stretch, free of the windows' reach beyond it. */
    private double inside(Effectiveness e, Masks.Run lost, double own) {
        double[] kept =
                IntStream.rangeClosed(lost.from(), lost.to())
                        .mapToDouble(i -> e.ratio()[i])
                        .toArray();
        double middle = Robust.quantile(0.25, kept).orElse(settings.lostBelow() * own);
        return Math.max(0, Math.min(middle, settings.lostBelow() * own));
    }

    private double least(Effectiveness e, Masks.Run lost) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = lost.from(); i <= lost.to(); i++) {
            if (Double.isFinite(e.ratio()[i])) {
                least = Math.min(least, e.ratio()[i]);
            }
        }
        // A control can't work backwards: a ratio under 0 is noise about 0.
        return Math.max(0, least);
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
