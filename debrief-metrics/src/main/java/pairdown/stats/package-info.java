/** Statistics with their sources: proportions, survival, bootstrap; thin over libraries. */
@NullMarked
package pairdown.stats;

import org.jspecify.annotations.NullMarked;
