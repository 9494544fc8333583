/**
 * From fixes to motion: the smoother, and trajectories that give position, velocity and their
 * uncertainty at any instant, in the attempt's east-north-up frame.
 */
@NullMarked
package pairdown.motion;

import org.jspecify.annotations.NullMarked;
