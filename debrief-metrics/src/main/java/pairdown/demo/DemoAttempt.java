package pairdown.demo;

import java.util.List;
import java.util.function.Function;
import pairdown.demo.physics.Scenario;
import pairdown.demo.truth.Truth;

/**
 * One attempt of the demo season.
 *
 * @param folder below the season's, the attempt's name last
 * @param lesson the one thing its debrief shows
 * @param plan what the team wrote down
 * @param logs what was brought home of what was true
 */
record DemoAttempt(
        String folder,
        String lesson,
        Scenario scenario,
        AttemptPlan plan,
        Function<Truth, List<DemoLog>> logs) {
    /** The attempt's name. */
    String id() {
        return folder.substring(folder.lastIndexOf('/') + 1);
    }
}
