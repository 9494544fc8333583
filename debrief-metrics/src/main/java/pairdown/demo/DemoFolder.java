package pairdown.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairdown.attempt.Attempt;
import pairdown.clock.LoadedLog;
import pairdown.demo.logfile.Damage;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.Draws;
import pairdown.demo.receiver.InjectedFaults;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.format.source.Decimal;
import pairdown.time.TimeAxis;
import pairdown.vector.Vec3;

/** Writes one attempt of the demo season: logs, column maps, plan, and the truth beside them. */
final class DemoFolder {
    /** The truth's rows, and those of a lead alone (s). */
    private static final double TRUTH_STEP_S = 0.5;

    private static final double ALONE_STEP_S = 1;

    /** The truth is written from this long before the first exit (s). */
    private static final double BEFORE_EXIT_S = 5;

    private final Path folder;

    private DemoFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Flies an attempt and writes its folder.
     *
     * @return the attempt as flown
     * @throws IOException if the folder can't be written
     */
    static SimulatedAttempt write(Path folder, DemoAttempt demo, long seed) throws IOException {
        Truth truth = Simulation.run(demo.scenario());
        List<DemoLog> logs = demo.logs().apply(truth);
        SimulatedAttempt flown =
                SimulatedAttempt.of(
                        truth,
                        demo.plan(),
                        Draws.seed(seed, demo.id()),
                        logs.stream().map(DemoLog::plan).toList());
        new DemoFolder(folder).write(flown, logs, demo.lesson());
        return flown;
    }

    private void write(SimulatedAttempt flown, List<DemoLog> logs, String lesson)
            throws IOException {
        Files.createDirectories(folder.resolve("truth"));
        Set<String> mapped = new HashSet<>();
        List<InjectedFaults> faults = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            DemoLog log = logs.get(i);
            LoadedLog loaded = flown.logs().get(i);
            String text = log.form().text(loaded.track());
            text(log.plan().file(), Damage.all(text, log.damage()));
            Optional<String> map = log.form().columnMap();
            if (map.isPresent()) {
                mapped.add(log.plan().file());
                text(AttemptJson.mapFile(log.plan().file()), map.get());
            }
            List<String> words = log.damage().stream().map(Damage::words).toList();
            faults.add(flown.faults().get(i).withDamage(words));
        }
        Attempt attempt = flown.attempt();
        text("attempt.json", AttemptJson.of(attempt, mapped));
        text("truth/truth.json", TruthJson.of(flown, lesson, faults));
        double from_s = from_s(flown);
        double step_s = flown.attempt().flyers().isEmpty() ? ALONE_STEP_S : TRUTH_STEP_S;
        for (TrueBody body : flown.truth().bodies()) {
            text(
                    "truth/" + body.id() + ".csv",
                    motion(flown.truth(), body, from_s, to_s(flown), step_s));
        }
    }

    private void text(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    private static double from_s(SimulatedAttempt flown) {
        return flown.truth().bodies().stream()
                        .flatMapToDouble(b -> b.exit_s().stream())
                        .min()
                        .orElse(flown.logs().get(0).track().start_s() + BEFORE_EXIT_S)
                - BEFORE_EXIT_S;
    }

    private static double to_s(SimulatedAttempt flown) {
        return flown.truth().bodies().stream()
                .flatMapToDouble(b -> b.opening_s().stream())
                .max()
                .orElse(flown.logs().get(0).track().end_s());
    }

    private static String motion(
            Truth truth, TrueBody body, double from_s, double to_s, double step_s) {
        TimeAxis axis = new TimeAxis(truth.start());
        TrueMotion motion = body.motion();
        StringBuilder out = new StringBuilder();
        out.append("time,east_m,north_m,up_m,velocityEast_mps,velocityNorth_mps,velocityUp_mps\n");
        for (double k = Math.ceil(from_s / step_s); k * step_s <= to_s; k++) {
            double t = k * step_s;
            out.append(axis.instant(t));
            numbers(out, motion.positionAt_m(t));
            numbers(out, motion.velocityAt_mps(t));
            out.append('\n');
        }
        return out.toString();
    }

    private static void numbers(StringBuilder out, Vec3 v) {
        for (double value : new double[] {v.x(), v.y(), v.z()}) {
            out.append(',').append(Decimal.of(value, 2));
        }
    }
}
