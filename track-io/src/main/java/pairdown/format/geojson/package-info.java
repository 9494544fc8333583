/** GeoJSON lines with coordinate times: reader and writer. */
@NullMarked
package pairdown.format.geojson;

import org.jspecify.annotations.NullMarked;
