package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.plugins.tiff.GeoTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.plugins.tiff.TIFFTag;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.film.Studio;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.replay.SyntheticDebrief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.vector.Vec3;
import pairdown.words.Figures;
import pairdown.words.Units;

/** Tiles written here by what their formats say, round the made-up attempt at 22.5° S 15.2° E. */
class TerrainTest {
    private static final Debrief DEBRIEF = new SyntheticDebrief().build();
    private static final int SIDE = 1201;
    private static final int WIDTH = 300;
    private static final int HEIGHT = 200;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    /** Height above mean sea level that the tiles are made of: a ridge along 15.18° E. */
    private static double ridge_m(double longitude_deg) {
        return 700 + 600 * Math.max(0, 1 - Math.abs(longitude_deg - 15.18) / 0.01);
    }

    /** SRTM: rows from the north, big-endian metres, corners of the degree included. */
    private static void writeHgt(Path file, int side) throws IOException {
        ByteBuffer samples = ByteBuffer.allocate(side * side * 2);
        for (int i = 0; i < side * side; i++) {
            samples.putShort((short) Math.round(ridge_m(15 + (double) (i % side) / (side - 1))));
        }
        Files.write(file, samples.array());
    }

    private double terrain_m(Relief relief, double latitude_deg, double longitude_deg) {
        LocalFrame frame = DEBRIEF.frame();
        Vec3 place = frame.toEnu(Geodetic.ofDegrees(latitude_deg, longitude_deg, 0));
        double up = relief.up_m(place.x(), place.y());
        Geodetic there = frame.toGeodetic(new Vec3(place.x(), place.y(), up));
        return there.height_m() - Geoid.egm96().undulation_m(latitude_deg, longitude_deg);
    }

    private void hasRidge(Relief relief) {
        // Between the samples of the relief a slope of 600 m in 1 km is cut by some metres; a
        // height carried straight up instead of along the vertical adds centimetres.
        assertEquals(1300, terrain_m(relief, -22.5, 15.18), 25);
        assertEquals(1000, terrain_m(relief, -22.5, 15.185), 8);
        assertEquals(700, terrain_m(relief, -22.49, 15.20), 2);
    }

    @Test
    void anSrtmTileGivesTheReliefItHolds() throws IOException {
        writeHgt(folder.resolve("S23E015.hgt"), SIDE);
        Terrain terrain = Terrain.of(folder, DEBRIEF);
        assertTrue(terrain.complaints().isEmpty(), terrain.complaints()::toString);
        hasRidge(terrain.relief().orElseThrow());
    }

    @Test
    void aGeoTiffInLatitudeAndLongitudeGivesTheReliefItHolds() throws IOException {
        for (int samples : new int[] {DataBuffer.TYPE_SHORT, DataBuffer.TYPE_FLOAT}) {
            writeTiff(folder.resolve("tile.tif"), 2, samples);
            Terrain terrain = Terrain.of(folder, DEBRIEF);
            assertTrue(terrain.complaints().isEmpty(), terrain.complaints()::toString);
            hasRidge(terrain.relief().orElseThrow());
        }
    }

    /**
     * OGC GeoTIFF 1.1: pixel scale, tie point of the north-west corner, keys 1024 (model type) and
     * 1025 (raster type, pixel is area).
     */
    private static void writeTiff(Path file, int modelType, int samples) throws IOException {
        int columns = 600;
        int rows = 400;
        double step = 0.0005;
        double west = 15.05;
        double north = -22.4;
        ImageTypeSpecifier type =
                ImageTypeSpecifier.createInterleaved(
                        ColorSpace.getInstance(ColorSpace.CS_GRAY),
                        new int[] {0},
                        samples,
                        false,
                        false);
        BufferedImage image = type.createBufferedImage(columns, rows);
        for (int y = 0; y < rows; y++) {
            for (int x = 0; x < columns; x++) {
                double height = ridge_m(west + (x + 0.5) * step);
                image.getRaster().setSample(x, y, 0, (float) height);
            }
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            TIFFDirectory tags =
                    TIFFDirectory.createFromMetadata(
                            writer.getDefaultImageMetadata(type, writer.getDefaultWriteParam()));
            GeoTIFFTagSet known = GeoTIFFTagSet.getInstance();
            tags.addTIFFField(
                    new TIFFField(
                            known.getTag(GeoTIFFTagSet.TAG_MODEL_PIXEL_SCALE),
                            TIFFTag.TIFF_DOUBLE,
                            3,
                            new double[] {step, step, 0}));
            tags.addTIFFField(
                    new TIFFField(
                            known.getTag(GeoTIFFTagSet.TAG_MODEL_TIE_POINT),
                            TIFFTag.TIFF_DOUBLE,
                            6,
                            new double[] {0, 0, 0, west, north, 0}));
            char[] keys = {1, 1, 0, 2, 1024, 0, 1, (char) modelType, 1025, 0, 1, 1};
            tags.addTIFFField(
                    new TIFFField(
                            known.getTag(GeoTIFFTagSet.TAG_GEO_KEY_DIRECTORY),
                            TIFFTag.TIFF_SHORT,
                            keys.length,
                            keys));
            writer.write(new IIOImage(image, null, tags.getAsMetadata()));
        } finally {
            writer.dispose();
        }
    }

    @Test
    void aProjectedGeoTiffIsRefusedInWords() throws IOException {
        writeTiff(folder.resolve("utm.tif"), 1, DataBuffer.TYPE_SHORT);
        refused("utm.tif", "not latitude and longitude");
    }

    @Test
    void anSrtmTileCutOffIsRefusedInWords() throws IOException {
        Path file = folder.resolve("S23E015.hgt");
        writeHgt(file, SIDE);
        Files.write(file, java.util.Arrays.copyOf(Files.readAllBytes(file), 1_000_000));
        refused("S23E015.hgt", "1000000 bytes are no square");
    }

    @Test
    void aTiffThatIsNoneIsRefusedInWords() throws IOException {
        Files.writeString(folder.resolve("tile.tif"), "no picture at all");
        refused("tile.tif", "");
    }

    @Test
    void aTileOfAnotherPlaceIsSaidToBe() throws IOException {
        writeHgt(folder.resolve("N52E013.hgt"), 101);
        refused("N52E013.hgt", "does not cover the attempt");
    }

    private void refused(String file, String why) {
        Terrain terrain = Terrain.of(folder, DEBRIEF);
        assertTrue(terrain.relief().isEmpty());
        assertEquals(1, terrain.complaints().size());
        String said = terrain.complaints().get(0);
        assertTrue(said.contains(file) && said.contains(why), said);
        assertTrue(said.lines().count() == 1, said);
    }

    @Test
    @NeedsGl
    void reliefIsSeen() throws IOException, NoGraphicsException {
        writeHgt(folder.resolve("S23E015.hgt"), SIDE);
        Optional<Relief> relief = Terrain.of(folder, DEBRIEF).relief();
        // The light comes from the north-west: of the ridge's two flanks the western is the
        // lighter.
        assertTrue(flanks(relief) > 12, "lighter by " + flanks(relief));
        assertEquals(0, flanks(Optional.empty()), 3);
    }

    /** By how many steps of 255 the western flank is lighter than the eastern, from above. */
    private static double flanks(Optional<Relief> relief) throws NoGraphicsException {
        try (Studio studio = Studio.open(DEBRIEF, WIDTH, HEIGHT, relief, Optional.empty())) {
            Vantage orbit = Vantage.of(Vantage.Kind.ORBIT);
            studio.diorama().view().orbit().place(180, 89, 12_000);
            Pixels pixels =
                    studio.still(
                            90,
                            orbit,
                            new Theme(Palette.LIGHT, Sizes.atPercent(50)),
                            new Figures(Units.METRIC, Locale.ROOT),
                            false);
            return tone(studio, pixels, 15.175) - tone(studio, pixels, 15.185);
        }
    }

    /** Mean of the green round a place on the ground: over more than a square of the grid. */
    private static double tone(Studio studio, Pixels pixels, double longitude_deg) {
        Geodetic place = Geodetic.ofDegrees(-22.5, longitude_deg, 1030);
        Vec3 at = DEBRIEF.frame().toEnu(place);
        float[] xy = new Probe(WIDTH, HEIGHT).at(studio, at.x(), at.y(), at.z());
        double sum = 0;
        for (int y = -3; y <= 3; y++) {
            for (int x = -3; x <= 3; x++) {
                sum += (pixels.rgb((int) xy[0] + x, (int) xy[1] + y) >> 8) & 0xff;
            }
        }
        return sum / 49;
    }
}
