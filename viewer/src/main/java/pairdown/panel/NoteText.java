package pairdown.panel;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A mark's note as typed: after the word {@code video:} stands the file and frame that shows it.
 */
record NoteText(String note, Optional<String> video) {
    private static final Pattern VIDEO =
            Pattern.compile("(.*?)\\bvideo:\\s*(.+)", Pattern.CASE_INSENSITIVE);

    static NoteText of(String typed) {
        Matcher m = VIDEO.matcher(typed.strip());
        return m.matches()
                ? new NoteText(m.group(1).strip(), Optional.of(m.group(2).strip()))
                : new NoteText(typed.strip(), Optional.empty());
    }
}
