package pairdown.app;

import java.util.IllformedLocaleException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pairdown.words.Words;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The language of texts and the look of numbers. */
final class LocaleOption {
    @Option(
            names = "--locale",
            paramLabel = "TAG",
            converter = Converter.class,
            description = "numbers and texts for: de, fr-CA … (default: the system's)")
    private @Nullable Locale locale;

    Locale locale() {
        Locale chosen = locale;
        return chosen == null ? Locale.getDefault() : chosen;
    }

    Words words() {
        return Words.of(locale());
    }

    /** Reads a language tag (IETF BCP 47). */
    static final class Converter implements ITypeConverter<Locale> {
        @Override
        public Locale convert(String tag) {
            try {
                return new Locale.Builder().setLanguageTag(tag).build();
            } catch (IllformedLocaleException e) {
                throw new TypeConversionException(
                        "'" + tag + "' is no language tag such as de or fr-CA");
            }
        }
    }
}
