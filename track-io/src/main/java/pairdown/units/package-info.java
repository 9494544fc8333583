/**
 * Units of measurement, quantities typed by people, and values with their uncertainty. The only
 * place with a conversion factor; everything else computes in SI and says the unit in its names.
 */
@NullMarked
package pairdown.units;

import org.jspecify.annotations.NullMarked;
