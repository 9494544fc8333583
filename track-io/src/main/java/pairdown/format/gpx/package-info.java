/** GPX 1.1: reader and writer. */
@NullMarked
package pairdown.format.gpx;

import org.jspecify.annotations.NullMarked;
