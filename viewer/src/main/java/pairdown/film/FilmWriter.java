package pairdown.film;

import java.io.IOException;
import java.nio.file.Path;
import pairdown.gl.Pixels;

/** Takes the pictures of a film one after the other. Closing without {@link #finish} gives up. */
public interface FilmWriter extends AutoCloseable {
    /** What encodes, for a person. */
    String encoder();

    void add(Pixels picture) throws IOException;

    /** Ends the film: only now is the file whole. */
    void finish() throws IOException;

    @Override
    void close();

    /**
     * A writer for an MP4 file: the ffmpeg on the path where there is one, smaller and faster, else
     * the encoder that comes with this program.
     *
     * @throws IllegalArgumentException for an odd width or height, which the format does not have
     */
    static FilmWriter open(Path file, int width_px, int height_px, int rate_Hz) throws IOException {
        if (width_px % 2 != 0 || height_px % 2 != 0) {
            throw new IllegalArgumentException(
                    "a film needs an even width and height, not " + width_px + "×" + height_px);
        }
        return FfmpegWriter.isHere()
                ? new FfmpegWriter(file, width_px, height_px, rate_Hz)
                : new OwnWriter(file, width_px, height_px, rate_Hz);
    }
}
