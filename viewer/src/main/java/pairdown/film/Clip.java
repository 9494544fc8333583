package pairdown.film;

import java.io.IOException;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import pairdown.camera.Vantage;
import pairdown.theme.Theme;
import pairdown.time.Span;
import pairdown.words.Figures;

/**
 * A film of a stretch of the replay.
 *
 * @param stretch on the attempt's axis
 * @param path vantage points, each for an equal part of the film, with eased moves between
 * @param speed seconds of the attempt in a second of film
 * @param rate_Hz pictures a second
 * @param words whether names and figures are burned in
 */
public record Clip(Span stretch, List<Vantage> path, double speed, int rate_Hz, boolean words) {
    public Clip {
        path = List.copyOf(path);
        if (path.isEmpty() || !(speed > 0) || rate_Hz < 1) {
            throw new IllegalArgumentException("a film needs a camera, a speed and a rate");
        }
    }

    /** How many pictures it has: at least one. */
    public int frames() {
        return Math.max(1, (int) Math.round(stretch.duration_s() / speed * rate_Hz));
    }

    /** The instant picture {@code i} shows. */
    public double time_s(int i) {
        return Math.min(stretch.end_s(), stretch.start_s() + i * speed / rate_Hz);
    }

    /** Whence picture {@code i} is seen. */
    public Vantage vantage(int i) {
        return path.get(Math.min(path.size() - 1, (int) ((long) i * path.size() / frames())));
    }

    /**
     * Makes the film.
     *
     * @param progress gets the share done
     * @param cancelled asked before each picture
     * @return false if it was cancelled; the writer is then not finished
     */
    public boolean shoot(
            Studio studio,
            FilmWriter writer,
            Theme theme,
            Figures figures,
            DoubleConsumer progress,
            BooleanSupplier cancelled)
            throws IOException {
        studio.diorama().settle();
        for (int i = 0; i < frames(); i++) {
            if (cancelled.getAsBoolean()) {
                return false;
            }
            writer.add(
                    i == 0
                            ? studio.still(time_s(0), vantage(0), theme, figures, words)
                            : studio.frame(
                                    time_s(i), vantage(i), 1.0 / rate_Hz, theme, figures, words));
            progress.accept((i + 1.0) / frames());
        }
        writer.finish();
        return true;
    }
}
