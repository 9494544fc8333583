package pairdown.app;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A size typed as {@code 1280x720}. */
record PictureSize(int width_px, int height_px) {
    static final PictureSize DEFAULT = new PictureSize(1280, 720);

    /** What cards and film formats take. */
    private static final int LEAST_PX = 16;

    private static final int MOST_PX = 8192;
    private static final Pattern TYPED = Pattern.compile("(\\d{1,5})[x×](\\d{1,5})");

    /** Reads it from the command line. */
    static final class Converter implements ITypeConverter<PictureSize> {
        @Override
        public PictureSize convert(String value) {
            Matcher typed = TYPED.matcher(value);
            if (!typed.matches()) {
                throw new TypeConversionException(
                        "'" + value + "' is no size; write it like 1280x720");
            }
            int w = Integer.parseInt(typed.group(1));
            int h = Integer.parseInt(typed.group(2));
            if (Math.min(w, h) < LEAST_PX || Math.max(w, h) > MOST_PX) {
                throw new TypeConversionException(
                        "'" + value + "' is outside " + LEAST_PX + " to " + MOST_PX + " pixels");
            }
            return new PictureSize(w, h);
        }
    }
}
