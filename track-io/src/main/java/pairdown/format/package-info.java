/** Reads logs of every supported format, found by content, and writes open formats. */
@NullMarked
package pairdown.format;

import org.jspecify.annotations.NullMarked;
