/** Simulated logs as files, in the forms and with the damage that files come home with. */
@NullMarked
package pairdown.demo.logfile;

import org.jspecify.annotations.NullMarked;
