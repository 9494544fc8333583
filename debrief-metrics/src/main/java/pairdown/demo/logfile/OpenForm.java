package pairdown.demo.logfile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import pairdown.format.LogFiles;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * An open format, as everybody writes it.
 *
 * @param format one of {@link LogFiles#writable()}
 * @param left channels that this logger does not write
 */
public record OpenForm(String format, Set<Channel> left) implements LogForm {
    private static final Set<Channel> ACCURACIES =
            EnumSet.of(
                    Channel.HORIZONTAL_ACCURACY,
                    Channel.VERTICAL_ACCURACY,
                    Channel.SPEED_ACCURACY,
                    Channel.FIX_TYPE);

    public OpenForm {
        left = Set.copyOf(left);
    }

    /** All that the format can hold. */
    public static OpenForm of(String format) {
        return new OpenForm(format, EnumSet.of(Channel.FIX_TYPE));
    }

    /** Without what the receiver says of its own accuracy. */
    public static OpenForm plain(String format) {
        return new OpenForm(format, ACCURACIES);
    }

    @Override
    public String text(Track track) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            LogFiles.write(Resolution.applied(track, left), format, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInputException e) {
            throw new IllegalArgumentException(format + " can't hold this log", e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    @Override
    public Optional<String> columnMap() {
        return Optional.empty();
    }
}
