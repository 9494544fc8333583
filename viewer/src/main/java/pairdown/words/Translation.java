package pairdown.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pairdown.track.Skipped;

/**
 * Puts sentences of results into the reader's language. What reads logs and measures knows no
 * reader: it says in English what it noticed, and so it stands in the result files. Each such
 * sentence is a text of the bundle, its key led by {@code said.}, with places for names and
 * numbers; a sentence is known by its English, and told again by the reader's text of the same key.
 * One that the bundle does not know stays as it is.
 */
public final class Translation {
    private static final String LED_BY = "said.";
    private static final Pattern PLACE = Pattern.compile("\\{\\d}");
    private static final Pattern DECIMAL = Pattern.compile("[+\\-−]?\\d+\\.\\d+");

    /** A hyphen that files have for a minus: not one within a word, a date or a range. */
    private static final Pattern HYPHEN = Pattern.compile("(?<![\\w.,:;)])-(?=\\d)");

    /** What parts of one sentence stand between, the strongest first. */
    private static final List<String> BETWEEN = List.of("; ", ", ");

    private static final List<Known> KNOWN = known(Words.of(Locale.ENGLISH));

    private final Words words;
    private final String point;

    /** Whether the reader's texts are the English ones: then nothing need be sought. */
    private final boolean isSame;

    /** Into the language of these texts, numbers as their locale writes them. */
    public Translation(Words words) {
        this.words = words;
        this.point = String.format(words.locale(), "%.1f", 0.0).substring(1, 2);
        this.isSame = point.equals(".") && KNOWN.stream().allMatch(k -> k.isTextOf(words));
    }

    /**
     * A text of the bundle as a pattern.
     *
     * @param order of the places as the English has them
     */
    private record Known(
            String key, String text, Pattern english, List<Integer> order, int letters) {
        boolean isTextOf(Words words) {
            return words.has(key) && words.get(key).equals(text);
        }
    }

    private static List<Known> known(Words english) {
        return english.keys().stream()
                .filter(key -> key.startsWith(LED_BY))
                .map(key -> known(key, english.get(key)))
                .sorted(Comparator.comparingInt(Known::letters).reversed())
                .toList();
    }

    private static Known known(String key, String text) {
        String pattern =
                Arrays.stream(PLACE.split(text, -1))
                        .map(Pattern::quote)
                        .collect(Collectors.joining("(.*?)"));
        List<Integer> order = new ArrayList<>();
        Matcher place = PLACE.matcher(text);
        while (place.find()) {
            order.add(text.charAt(place.start() + 1) - '0');
        }
        int letters = PLACE.matcher(text).replaceAll("").length();
        return new Known(key, text, Pattern.compile(pattern, Pattern.DOTALL), order, letters);
    }

    /** Whether the bundle knows a sentence, or each part of it. */
    public static boolean knows(String english) {
        return match(english).isPresent()
                || BETWEEN.stream()
                        .anyMatch(
                                b ->
                                        english.contains(b)
                                                && Arrays.stream(english.split(b, -1))
                                                        .allMatch(Translation::knows));
    }

    /** The first record of a log that was not used, and why; empty where all were. */
    public Optional<String> lost(List<Skipped> skipped) {
        return skipped.stream()
                .findFirst()
                .map(
                        first ->
                                first.line() > 0
                                        ? words.get(
                                                "lost.line",
                                                String.valueOf(first.line()),
                                                of(first.reason()))
                                        : words.get("lost.record", of(first.reason())));
    }

    /** The sentence in the reader's language, its numbers with the sign that print has. */
    public String of(String english) {
        return HYPHEN.matcher(told(english)).replaceAll(String.valueOf(Line.MINUS));
    }

    private String told(String english) {
        if (isSame) {
            return english;
        }
        Optional<Match> match = match(english);
        if (match.filter(m -> words.has(m.key())).isPresent()) {
            return words.get(match.get().key(), values(match.get()));
        }
        for (String between : BETWEEN) {
            if (english.contains(between)) {
                return Arrays.stream(english.split(between, -1))
                        .map(this::of)
                        .collect(Collectors.joining(between));
            }
        }
        return DECIMAL.matcher(english).matches() ? english.replace(".", point) : english;
    }

    public List<String> of(List<String> english) {
        return english.stream().map(this::of).toList();
    }

    private String[] values(Match match) {
        return match.values().stream().map(this::of).toArray(String[]::new);
    }

    private record Match(String key, List<String> values) {}

    private static Optional<Match> match(String english) {
        for (Known known : KNOWN) {
            Matcher m = known.english().matcher(english);
            if (m.matches()) {
                String[] values = new String[known.order().size()];
                for (int i = 0; i < values.length; i++) {
                    values[known.order().get(i)] = m.group(i + 1);
                }
                return Optional.of(new Match(known.key(), List.of(values)));
            }
        }
        return Optional.empty();
    }
}
