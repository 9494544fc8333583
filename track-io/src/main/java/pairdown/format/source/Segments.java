package pairdown.format.source;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.Gaps;
import pairdown.track.Track;

/** The rows of a track that a writer writes, in stretches between gaps. */
public final class Segments {
    private Segments() {}

    /** Rows with a position, a list for each stretch without a gap. */
    public static List<List<Integer>> of(Track track) {
        List<Span> gaps = Gaps.of(track);
        List<List<Integer>> segments = new ArrayList<>();
        List<Integer> current = new ArrayList<>();
        int next = 0;
        for (int row = 0; row < track.size(); row++) {
            if (!track.hasPosition(row)) {
                continue;
            }
            if (next < gaps.size() && track.time_s(row) >= gaps.get(next).end_s()) {
                next++;
                segments.add(current);
                current = new ArrayList<>();
            }
            current.add(row);
        }
        segments.add(current);
        segments.removeIf(List::isEmpty);
        return segments;
    }

    /** A row's instant, to the microsecond: what is below it is the rounding of a double. */
    public static Instant instant(Track track, int row) {
        TimeAxis axis = track.axis().orElseThrow();
        return axis.instant(track.time_s(row)).plusNanos(500).truncatedTo(ChronoUnit.MICROS);
    }

    /** Channels beside place and height, which each format has its own way to write. */
    public static List<Channel> extras(Track track) {
        List<Channel> extras = new ArrayList<>(track.channels());
        extras.removeAll(
                List.of(
                        Channel.LATITUDE,
                        Channel.LONGITUDE,
                        Channel.HEIGHT,
                        Channel.GEOID_SEPARATION));
        return extras;
    }
}
