/**
 * The report a team takes away: one self-contained page and its PDF, made from a debrief alone.
 * Charts are drawn by a chart library as SVG; what each figure means is said in words beside it.
 */
@NullMarked
package pairdown.report;

import org.jspecify.annotations.NullMarked;
