/**
 * Time and what is to be seen at it: playing and scrubbing ({@code Playback}), what the person has
 * chosen ({@code ViewState}), and all that is drawn at an instant as plain data ({@code Moment}). A
 * second attempt is laid over the first by {@code Alignment}. Nothing here draws.
 */
@NullMarked
package pairdown.replay;

import org.jspecify.annotations.NullMarked;
