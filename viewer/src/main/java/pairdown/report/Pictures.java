package pairdown.report;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import pairdown.camera.Vantage;

/**
 * Who draws the report's pictures. They are ordered first and fetched when the page is put
 * together, so that drawing and the rest of the report go on at the same time.
 */
public interface Pictures {
    /** No pictures, because none are wanted. */
    Pictures NONE =
            new Pictures() {
                @Override
                public CompletableFuture<Optional<BufferedImage>> order(View view) {
                    return CompletableFuture.completedFuture(Optional.empty());
                }

                @Override
                public Optional<String> whyNone() {
                    return Optional.empty();
                }
            };

    /**
     * What a picture shows.
     *
     * @param t_s on the attempt's axis
     * @param nearer how many times nearer than the vantage point usually stands
     */
    record View(double t_s, Vantage vantage, double nearer) {}

    /** Orders a picture, which comes out empty where it can't be drawn. */
    CompletableFuture<Optional<BufferedImage>> order(View view);

    /** Once an order came back empty: why, and what would mend it; empty if none were wanted. */
    Optional<String> whyNone();
}
