package pairdown.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.vector.Vec3;

/**
 * Relief from the terrain tiles in an attempt's folder.
 *
 * @param relief where a tile covers the place
 * @param complaints tiles that can't be used, a line for each
 */
public record Terrain(Optional<Relief> relief, List<String> complaints) {
    private static final double MARGIN_M = 5_000;

    /** Beyond, haze hides it. */
    private static final double MOST_HALF_M = 25_000;

    private static final double FINEST_M = 30;
    private static final int MOST_ACROSS = 320;
    private static final double LOOK_EVERY_S = 5;

    /** With less than this share of the ground known, a plain misleads less. */
    private static final double LEAST_SHARE = 0.1;

    public Terrain {
        complaints = List.copyOf(complaints);
    }

    /**
     * A square on the frame's plane.
     *
     * @param step_m between the places where heights are taken
     */
    private record Area(double west_m, double south_m, double step_m, int across) {
        /** Round all that took part, with a margin. */
        static Area of(Debrief debrief) {
            double[] box = box(debrief);
            double half = Math.max(box[1] - box[0], box[3] - box[2]) / 2 + MARGIN_M;
            half = Math.min(MOST_HALF_M, half);
            int across = (int) Math.min(MOST_ACROSS, Math.ceil(2 * half / FINEST_M) + 1);
            return new Area(
                    (box[0] + box[1]) / 2 - half,
                    (box[2] + box[3]) / 2 - half,
                    2 * half / (across - 1),
                    across);
        }

        double east_m(int i) {
            int column = i % across;
            return west_m + column * step_m;
        }

        double north_m(int i) {
            int row = i / across;
            return south_m + row * step_m;
        }
    }

    /** The relief round an attempt, from all tiles in a folder. */
    public static Terrain of(Path folder, Debrief debrief) {
        Map<Path, ElevationTile> tiles = new LinkedHashMap<>();
        List<String> complaints = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                read(file, tiles, complaints);
            }
        } catch (IOException e) {
            complaints.add(folder + ": can't be listed for terrain (" + e.getMessage() + ")");
        }
        return tiles.isEmpty()
                ? new Terrain(Optional.empty(), complaints)
                : covering(tiles, debrief, complaints);
    }

    private static void read(Path file, Map<Path, ElevationTile> tiles, List<String> complaints) {
        try {
            if (HgtFile.isNamed(file)) {
                tiles.put(file, HgtFile.read(file));
            } else if (GeoTiffFile.isNamed(file)) {
                tiles.put(file, GeoTiffFile.read(file));
            }
        } catch (IOException e) {
            complaints.add(
                    refused(file, String.valueOf(e.getMessage()))
                            + "; use an SRTM .hgt or a GeoTIFF in latitude and longitude");
        }
    }

    private static String refused(Path file, String why) {
        return file + ": no terrain is drawn from it, " + why;
    }

    private static Terrain covering(
            Map<Path, ElevationTile> tiles, Debrief debrief, List<String> complaints) {
        Area area = Area.of(debrief);
        float[] up = new float[area.across() * area.across()];
        Arrays.fill(up, Float.NaN);
        int known = 0;
        for (Map.Entry<Path, ElevationTile> tile : tiles.entrySet()) {
            int before = known;
            for (int i = 0; i < up.length; i++) {
                if (Float.isNaN(up[i])) {
                    double e = area.east_m(i);
                    up[i] = (float) up_m(tile.getValue(), debrief.frame(), e, area.north_m(i));
                    known += Float.isNaN(up[i]) ? 0 : 1;
                }
            }
            if (known == before) {
                complaints.add(
                        refused(tile.getKey(), "it does not cover the attempt's place")
                                + "; put in the tile that does");
            }
        }
        if (known < LEAST_SHARE * up.length) {
            return new Terrain(Optional.empty(), complaints);
        }
        fill(up);
        int n = area.across();
        return new Terrain(
                Optional.of(new Relief(area.west_m(), area.south_m(), area.step_m(), n, n, up)),
                complaints);
    }

    private static double up_m(
            ElevationTile tile, LocalFrame frame, double east_m, double north_m) {
        Geodetic place = frame.toGeodetic(new Vec3(east_m, north_m, 0));
        double latitude_deg = place.latitude_deg();
        double longitude_deg = place.longitude_deg();
        double height = tile.height_m(latitude_deg, longitude_deg);
        if (Double.isNaN(height)) {
            return Double.NaN;
        }
        double ellipsoid = height + Geoid.egm96().undulation_m(latitude_deg, longitude_deg);
        return frame.toEnu(new Geodetic(latitude_deg, longitude_deg, ellipsoid)).z();
    }

    /** Voids take the lowest height known: they must not hide anyone. */
    private static void fill(float[] up) {
        float low = Float.POSITIVE_INFINITY;
        for (float u : up) {
            low = Float.isNaN(u) ? low : Math.min(low, u);
        }
        for (int i = 0; i < up.length; i++) {
            up[i] = Float.isNaN(up[i]) ? low : up[i];
        }
    }

    /** West, east, south, north of all who took part (m). */
    private static double[] box(Debrief debrief) {
        double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
        double[] state = new double[Trajectory.VALUES];
        for (ParticipantDebrief participant : debrief.participants()) {
            participant.trajectory().ifPresent(path -> widen(box, path, state));
        }
        return box[0] > box[1] ? new double[4] : box;
    }

    private static void widen(double[] box, Trajectory path, double[] state) {
        for (double t = path.start_s(); t <= path.end_s(); t += LOOK_EVERY_S) {
            path.read(t, state);
            box[0] = Math.min(box[0], state[0]);
            box[1] = Math.max(box[1], state[0]);
            box[2] = Math.min(box[2], state[1]);
            box[3] = Math.max(box[3], state[1]);
        }
    }
}
