/**
 * Where the scene is seen from: vantage points of the trade, the free orbit, and the eased way from
 * one to the next. A pose is a pure function of the moment and the view; it never lies under the
 * ground.
 */
@NullMarked
package pairdown.camera;

import org.jspecify.annotations.NullMarked;
