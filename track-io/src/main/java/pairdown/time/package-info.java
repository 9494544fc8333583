/** Clocks and calendars: GPS weeks, leap seconds, and the axis on which an attempt is computed. */
@NullMarked
package pairdown.time;

import org.jspecify.annotations.NullMarked;
