/**
 * What of an attempt is handed to others: tracks in open formats for any globe, and archives, whole
 * or stripped of place, date and names. How a file of a format looks is track-io's business.
 */
@NullMarked
package pairdown.export;

import org.jspecify.annotations.NullMarked;
