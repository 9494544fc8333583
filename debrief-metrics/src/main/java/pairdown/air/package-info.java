/** The air mass: wind by layer, airspeeds, and motion through the air. */
@NullMarked
package pairdown.air;

import org.jspecify.annotations.NullMarked;
