/**
 * The command line: one class per verb. The only place that prints and that turns trouble into
 * words.
 */
@NullMarked
package pairdown.app;

import org.jspecify.annotations.NullMarked;
