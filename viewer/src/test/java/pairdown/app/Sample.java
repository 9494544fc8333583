package pairdown.app;

import java.nio.file.Path;

/** Where the sample attempt lies, as tests find it. */
final class Sample {
    static final Path FOLDER = Path.of("..", "sample-tracks", "2031-05-14-11");

    private Sample() {}
}
