package pairdown.track;

/**
 * A stretch of a log that holds one flight.
 *
 * @param fromRow first row
 * @param toRow the row after the last
 */
public record Flight(int fromRow, int toRow) {
    public Flight {
        if (fromRow < 0 || toRow <= fromRow) {
            throw new IllegalArgumentException("no rows from " + fromRow + " to " + toRow);
        }
    }
}
