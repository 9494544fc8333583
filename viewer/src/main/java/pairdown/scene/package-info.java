/**
 * Everything seen in the 3D view, one class for each thing drawn: ground, paths, machines, slots
 * and gates, vectors, limits, labels. Each reads the moment and the view and calls drawing verbs of
 * {@code gl}; none remembers the last frame.
 */
@NullMarked
package pairdown.scene;

import org.jspecify.annotations.NullMarked;
