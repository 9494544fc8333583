package pairdown.words;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The texts of the surface in the reader's language. They stand in {@code words.properties}; a
 * translation is one more file beside it, named {@code words_de.properties} and so on. Reading a
 * text does not allocate.
 */
public final class Words {
    private static final String BUNDLE = "pairdown.words.words";

    private final Locale locale;
    private final String language;
    private final Map<String, String> texts;

    private Words(Locale locale, String language, Map<String, String> texts) {
        this.locale = locale;
        this.language = language;
        this.texts = texts;
    }

    /** The texts of a locale, in English where there is no translation. */
    public static Words of(Locale locale) {
        ResourceBundle.Control noDefault =
                ResourceBundle.Control.getNoFallbackControl(
                        ResourceBundle.Control.FORMAT_PROPERTIES);
        ResourceBundle bundle = ResourceBundle.getBundle(BUNDLE, locale, noDefault);
        Map<String, String> texts = new HashMap<>();
        bundle.keySet().forEach(key -> texts.put(key, bundle.getString(key)));
        String found = bundle.getLocale().getLanguage();
        return new Words(locale, found.isEmpty() ? "en" : found, texts);
    }

    /**
     * Texts from elsewhere.
     *
     * @param locale of the texts and of the numbers beside them
     */
    public static Words of(Locale locale, Map<String, String> texts) {
        return new Words(locale, locale.getLanguage(), new HashMap<>(texts));
    }

    /** What numbers are formatted for. */
    public Locale locale() {
        return locale;
    }

    /** The language that the texts are in, by its two letters. */
    public String language() {
        return language;
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

    /**
     * The texts of several things named in one breath: {@code "wind", "climb-headings+winds-aloft"}
     * is those of {@code wind.climb-headings} and {@code wind.winds-aloft}. A thing without a text
     * keeps its name.
     */
    public String each(String kind, String names) {
        return Arrays.stream(names.split("\\+", -1))
                .map(name -> texts.getOrDefault(kind + "." + name, name))
                .collect(Collectors.joining(", "));
    }

    /** All keys, for checks. */
    public Set<String> keys() {
        return Set.copyOf(texts.keySet());
    }
}
