/** Pictures and films of the replay, made with no display: the same scene as in the window. */
@NullMarked
package pairdown.film;

import org.jspecify.annotations.NullMarked;
