package pairdown.format.csv;

import java.util.List;
import pairdown.track.HeightDatum;

/**
 * All that must be known of a CSV log to read its rows.
 *
 * @param firstDataLine the line its rows begin with, from 1
 * @param width cells of the header
 * @param hemispheres where the letters of the degrees stand
 * @param signOpen whether the header leaves open whether the vertical speed counts up or down
 * @param warnings what was assumed
 */
record Layout(
        Dialect dialect,
        long firstDataLine,
        int width,
        TimeColumn time,
        List<ValueColumn> columns,
        Hemispheres hemispheres,
        HeightDatum datum,
        boolean signOpen,
        List<String> warnings) {
    Layout {
        columns = List.copyOf(columns);
        warnings = List.copyOf(warnings);
    }
}
