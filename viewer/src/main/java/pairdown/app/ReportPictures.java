package pairdown.app;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import pairdown.debrief.Debrief;
import pairdown.film.Studio;
import pairdown.gl.NoGraphicsException;
import pairdown.report.Pictures;
import pairdown.scene.Relief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;

/**
 * The report's pictures, drawn by the replay's own scene on a thread beside the report's. One
 * context serves them all. Where nothing can draw, orders come back empty and the reason is kept.
 */
final class ReportPictures implements Pictures, AutoCloseable {
    private static final int WIDTH_PX = 640;
    private static final int HEIGHT_PX = 427;

    /** Names and figures still read where three pictures share the width of a page: 1.6 mm high. */
    private static final Sizes SIZES = Sizes.atPercent(115);

    private final Debrief debrief;
    private final Optional<Relief> relief;
    private final Figures figures;
    private final ExecutorService drawing =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "report pictures");
                        thread.setDaemon(true);
                        return thread;
                    });

    /** Touched by the drawing thread alone. */
    private @Nullable Studio studio;

    private volatile Optional<String> whyNone = Optional.empty();

    ReportPictures(Debrief debrief, Optional<Relief> relief, Figures figures) {
        this.debrief = debrief;
        this.relief = relief;
        this.figures = figures;
    }

    @Override
    public CompletableFuture<Optional<BufferedImage>> order(View view) {
        return CompletableFuture.supplyAsync(() -> draw(view), drawing);
    }

    private Optional<BufferedImage> draw(View view) {
        if (whyNone.isPresent()) {
            return Optional.empty();
        }
        try {
            Studio open = opened();
            open.diorama().view().look(view.vantage());
            open.diorama().view().zoom(view.nearer());
            List<String> ids = open.diorama().moment().recording().ids();
            Theme theme = new Theme(Palette.LIGHT.forNames(ids), SIZES);
            return Optional.of(
                    open.still(view.t_s(), view.vantage(), theme, figures, true).toImage());
        } catch (NoGraphicsException e) {
            whyNone = Optional.of(Main.oneLine(String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private Studio opened() throws NoGraphicsException {
        Studio open = studio;
        if (open == null) {
            open = Studio.open(debrief, WIDTH_PX, HEIGHT_PX, relief, Optional.empty());
            studio = open;
        }
        return open;
    }

    @Override
    public Optional<String> whyNone() {
        return whyNone;
    }

    @Override
    public void close() {
        CompletableFuture.runAsync(this::closeStudio, drawing).join();
        drawing.shutdown();
    }

    private void closeStudio() {
        Studio open = studio;
        if (open != null) {
            open.close();
        }
    }
}
