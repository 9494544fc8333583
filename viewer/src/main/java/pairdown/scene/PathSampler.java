package pairdown.scene;

import java.util.ArrayList;
import java.util.List;
import pairdown.motion.Trajectory;
import pairdown.replay.LeadAxes;
import pairdown.replay.Recording;
import pairdown.time.Span;

/** Turns trajectories into paths to draw: in the world, and as seen from the lead. */
final class PathSampler {
    /**
     * Points a second. Between two the path is drawn straight: at 10 m/s² of acceleration that cuts
     * a corner by 5 cm.
     */
    private static final double RATE_HZ = 5;

    private final Recording recording;

    PathSampler(Recording recording) {
        this.recording = recording;
    }

    /** The path over the ground: east, north, up. */
    PathTree world(int participant) {
        Trajectory path = recording.trajectory(participant);
        PathTree tree = new PathTree();
        for (Span run : withoutGaps(path, new Span(path.start_s(), path.end_s()))) {
            tree.add(
                    sampled(
                            run,
                            (t_s, own, into, at) -> {
                                path.read(t_s, own);
                                System.arraycopy(own, 0, into, at, 3);
                            }));
        }
        return tree;
    }

    /**
     * The path as seen from the lead: right, ahead, up in level axes that turn with it.
     *
     * @param when the stretch that matters
     */
    PathTree fromLead(int participant, Span when) {
        PathTree tree = new PathTree();
        if (recording.subject() < 0 || recording.axes().isEmpty()) {
            return tree;
        }
        Trajectory path = recording.trajectory(participant);
        Trajectory lead = recording.trajectory(recording.subject());
        LeadAxes axes = recording.axes().get();
        double start = Math.max(when.start_s(), Math.max(path.start_s(), lead.start_s()));
        double end = Math.min(when.end_s(), Math.min(path.end_s(), lead.end_s()));
        if (!(start < end)) {
            return tree;
        }
        double[] of = new double[Trajectory.VALUES];
        List<Span> runs = new ArrayList<>();
        for (Span run : withoutGaps(path, new Span(start, end))) {
            runs.addAll(withoutGaps(lead, run));
        }
        for (Span run : runs) {
            tree.add(
                    sampled(
                            run,
                            (t_s, own, into, at) -> {
                                path.read(t_s, own);
                                lead.read(t_s, of);
                                double h = axes.heading_rad(t_s);
                                double east = own[0] - of[0];
                                double north = own[1] - of[1];
                                into[at] = east * Math.cos(h) - north * Math.sin(h);
                                into[at + 1] = east * Math.sin(h) + north * Math.cos(h);
                                into[at + 2] = own[2] - of[2];
                            }));
        }
        return tree;
    }

    @FunctionalInterface
    private interface Point {
        void at(double t_s, double[] state, double[] into, int at);
    }

    private static double[] sampled(Span run, Point point) {
        int steps = Math.max(1, (int) Math.ceil(run.duration_s() * RATE_HZ));
        double[] places = new double[(steps + 1) * PathTree.WIDTH];
        double[] state = new double[Trajectory.VALUES];
        for (int i = 0; i <= steps; i++) {
            double t_s = Math.min(run.end_s(), run.start_s() + i * run.duration_s() / steps);
            point.at(t_s, state, places, i * PathTree.WIDTH);
            places[i * PathTree.WIDTH + 3] = t_s;
        }
        return places;
    }

    /** The parts of a stretch that lie outside a trajectory's gaps. */
    static List<Span> withoutGaps(Trajectory path, Span within) {
        List<Span> runs = new ArrayList<>();
        double from = within.start_s();
        for (Span gap : path.gaps()) {
            if (gap.end_s() <= from || gap.start_s() >= within.end_s()) {
                continue;
            }
            if (gap.start_s() > from) {
                runs.add(new Span(from, gap.start_s()));
            }
            from = gap.end_s();
        }
        if (from < within.end_s()) {
            runs.add(new Span(from, within.end_s()));
        }
        return runs;
    }
}
