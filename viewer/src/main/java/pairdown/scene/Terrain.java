package pairdown.scene;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    public Terrain {
        complaints = List.copyOf(complaints);
    }

    /** The relief round an attempt, from all tiles in a folder. */
    public static Terrain of(Path folder, Debrief debrief) {
        List<ElevationTile> tiles = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                read(file, tiles, complaints);
            }
        } catch (IOException e) {
            complaints.add(folder + ": can't be listed for terrain (" + e.getMessage() + ")");
        }
        return new Terrain(relief(tiles, debrief), complaints);
    }

    private static void read(Path file, List<ElevationTile> tiles, List<String> complaints) {
        try {
            if (HgtFile.isNamed(file)) {
                tiles.add(HgtFile.read(file));
            } else if (GeoTiffFile.isNamed(file)) {
                tiles.add(GeoTiffFile.read(file));
            }
        } catch (IOException e) {
            complaints.add(
                    file
                            + ": no terrain is drawn from it, "
                            + e.getMessage()
                            + "; use an SRTM .hgt or a GeoTIFF in latitude and longitude");
        }
    }

    private static Optional<Relief> relief(List<ElevationTile> tiles, Debrief debrief) {
        if (tiles.isEmpty()) {
            return Optional.empty();
        }
        double[] box = box(debrief);
        double half = Math.max(box[1] - box[0], box[3] - box[2]) / 2 + MARGIN_M;
        half = Math.min(MOST_HALF_M, half);
        int across = (int) Math.min(MOST_ACROSS, Math.ceil(2 * half / FINEST_M) + 1);
        double step = 2 * half / (across - 1);
        double west = (box[0] + box[1]) / 2 - half;
        double south = (box[2] + box[3]) / 2 - half;
        float[] up = new float[across * across];
        int known = 0;
        for (int i = 0; i < up.length; i++) {
            int row = i / across;
            double e = west + (i - row * across) * step;
            double n = south + row * step;
            up[i] = (float) up_m(tiles, debrief.frame(), e, n);
            known += Float.isNaN(up[i]) ? 0 : 1;
        }
        if (known < up.length / 10) {
            return Optional.empty();
        }
        fill(up);
        return Optional.of(new Relief(west, south, step, across, across, up));
    }

    private static double up_m(
            List<ElevationTile> tiles, LocalFrame frame, double east_m, double north_m) {
        Geodetic place = frame.toGeodetic(new Vec3(east_m, north_m, 0));
        for (ElevationTile tile : tiles) {
            double height = tile.height_m(place.latitude_deg(), place.longitude_deg());
            if (!Double.isNaN(height)) {
                double ellipsoid =
                        height
                                + Geoid.egm96()
                                        .undulation_m(place.latitude_deg(), place.longitude_deg());
                return frame.toEnu(
                                new Geodetic(
                                        place.latitude_deg(), place.longitude_deg(), ellipsoid))
                        .z();
            }
        }
        return Double.NaN;
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
