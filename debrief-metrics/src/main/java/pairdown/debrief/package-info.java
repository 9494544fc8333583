/** The whole of what was found out about one attempt, the steps that find it out, and its files. */
@NullMarked
package pairdown.debrief;

import org.jspecify.annotations.NullMarked;
