package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import pairdown.attempt.JsonFields;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.track.UnusableInputException;
import pairdown.units.Dimension;

/**
 * The team's criteria for the next step, from {@code season.json} in the season's folder: {@code
 * {"title": "…", "criteria": {"onGateInARow": 2, "descentsHeldInARow": 3, "closureExceedances": 0,
 * "episodes": 0, "matched": "10 s"}}}. The last three are over as many of the latest attempts as
 * {@code onGateInARow} says, else over the latest. What is not in the file is not asked for.
 *
 * @param onGateInARow latest attempts in which every flyer's verdict must be on-gate
 * @param descentsHeldInARow latest attempts whose descent must have been held
 * @param mostExceedances closing exceedances allowed in those
 * @param mostEpisodes tail episodes allowed in those
 * @param matched_s longest match every flyer must have reached in those
 */
public record Criteria(
        Optional<String> title,
        OptionalInt onGateInARow,
        OptionalInt descentsHeldInARow,
        OptionalInt mostExceedances,
        OptionalInt mostEpisodes,
        OptionalDouble matched_s) {
    /** No criteria at all. */
    public static final Criteria NONE = untold(Optional.empty());

    private static Criteria untold(Optional<String> title) {
        return new Criteria(
                title,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty());
    }

    /**
     * Those of the team's file.
     *
     * @throws UnusableInputException if one makes no sense
     */
    static Criteria of(JsonFields team) throws UnusableInputException {
        Optional<String> title = team.text("title");
        Optional<JsonFields> given = team.object("criteria");
        if (given.isEmpty()) {
            return untold(title);
        }
        JsonFields c = given.get();
        Criteria criteria =
                new Criteria(
                        title,
                        inARow(c, "onGateInARow"),
                        inARow(c, "descentsHeldInARow"),
                        count(c, "closureExceedances"),
                        count(c, "episodes"),
                        c.notNegative("matched", Dimension.TIME));
        c.sayUnknown();
        return criteria;
    }

    private static OptionalInt count(JsonFields c, String field) throws UnusableInputException {
        OptionalDouble v = c.notNegative(field, Dimension.SHARE);
        if (v.isEmpty()) {
            return OptionalInt.empty();
        }
        if (v.getAsDouble() != Math.rint(v.getAsDouble()) || v.getAsDouble() > 1_000_000) {
            throw c.complaint(field, "\"" + field + "\" is no count", "give a whole number");
        }
        return OptionalInt.of((int) v.getAsDouble());
    }

    /** None in a row would be met by anything. */
    private static OptionalInt inARow(JsonFields c, String field) throws UnusableInputException {
        OptionalInt n = count(c, field);
        if (n.isPresent() && n.getAsInt() == 0) {
            throw c.complaint(
                    field, "\"" + field + "\" is none in a row", "give 1 or more, or leave it out");
        }
        return n;
    }

    /** Each criterion against the latest attempts with a flyer (or a dive, for descents). */
    List<Criterion> judge(List<AttemptSummary> attempts) {
        List<AttemptSummary> joined = attempts.stream().filter(a -> !a.flyers().isEmpty()).toList();
        List<AttemptSummary> dives =
                attempts.stream().filter(a -> a.descentHeld().isPresent()).toList();
        int window = Math.max(1, onGateInARow.orElse(1));
        List<AttemptSummary> latest = latest(joined.isEmpty() ? dives : joined, window);
        List<Criterion> judged = new ArrayList<>();
        onGateInARow.ifPresent(n -> judged.add(onGate(joined, n)));
        descentsHeldInARow.ifPresent(n -> judged.add(held(dives, n)));
        mostExceedances.ifPresent(n -> judged.add(exceedances(latest, n)));
        mostEpisodes.ifPresent(n -> judged.add(episodes(latest, n)));
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
        return inARow(
                joined,
                n,
                a ->
                        a.flyers().stream()
                                .allMatch(f -> f.verdict().filter("on-gate"::equals).isPresent()),
                "every flyer on the gate, attempts in a row: " + n,
                "on the gate");
    }

    private static Criterion held(List<AttemptSummary> dives, int n) {
        Criterion held =
                inARow(
                        dives,
                        n,
                        a -> a.descentHeld().orElse(false),
                        "descents held in a row: " + n,
                        "held");
        List<AttemptSummary> untold =
                latest(dives, n).stream().filter(a -> a.episodes().isEmpty()).toList();
        return !held.met() || untold.isEmpty()
                ? held
                : new Criterion(
                        held.name(),
                        true,
                        held.evidence() + "; tail control can't be told in " + names(untold));
    }

    private static Criterion inARow(
            List<AttemptSummary> attempts,
            int n,
            Predicate<AttemptSummary> does,
            String name,
            String how) {
        int run = 0;
        while (run < attempts.size() && does.test(attempts.get(attempts.size() - 1 - run))) {
            run++;
        }
        String evidence =
                run == 0
                        ? "0: " + names(latest(attempts, 1)) + " was not " + how
                        : run + ", the latest being " + names(latest(attempts, Math.min(run, n)));
        return new Criterion(name, run >= n, evidence);
    }

    private static Criterion exceedances(List<AttemptSummary> latest, int most) {
        int count = latest.stream().mapToInt(AttemptSummary::closureExceedances).sum();
        boolean told = latest.stream().allMatch(AttemptSummary::closureTold) && !latest.isEmpty();
        return new Criterion(
                "stretches over the closing limit, at most: " + most,
                told && count <= most,
                told || count > most
                        ? count + " in " + names(latest)
                        : "can't be told for every flyer of " + names(latest));
    }

    private static Criterion episodes(List<AttemptSummary> latest, int most) {
        boolean known =
                latest.stream().allMatch(a -> a.episodes().isPresent()) && !latest.isEmpty();
        int count = latest.stream().mapToInt(a -> a.episodes().orElse(0)).sum();
        return new Criterion(
                "tail episodes, at most: " + most,
                known && count <= most,
                known
                        ? count + " in " + names(latest)
                        : "power and tail were not reviewed in all of " + names(latest));
    }

    private static Criterion matched(List<AttemptSummary> latest, double need_s) {
        List<FlyerSummary> flyers = latest.stream().flatMap(a -> a.flyers().stream()).toList();
        String name = String.format(Locale.ROOT, "every flyer matched for: %.0f s", need_s);
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
                        Locale.ROOT,
                        "the shortest longest match in %s was %.1f s",
                        names(latest),
                        least_s));
    }
}
