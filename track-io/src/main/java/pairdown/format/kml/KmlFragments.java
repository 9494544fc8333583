package pairdown.format.kml;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Pattern;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;

/**
 * Reads the tracks of a KML file that is no longer XML. Whole instants and coordinates are taken
 * in, and where anything but blanks and sound elements stands between two of them, something is
 * lost there: how much can't be told. What comes before the first loss is paired from the track's
 * beginning, what comes after the last one from its end.
 */
final class KmlFragments {
    private static final int LONGEST = 200;
    private static final Pattern WHEN = Pattern.compile("[-+0-9:.TZ\\s]*");
    private static final Pattern COORD = Pattern.compile("[-+0-9.eE,\\s]*");

    private final InputStream in;
    private final Rows rows;
    private final Notes notes;
    private final StringBuilder tag = new StringBuilder();
    private final StringBuilder text = new StringBuilder();
    private long line = 1;
    private boolean afterReturn;
    private boolean damaged;
    private boolean lossBefore;
    private String opened = "";

    KmlFragments(InputStream in, Rows rows, Notes notes) {
        this.in = new BufferedInputStream(in, 1 << 16);
        this.rows = rows;
        this.notes = notes;
    }

    /**
     * Reads the tracks behind the first ones.
     *
     * @param known tracks at the file's begin that were read before
     * @return how many fixes they gave
     */
    int read(int known) throws IOException {
        int before = rows.size();
        int begun = 0;
        DamagedTrack track = new DamagedTrack(rows, notes);
        boolean inside = false;
        while (nextTag()) {
            String name = localName();
            if (name.equals("Track")) {
                end(track, inside, false);
                track = new DamagedTrack(rows, notes);
                inside = ++begun > known;
                damaged = false;
            } else if (name.equals("/Track")) {
                damaged |= !isSound(name);
                end(track, inside, true);
                inside = false;
            } else {
                item(name, track);
            }
            opened = name;
        }
        end(track, inside, false);
        return rows.size() - before;
    }

    private void item(String name, DamagedTrack track) {
        if (name.equals("/when") && opened.equals("when") && isWhole(WHEN)) {
            track.when(text.toString(), line, lossBefore);
        } else if (name.equals("/coord") && opened.equals("coord") && isWhole(COORD)) {
            track.coordinate(text.toString(), lossBefore);
        } else {
            damaged |= !isSound(name);
            lossBefore = damaged;
            if (name.equals("when") || name.equals("coord")) {
                damaged = false;
            } else if (name.equals("when/")) {
                track.when("", line, takeDamage());
            } else if (name.equals("coord/")) {
                track.coordinate("", takeDamage());
            }
        }
    }

    private void end(DamagedTrack track, boolean inside, boolean whole) {
        if (inside) {
            track.emit(!whole || damaged);
        }
    }

    private boolean takeDamage() {
        boolean was = damaged;
        damaged = false;
        return was;
    }

    /** Whether the text just read is sound and looks like what it should be. */
    private boolean isWhole(Pattern form) {
        return !damaged && form.matcher(text).matches();
    }

    /** Blanks between elements, and short text in an element that ends as it began. */
    private boolean isSound(String name) {
        boolean half = name.equals("/when") || name.equals("/coord");
        boolean open = opened.equals("when") || opened.equals("coord");
        boolean ends = name.equals("/" + opened);
        return !half
                && !open
                && (ends || text.toString().isBlank())
                && name.matches("/?\\w+/?|[!?].*");
    }

    private String localName() {
        String name = tag.toString();
        int blank = name.indexOf(' ');
        name = blank < 0 ? name : name.substring(0, blank);
        int colon = name.indexOf(':');
        return colon < 0 ? name : (name.startsWith("/") ? "/" : "") + name.substring(colon + 1);
    }

    /** Moves behind the next tag, the text before it in {@link #text}; false at the end. */
    private boolean nextTag() throws IOException {
        text.setLength(0);
        tag.setLength(0);
        for (int b = byteRead(); b != '<'; b = byteRead()) {
            if (b < 0) {
                return false;
            }
            append(text, b);
        }
        for (int b = byteRead(); b != '>'; b = byteRead()) {
            if (b < 0) {
                return false;
            }
            append(tag, b);
            if (b == '<') {
                tag.setLength(0);
                opened = "";
                damaged = true;
            }
        }
        return true;
    }

    private void append(StringBuilder to, int b) {
        boolean letter = (b >= ' ' && b < 127) || b == '\n' || b == '\r' || b == '\t';
        if (to.length() < LONGEST && letter) {
            to.append((char) b);
        } else {
            damaged = true;
        }
    }

    private int byteRead() throws IOException {
        int b = in.read();
        line += b == '\r' || (b == '\n' && !afterReturn) ? 1 : 0;
        afterReturn = b == '\r';
        return b;
    }
}
