package pairdown.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.replay.Recording;
import pairdown.time.Span;

/**
 * Where everyone has been, sampled and thinned: over the ground and as seen from the lead. It takes
 * long to make and needs no window.
 */
final class Paths {
    /** Shown of a flight before its first exit. */
    private static final double BEFORE_EXIT_S = 10;

    /** Points of a block: 4 MiB, which go into the card's memory within a frame. */
    private static final int BLOCK_POINTS = 1 << 18;

    private final Recording recording;
    private final List<PathTree> world;
    private final List<PathTree> fromLead;
    private final List<float[]> blocks = new ArrayList<>();
    private final int[] base;
    private final int blockPoints;
    private int points;

    private Paths(Recording recording, int blockPoints) {
        this.blockPoints = blockPoints;
        this.recording = recording;
        PathSampler sampler = new PathSampler(recording);
        Span joint = jointFlight();
        int n = recording.participants().size();
        world = IntStream.range(0, n).parallel().mapToObj(sampler::world).toList();
        fromLead =
                IntStream.range(0, n)
                        .parallel()
                        .mapToObj(i -> sampler.fromLead(i, relevant(i, joint)))
                        .toList();
        base = new int[2 * n];
        gather();
    }

    static Paths of(Recording recording) {
        return of(recording, BLOCK_POINTS);
    }

    /**
     * @param blockPoints points of a block
     */
    static Paths of(Recording recording, int blockPoints) {
        return new Paths(recording, blockPoints);
    }

    /** From the first exit to the last opening, with some seconds before. */
    private Span jointFlight() {
        double start = Double.POSITIVE_INFINITY;
        double end = Double.NEGATIVE_INFINITY;
        for (PairDebrief pair : recording.debrief().pairs()) {
            if (pair.series().size() > 0) {
                start = Math.min(start, pair.series().time_s(0) - BEFORE_EXIT_S);
                end = Math.max(end, pair.series().time_s(pair.series().size() - 1));
            }
        }
        return start < end ? new Span(start, end) : recording.debrief().span();
    }

    /** When a participant's path as seen from the lead means something: a flyer's own flight. */
    private Span relevant(int participant, Span joint) {
        String id = recording.participants().get(participant).id();
        for (PairDebrief pair : recording.debrief().pairs()) {
            PairSeries series = pair.series();
            if (pair.flyer().equals(id) && series.size() > 1) {
                return new Span(series.time_s(0), series.time_s(series.size() - 1));
            }
        }
        return joint;
    }

    /** All points one after the other, in blocks. */
    private void gather() {
        List<PathTree> all = new ArrayList<>(world);
        all.addAll(fromLead);
        for (int i = 0; i < all.size(); i++) {
            base[i] = points;
            points += all.get(i).points();
        }
        for (int from = 0; from < points; from += blockPoints) {
            int size = Math.min(blockPoints, points - from);
            blocks.add(new float[size * PathTree.WIDTH]);
        }
        int at = 0;
        for (PathTree tree : all) {
            for (float[] part : tree.takePoints()) {
                copy(part, at);
                at += part.length;
            }
        }
    }

    private void copy(float[] part, int to) {
        int done = 0;
        while (done < part.length) {
            int at = to + done;
            float[] block = blocks.get(at / (blockPoints * PathTree.WIDTH));
            int from = at % (blockPoints * PathTree.WIDTH);
            int size = Math.min(part.length - done, block.length - from);
            System.arraycopy(part, done, block, from, size);
            done += size;
        }
    }

    Recording recording() {
        return recording;
    }

    /** Participants. */
    int size() {
        return world.size();
    }

    /** A participant's path over the ground, a top for each stretch without gaps. */
    List<PathTree.Node> world(int participant) {
        return world.get(participant).tops();
    }

    /** The number of that path's first point. */
    int firstInWorld(int participant) {
        return base[participant];
    }

    /** A participant's path as seen from the lead. */
    List<PathTree.Node> fromLead(int participant) {
        return fromLead.get(participant).tops();
    }

    /** The number of that path's first point. */
    int firstFromLead(int participant) {
        return base[world.size() + participant];
    }

    /** How many points all paths have together. */
    int points() {
        return points;
    }

    /** The number of a block's first point. */
    int firstInBlock(int block) {
        return block * blockPoints;
    }

    /** All points in blocks; do not change. */
    List<float[]> blocks() {
        return blocks;
    }
}
