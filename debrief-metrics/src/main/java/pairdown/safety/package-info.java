/** Limits held against what was flown, each finding with its value, limit and sigma. */
@NullMarked
package pairdown.safety;

import org.jspecify.annotations.NullMarked;
