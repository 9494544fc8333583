/**
 * What receivers, clocks and recorders make of what was true: the error model of a simulated
 * attempt's logs. It knows the truth and writes tracks; nothing that debriefs reads it.
 */
@NullMarked
package pairdown.demo.receiver;

import org.jspecify.annotations.NullMarked;
