package pairdown.scene;

/**
 * Terrain heights on a grid of latitude and longitude (WGS 84), above the EGM96 geoid as both kinds
 * of file have them.
 */
interface ElevationTile {
    /** Height above mean sea level (m), NaN outside the tile and in its voids. */
    double height_m(double latitude_deg, double longitude_deg);
}
