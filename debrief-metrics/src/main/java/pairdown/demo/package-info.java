/** A simulated season with known truth: air, machines, receivers and clocks of an invented team. */
@NullMarked
package pairdown.demo;

import org.jspecify.annotations.NullMarked;
