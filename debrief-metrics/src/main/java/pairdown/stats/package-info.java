/**
 * Statistics with their sources: proportions, survival, bootstrap, exact tables, robust lines; thin
 * over libraries. An interval is made from counts or from the sample itself, and where there is too
 * little to say anything it is absent.
 */
@NullMarked
package pairdown.stats;

import org.jspecify.annotations.NullMarked;
