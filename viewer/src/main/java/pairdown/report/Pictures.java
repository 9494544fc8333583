package pairdown.report;

import java.util.Optional;

/** Where the report's pictures come from. */
@FunctionalInterface
public interface Pictures {
    /** No pictures: where nothing can draw. */
    Pictures NONE = (t_s, vantage, width, height) -> Optional.empty();

    /**
     * A picture of the attempt as PNG bytes.
     *
     * @param t_s on the attempt's axis
     * @param vantage name of the place it is seen from
     * @return empty where it can't be drawn
     */
    Optional<byte[]> png(double t_s, String vantage, int width, int height);
}
