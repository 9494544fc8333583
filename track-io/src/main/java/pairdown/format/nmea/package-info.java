/** NMEA 0183 sentences of any talker: reader and writer. */
@NullMarked
package pairdown.format.nmea;

import org.jspecify.annotations.NullMarked;
