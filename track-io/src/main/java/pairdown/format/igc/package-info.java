/** The FAI/IGC format of flight recorders: reader and writer. */
@NullMarked
package pairdown.format.igc;

import org.jspecify.annotations.NullMarked;
