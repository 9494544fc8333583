package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.demo.truth.TrueMotion;
import pairdown.vector.Vec3;

/**
 * What {@code truth.json} tells of each attempt of the samples against the motions beside it, read
 * from their files and computed anew.
 */
class SampleTruthTest {
    private static final double STEP_S = 0.5;

    static Stream<Path> joined() throws IOException {
        try (Stream<Path> all = Files.list(SampleComparison.SAMPLES)) {
            return all
                    .filter(f -> Files.exists(f.resolve("truth/truth.json")))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static JsonNode truth(Path attempt) throws IOException {
        return new JsonMapper().readTree(attempt.resolve("truth/truth.json").toFile());
    }

    private static Instant first(Path attempt, String id) throws IOException {
        return Instant.parse(rows(attempt, id).get(0).split(",", -1)[0]);
    }

    private static List<String> rows(Path attempt, String id) throws IOException {
        List<String> lines = Files.readAllLines(attempt.resolve("truth/" + id + ".csv"));
        return lines.subList(1, lines.size());
    }

    /** A motion as its file has it; time zero is its first row. */
    private static TrueMotion motion(Path attempt, String id) throws IOException {
        List<Vec3> place = new ArrayList<>();
        List<Vec3> velocity = new ArrayList<>();
        for (String row : rows(attempt, id)) {
            String[] cells = row.split(",", -1);
            place.add(vector(cells, 1));
            velocity.add(vector(cells, 4));
        }
        return new TrueMotion(0, STEP_S, place.toArray(Vec3[]::new), velocity.toArray(Vec3[]::new));
    }

    private static Vec3 vector(String[] cells, int from) {
        return new Vec3(
                Double.parseDouble(cells[from]),
                Double.parseDouble(cells[from + 1]),
                Double.parseDouble(cells[from + 2]));
    }

    private static double seconds(Instant zero, JsonNode time) {
        Instant at = Instant.parse(time.asText());
        return (at.toEpochMilli() - zero.toEpochMilli()) / 1000.0;
    }

    @ParameterizedTest
    @MethodSource("joined")
    void separationsAndClosuresToldAreThoseOfTheMotions(Path attempt) throws IOException {
        Instant zero = first(attempt, "lead");
        TrueMotion lead = motion(attempt, "lead");
        for (JsonNode pair : truth(attempt).path("pairs")) {
            TrueMotion flyer = motion(attempt, pair.path("flyer").asText());
            double exit_s = seconds(zero, body(attempt, pair.path("flyer").asText()).path("exit"));
            for (String moment : List.of("closest", "leastGap", "worstClosure")) {
                JsonNode told = pair.path(moment);
                double t = seconds(zero, told.path("time"));
                Vec3 r = flyer.positionAt_m(t).minus(lead.positionAt_m(t));
                Vec3 v = flyer.velocityAt_mps(t).minus(lead.velocityAt_mps(t));
                // Rows half a second apart, centimetres: cubic between them, velocities linear.
                assertEquals(told.path("separation_m").asDouble(), r.norm(), 0.1, moment);
                double closure_mps = -r.dot(v) / r.norm();
                if (t < exit_s + 1) {
                    continue; // the push at the exit lies between two rows
                }
                assertEquals(told.path("closureRate_mps").asDouble(), closure_mps, 0.35, moment);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("joined")
    void nothingIsCloserThanTheClosestTold(Path attempt) throws IOException {
        TrueMotion lead = motion(attempt, "lead");
        Instant zero = first(attempt, "lead");
        for (JsonNode pair : truth(attempt).path("pairs")) {
            TrueMotion flyer = motion(attempt, pair.path("flyer").asText());
            double exit_s = seconds(zero, body(attempt, pair.path("flyer").asText()).path("exit"));
            double told_m = pair.path("closest").path("separation_m").asDouble();
            for (double t = exit_s; t < lead.end_s(); t += 0.1) {
                double apart_m = flyer.positionAt_m(t).minus(lead.positionAt_m(t)).norm();
                assertTrue(apart_m > told_m - 0.1, attempt + " at " + t + " s: " + apart_m);
            }
        }
    }

    private static JsonNode body(Path attempt, String id) throws IOException {
        for (JsonNode body : truth(attempt).path("bodies")) {
            if (body.path("id").asText().equals(id)) {
                return body;
            }
        }
        throw new IllegalArgumentException(id);
    }

    @ParameterizedTest
    @MethodSource("joined")
    void matchedWindowsAreWhereTheVelocitiesAgree(Path attempt) throws IOException {
        Instant zero = first(attempt, "lead");
        TrueMotion lead = motion(attempt, "lead");
        for (JsonNode pair : truth(attempt).path("pairs")) {
            TrueMotion flyer = motion(attempt, pair.path("flyer").asText());
            for (JsonNode window : pair.path("matched")) {
                double start_s = seconds(zero, window.path("start"));
                double end_s = seconds(zero, window.path("end"));
                assertTrue(end_s - start_s >= 3, window::toString);
                Vec3 drift =
                        flyer.positionAt_m(end_s)
                                .minus(lead.positionAt_m(end_s))
                                .minus(flyer.positionAt_m(start_s))
                                .plus(lead.positionAt_m(start_s));
                // Dives are straight: the lead turns by a degree or two a window at most.
                double level_mps = drift.levelNorm() / (end_s - start_s);
                double vertical_mps = Math.abs(drift.z()) / (end_s - start_s);
                assertTrue(level_mps < 1.5, attempt + ": " + level_mps);
                assertTrue(vertical_mps < 1.0, attempt + ": " + vertical_mps);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("joined")
    void contactsAreAtTheSlot(Path attempt) throws IOException {
        Instant zero = first(attempt, "lead");
        TrueMotion lead = motion(attempt, "lead");
        for (JsonNode contact : truth(attempt).path("contacts")) {
            TrueMotion flyer = motion(attempt, contact.path("flyer").asText());
            double start_s = seconds(zero, contact.path("start"));
            double end_s = seconds(zero, contact.path("end"));
            for (double t = start_s; t <= end_s; t += STEP_S) {
                // Half a metre outside a tip of 7.1 m, and an arm's slack.
                double apart_m = flyer.positionAt_m(t).minus(lead.positionAt_m(t)).norm();
                assertEquals(7.6, apart_m, 1.0, attempt + " at " + (t - start_s) + " s");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("joined")
    void heightsAtLeavingAreThoseOfTheMotion(Path attempt) throws IOException {
        Instant zero = first(attempt, "lead");
        JsonNode truth = truth(attempt);
        double field_m =
                truth.path("origin").path("height_m").asDouble()
                        - truth.path("air").path("undulation_m").asDouble();
        for (JsonNode pair : truth.path("pairs")) {
            TrueMotion flyer = motion(attempt, pair.path("flyer").asText());
            Vec3 p = flyer.positionAt_m(seconds(zero, pair.path("leaving").path("time")));
            double fallen_m = (p.x() * p.x() + p.y() * p.y()) / (2 * 6_371_000.0);
            assertEquals(
                    pair.path("leaving").path("heightMsl_m").asDouble(),
                    field_m + p.z() + fallen_m,
                    0.2);
        }
    }
}
