/** KML {@code gx:Track} and {@code gx:MultiTrack}: reader and writer. */
@NullMarked
package pairdown.format.kml;

import org.jspecify.annotations.NullMarked;
