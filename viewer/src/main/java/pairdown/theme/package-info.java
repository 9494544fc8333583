/**
 * How everything drawn looks: colours for sunlight and for a dark hangar ({@code Palette}), sizes
 * true to the millimetre ({@code Sizes}), and the shapes that say again what a colour says ({@code
 * Marker}). Shared by panels and scene.
 */
@NullMarked
package pairdown.theme;

import org.jspecify.annotations.NullMarked;
