/**
 * Talking to the graphics card: a window or a picture without a display, programs, meshes, lines
 * and targets. The only package that imports LWJGL; it knows nothing of attempts. What is drawn is
 * the business of {@code scene} and {@code panel}.
 */
@NullMarked
package pairdown.gl;

import org.jspecify.annotations.NullMarked;
