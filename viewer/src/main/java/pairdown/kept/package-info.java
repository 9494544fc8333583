/**
 * Debriefs kept with the user so that an attempt opened again is shown at once. Whether a kept one
 * still counts is told by the content of what it was made from and by the program's own code;
 * making debriefs is left to others.
 */
@NullMarked
package pairdown.kept;

import org.jspecify.annotations.NullMarked;
