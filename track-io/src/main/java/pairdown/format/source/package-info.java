/**
 * What every reader shares: opening a log whatever it is wrapped in, lines and numbers as bytes,
 * and the checks, counts and repairs that are the same in all formats. Which format means what is
 * left to the packages beside this one.
 */
@NullMarked
package pairdown.format.source;

import org.jspecify.annotations.NullMarked;
