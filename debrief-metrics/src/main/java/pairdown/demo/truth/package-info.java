/**
 * What was true in a simulated attempt: motion, controls, air, contacts and tail-control episodes,
 * for tests to measure errors against. Nothing that debriefs reads it.
 */
@NullMarked
package pairdown.demo.truth;

import org.jspecify.annotations.NullMarked;
