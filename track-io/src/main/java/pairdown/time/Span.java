package pairdown.time;

/**
 * A stretch of the attempt's time axis.
 *
 * @param start_s first instant
 * @param end_s last instant, not before the first
 */
public record Span(double start_s, double end_s) {
    public Span {
        if (!(start_s <= end_s)) {
            throw new IllegalArgumentException(
                    "a span cannot end before it starts: " + start_s + " to " + end_s);
        }
    }

    public double duration_s() {
        return end_s - start_s;
    }

    public boolean contains(double t_s) {
        return t_s >= start_s && t_s <= end_s;
    }

    public boolean overlaps(Span o) {
        return start_s <= o.end_s && o.start_s <= end_s;
    }
}
