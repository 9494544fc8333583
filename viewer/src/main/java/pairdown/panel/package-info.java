/**
 * The flat part of the window: transport, strips, read-outs and side panels. Everything is drawn
 * from the moment shown, the person's choices and the theme through the canvas's verbs, and gives
 * back what can be pressed. Panels hold no state and carry out nothing; {@code Operator} does.
 */
@NullMarked
package pairdown.panel;

import org.jspecify.annotations.NullMarked;
