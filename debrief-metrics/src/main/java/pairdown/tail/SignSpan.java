package pairdown.tail;

/** A stretch of the grid over which one sign shows. */
record SignSpan(Episode.Sign sign, int from, int to) {}
