package pairdown.format.csv;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.units.LoggedUnit;

/**
 * A column's heading taken apart: its words in lower case and in order, and its unit where it has
 * one, in parentheses or brackets, after an underscore, or as a last word.
 *
 * @param text as the file has it
 */
record Heading(String text, List<String> words, Optional<LoggedUnit> unit) {
    private static final Pattern BRACKETED = Pattern.compile("[(\\[{<]([^)\\]}>]*)[)\\]}>]");
    private static final Pattern CAMEL =
            Pattern.compile("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");

    private static final Pattern ZONE =
            Pattern.compile("([A-Z][A-Za-z]+/[A-Za-z_/]+)|(?:UTC|GMT)[+-](?:1[0-4]|0?\\d)(?!\\d)");

    private static final Set<String> REGIONS = ZoneId.getAvailableZoneIds();

    /** The longest cell that is still read as a heading: a unit is looked for at every blank. */
    private static final int LONGEST = 120;

    static Heading of(String text) {
        if (text.length() > LONGEST) {
            return new Heading(text, List.of(), Optional.empty());
        }
        StringBuilder rest = new StringBuilder();
        Optional<LoggedUnit> unit = Optional.empty();
        Matcher bracket = BRACKETED.matcher(text);
        int last = 0;
        while (bracket.find()) {
            rest.append(text, last, bracket.start()).append(' ');
            Optional<LoggedUnit> inside = LoggedUnit.of(bracket.group(1));
            if (inside.isPresent()) {
                unit = inside;
            } else {
                rest.append(bracket.group(1)).append(' ');
            }
            last = bracket.end();
        }
        rest.append(text.substring(last));
        if (unit.isEmpty()) {
            return withTrailingUnit(text, rest.toString());
        }
        return new Heading(text, words(rest.toString()), unit);
    }

    /** The time zone the heading names: a region such as {@code Africa/Windhoek}, or UTC+2. */
    Optional<ZoneId> zone() {
        return zoneText().map(ZoneId::of);
    }

    /** The words without those of the zone. */
    List<String> wordsBesideZone() {
        return zoneText().map(zone -> words(text.replace(zone, " "))).orElse(words);
    }

    private Optional<String> zoneText() {
        if (words.isEmpty()
                || (text.indexOf('/') < 0 && !text.contains("UTC") && !text.contains("GMT"))) {
            return Optional.empty();
        }
        return ZONE.matcher(text)
                .results()
                .filter(m -> m.group(1) == null || REGIONS.contains(m.group(1)))
                .map(MatchResult::group)
                .findFirst();
    }

    /** The same column with a unit from a row of units, unless its own heading has one. */
    Heading or(Optional<LoggedUnit> other) {
        return unit.isPresent() ? this : new Heading(text, words, other);
    }

    /**
     * The longest ending after a blank, underscore or comma that spells a unit, if words are left.
     */
    private static Heading withTrailingUnit(String text, String rest) {
        String plain = rest.strip();
        for (int i = 1; i < plain.length() - 1; i++) {
            char c = plain.charAt(i);
            if (c == '_' || c == ' ' || c == ',' || c == ':') {
                String ending = plain.substring(i + 1).replace('_', ' ').strip();
                Optional<LoggedUnit> unit = LoggedUnit.of(ending);
                if (unit.isPresent() && !isWord(ending)) {
                    return new Heading(text, words(plain.substring(0, i)), unit);
                }
            }
        }
        return new Heading(text, words(plain), Optional.empty());
    }

    /** Endings that are words of a heading before they are units: "UTC seconds" is no unit. */
    private static boolean isWord(String ending) {
        return ending.length() > 3 && ending.toLowerCase(Locale.ROOT).startsWith("second");
    }

    /** The words of a text in lower case, in order. */
    static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        for (String piece : text.split("[^\\p{L}\\p{N}%\u00b0]+", -1)) {
            CAMEL.splitAsStream(piece)
                    .filter(word -> !word.isEmpty())
                    .forEach(word -> words.add(word.toLowerCase(Locale.ROOT)));
        }
        return words;
    }
}
