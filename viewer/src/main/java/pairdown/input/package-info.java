/**
 * What a person can do ({@code Action}), on which key ({@code Keymap}), and what lies under the
 * pointer ({@code HitAreas}, {@code Pointer}). It turns window events into actions and carries none
 * of them out.
 */
@NullMarked
package pairdown.input;

import org.jspecify.annotations.NullMarked;
