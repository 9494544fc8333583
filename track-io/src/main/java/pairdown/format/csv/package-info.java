/** CSV logs by plain header words or a column map: reader and writer. */
@NullMarked
package pairdown.format.csv;

import org.jspecify.annotations.NullMarked;
