/**
 * Flies an attempt in a model of air, machines and people, and tells what was true: the demo season
 * is made from it, and every estimator is tested against it. It knows no receivers and no clocks.
 *
 * <p>Deterministic by seed: transcendental functions are those of Hipparchus' {@code FastMath},
 * made of exact operations alone, random numbers those of {@link java.util.Random}, whose algorithm
 * is specified; what comes from the standard atmosphere is tabulated once and rounded to single
 * precision, as is what comes from airspeed formulas.
 *
 * <p>Coefficients without a source beside them are common practice, no published source.
 */
@NullMarked
package pairdown.demo.physics;

import org.jspecify.annotations.NullMarked;
