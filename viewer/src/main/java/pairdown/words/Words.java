package pairdown.words;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;

/**
 * The texts of the surface in the reader's language. They stand in {@code words.properties}; a
 * translation is one more file beside it, named {@code words_de.properties} and so on. Reading a
 * text does not allocate.
 */
public final class Words {
    private static final String BUNDLE = "pairdown.words.words";

    private final Locale locale;
    private final Map<String, String> texts = new HashMap<>();

    private Words(Locale locale, ResourceBundle bundle) {
        this.locale = locale;
        bundle.keySet().forEach(key -> texts.put(key, bundle.getString(key)));
    }

    /** The texts of a locale, in English where there is no translation. */
    public static Words of(Locale locale) {
        ResourceBundle.Control noDefault =
                ResourceBundle.Control.getNoFallbackControl(
                        ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Words(locale, ResourceBundle.getBundle(BUNDLE, locale, noDefault));
    }

    public Locale locale() {
        return locale;
    }

    /**
     * A text.
     *
     * @throws IllegalArgumentException if there is no text of that key
     */
    public String get(String key) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalArgumentException("no text for '" + key + "'");
        }
        return text;
    }

    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** A text with values put in place of {@code {0}}, {@code {1}} …; numbers come ready-made. */
    public String get(String key, String... values) {
        String text = get(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", values[i]);
        }
        return text;
    }

    /** All keys, for checks. */
    public Set<String> keys() {
        return Set.copyOf(texts.keySet());
    }
}
