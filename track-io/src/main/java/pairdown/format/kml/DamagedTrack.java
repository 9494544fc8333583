package pairdown.format.kml;

import java.util.BitSet;
import pairdown.format.source.Longs;
import pairdown.format.source.LossyList;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;

/**
 * A track of which something is lost: its instants and coordinates as they were found, and between
 * which of them the losses lie. Where they come by turns, each pair that stands alone is one fix.
 * In two lists, as many as are whole in both before the first loss are paired from the beginning,
 * and after the last loss from the end.
 */
final class DamagedTrack {
    private enum Found {
        NOTHING,
        WHEN,
        COORD
    }

    private final KmlTrack track;
    private final Notes notes;
    private final LossyList whens = new LossyList();
    private final LossyList coordinates = new LossyList();
    private final Longs whenLines = new Longs();
    private final Longs whenBeside = new Longs();
    private final BitSet inList = new BitSet();
    private Found last = Found.NOTHING;
    private boolean whenInList;
    private boolean byTurns;

    DamagedTrack(Rows rows, Notes notes) {
        this.track = new KmlTrack(rows, notes);
        this.notes = notes;
    }

    /**
     * An instant.
     *
     * @param lossBefore whether something is lost between it and what was found before
     */
    void when(String text, long line, boolean lossBefore) {
        if (lossBefore) {
            whens.lose();
            if (last == Found.COORD) {
                coordinates.lose();
            }
        }
        byTurns |= !lossBefore && last == Found.COORD;
        whenInList = !lossBefore && last == Found.WHEN;
        track.when(text, line);
        whenLines.add(line);
        whens.add();
        last = Found.WHEN;
    }

    /** A coordinate; for the loss see {@link #when}. */
    void coordinate(String text, boolean lossBefore) {
        if (lossBefore) {
            coordinates.lose();
            if (last != Found.COORD) {
                whens.lose();
            }
        }
        whenBeside.add(!lossBefore && last == Found.WHEN && !whenInList ? whens.size() - 1 : -1);
        if (!lossBefore && last == Found.COORD) {
            inList.set(coordinates.size() - 1, coordinates.size() + 1);
        }
        track.coordinate(text);
        coordinates.add();
        last = Found.COORD;
    }

    /** Makes rows of what can be paired; what can't is counted. */
    void emit(boolean lossAtEnd) {
        if (lossAtEnd) {
            coordinates.lose();
            if (last != Found.COORD) {
                whens.lose();
            }
        }
        if (byTurns) {
            besideEachOther();
        } else if (whens.isWhole() && coordinates.isWhole()) {
            track.emit();
        } else {
            fromBothEnds();
        }
    }

    private void besideEachOther() {
        int paired = 0;
        for (int i = 0; i < whenBeside.size(); i++) {
            int when = (int) whenBeside.get(i);
            if (when >= 0 && !inList.get(i)) {
                track.pair(i, when);
                paired++;
            }
        }
        notPaired(0, Math.max(whens.size(), coordinates.size()) - paired);
    }

    private void fromBothEnds() {
        LossyList.Paired paired = LossyList.pair(coordinates, whens, track::pair);
        notPaired(
                paired.front(),
                Math.max(whens.size(), coordinates.size()) - paired.front() - paired.tail());
    }

    private void notPaired(int firstWhen, int count) {
        for (int i = 0; i < count; i++) {
            int when = Math.min(firstWhen + i, whenLines.size() - 1);
            notes.skip(
                    when < 0 ? 0 : whenLines.get(when),
                    "time or coordinate whose other half is lost");
        }
    }
}
