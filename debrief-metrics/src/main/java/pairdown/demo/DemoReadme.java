package pairdown.demo;

import java.util.List;

/** The page that goes with the demo season. */
final class DemoReadme {
    private static final String HEAD =
            """
            # Sample tracks

            A simulated season of an invented team at an invented field in 2031. Nothing here is real:
            no flight, person, place or machine. `pairdown demo FOLDER` makes it anew.

            Each folder is an attempt with its logs and `attempt.json`; in `truth/` is what was true and
            what was done to each log, which no debrief reads. An `opening` there is when the canopy
            begins to brake, 0.8 s after the pull. Each attempt has one lesson:

            """;

    private DemoReadme() {}

    static String of(List<DemoAttempt> attempts) {
        StringBuilder out = new StringBuilder(HEAD);
        out.append("- `idle-dives/`: ").append(attempts.get(0).lesson()).append('\n');
        out.append(
                        "- `practice-dives/`: twenty dives in reverse at the target. Seventeen are held;")
                .append(" in three more reverse than the tail bears was followed by an episode.\n");
        for (DemoAttempt a : attempts) {
            if (!a.folder().contains("/")) {
                out.append("- `").append(a.folder()).append("/`: ").append(a.lesson()).append('\n');
            }
        }
        return out.toString();
    }
}
