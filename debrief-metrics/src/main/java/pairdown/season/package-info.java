/** What many attempts say together: step-down, repeatability, envelope. */
@NullMarked
package pairdown.season;

import org.jspecify.annotations.NullMarked;
