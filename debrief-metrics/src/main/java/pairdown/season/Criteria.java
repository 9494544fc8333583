package pairdown.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.JsonFields;
import pairdown.attempt.JsonFile;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.track.UnusableInputException;
import pairdown.units.Dimension;

/**
 * The team's criteria for the next step, from {@code season.json} in the season's folder: {@code
 * {"title": "…", "criteria": {"onGateInARow": 2, "descentsHeldInARow": 3, "closureExceedances": 0,
 * "episodes": 0, "matched": "10 s"}}}, the last two counts over the same latest attempts. What is
 * not in the file is not asked for.
 *
 * @param onGateInARow latest attempts in which every flyer's verdict must be on-gate
 * @param descentsHeldInARow latest attempts whose descent must have been held
 * @param mostExceedances closing exceedances allowed in those
 * @param mostEpisodes tail episodes allowed in those
 * @param matched_s longest match every flyer must have reached in those
 */
public record Criteria(
        Optional<String> title,
        OptionalDouble onGateInARow,
        OptionalDouble descentsHeldInARow,
        OptionalDouble mostExceedances,
        OptionalDouble mostEpisodes,
        OptionalDouble matched_s) {
    static final String FILE = "season.json";

    static final Criteria NONE =
            new Criteria(
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    /** Those of a season's folder; none where it has no such file. */
    static Criteria read(Path folder, List<String> notes) throws UnusableInputException {
        Path file = folder.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return NONE;
        }
        JsonFields root = JsonFields.root(JsonFile.read(file), notes);
        Optional<JsonFields> given = root.object("criteria");
        Optional<String> title = root.text("title");
        if (given.isEmpty()) {
            return new Criteria(
                    title,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        JsonFields c = given.get();
        Criteria criteria =
                new Criteria(
                        title,
                        c.notNegative("onGateInARow", Dimension.SHARE),
                        c.notNegative("descentsHeldInARow", Dimension.SHARE),
                        c.notNegative("closureExceedances", Dimension.SHARE),
                        c.notNegative("episodes", Dimension.SHARE),
                        c.notNegative("matched", Dimension.TIME));
        c.sayUnknown();
        return criteria;
    }

    /** Each criterion against the latest attempts with a flyer (or a dive, for descents). */
    List<Criterion> judge(List<AttemptSummary> attempts) {
        List<AttemptSummary> joined = attempts.stream().filter(a -> !a.flyers().isEmpty()).toList();
        List<AttemptSummary> dives =
                attempts.stream().filter(a -> a.descentHeld().isPresent()).toList();
        int window = (int) Math.max(1, onGateInARow.orElse(1));
        List<AttemptSummary> latest = latest(joined, window);
        List<Criterion> judged = new ArrayList<>();
        onGateInARow.ifPresent(n -> judged.add(onGate(joined, (int) n)));
        descentsHeldInARow.ifPresent(n -> judged.add(held(dives, (int) n)));
        mostExceedances.ifPresent(n -> judged.add(exceedances(latest, (int) n)));
        mostEpisodes.ifPresent(n -> judged.add(episodes(latest, (int) n)));
        matched_s.ifPresent(t -> judged.add(matched(latest, t)));
        return judged;
    }

    private static List<AttemptSummary> latest(List<AttemptSummary> attempts, int n) {
        return attempts.subList(Math.max(0, attempts.size() - n), attempts.size());
    }

    private static String names(List<AttemptSummary> attempts) {
        return attempts.isEmpty()
                ? "no attempt"
                : String.join(", ", attempts.stream().map(AttemptSummary::attempt).toList());
    }

    private static Criterion onGate(List<AttemptSummary> joined, int n) {
        int run = 0;
        for (int i = joined.size() - 1; i >= 0 && allOnGate(joined.get(i)); i--) {
            run++;
        }
        return new Criterion(
                "on the gate in " + n + " attempts in a row",
                run >= n,
                "the latest " + run + " in a row were on the gate");
    }

    private static boolean allOnGate(AttemptSummary a) {
        return a.flyers().stream().allMatch(f -> f.verdict().filter("on-gate"::equals).isPresent());
    }

    private static Criterion held(List<AttemptSummary> dives, int n) {
        int run = 0;
        for (int i = dives.size() - 1; i >= 0 && dives.get(i).descentHeld().orElse(false); i--) {
            run++;
        }
        return new Criterion(
                n + " descents held in a row",
                run >= n,
                "the latest " + run + " in a row were held");
    }

    private static Criterion exceedances(List<AttemptSummary> latest, int most) {
        int count = latest.stream().mapToInt(AttemptSummary::closureExceedances).sum();
        return new Criterion(
                "at most " + most + " stretches over the closing limit",
                count <= most && !latest.isEmpty(),
                count + " in " + names(latest));
    }

    private static Criterion episodes(List<AttemptSummary> latest, int most) {
        boolean known =
                latest.stream().allMatch(a -> a.episodes().isPresent()) && !latest.isEmpty();
        int count = latest.stream().mapToInt(a -> a.episodes().orElse(0)).sum();
        return new Criterion(
                "at most " + most + " tail episodes",
                known && count <= most,
                known
                        ? count + " in " + names(latest)
                        : "power and tail were not logged in all of " + names(latest));
    }

    private static Criterion matched(List<AttemptSummary> latest, double need_s) {
        List<FlyerSummary> flyers = latest.stream().flatMap(a -> a.flyers().stream()).toList();
        String name = String.format(Locale.ROOT, "every flyer matched for %.0f s", need_s);
        if (flyers.isEmpty() || flyers.stream().anyMatch(f -> f.matchedLongest_s().isEmpty())) {
            return new Criterion(name, false, "can't be told for every flyer of " + names(latest));
        }
        double least_s =
                flyers.stream()
                        .mapToDouble(f -> f.matchedLongest_s().getAsDouble())
                        .min()
                        .orElse(0);
        return new Criterion(
                name,
                least_s >= need_s,
                String.format(
                        Locale.ROOT, "the shortest of %s was %.1f s", names(latest), least_s));
    }
}
