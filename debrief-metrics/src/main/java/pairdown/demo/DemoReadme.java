package pairdown.demo;

import java.util.List;

/** The page that goes with the demo season. */
final class DemoReadme {
    private static final String HEAD =
            """
            # Sample tracks

            A simulated season. Nothing here is real: no flight, person, place, machine or weather.
            Masses, forces, lever settings, speeds and heights are inputs of a simulation, never advice
            for a flight. `pairdown demo FOLDER` makes the season anew, the same to the last byte;
            `--seed N` makes another of the same plans, in which a lesson may come out weaker.

            ## The scenario

            May 2031, an invented team at an invented flat field whose clocks are 8 h 45 min ahead of
            UTC. `lead`, a single-engine turboprop of 1,650 kg, descends with full flap and the propeller
            in reverse at 85 mph true airspeed and 3,500 ft/min. `blue` joins at its left wing tip,
            `amber` at its right one; `ship`, a helicopter at 60 kt and once a twin at 105 kt, brings
            them to 12,000 ft. The team wants everybody out of the formation by 6,500 ft above sea level.

            ## What each attempt teaches

            """;

    private static final String TAIL =
            """

            ## What is in a folder

            - `attempt.json`: what the team wrote down before it flew: who, slots, gate, target, limits.
            - Logs, mixed on purpose; of flyers from four minutes before the first exit. CSV in several
              dialects (one of them, and the recorders, with a column map), IGC, NMEA 0183, GPX and KML;
              1 to 10 fixes a second; heights above the ellipsoid, above sea level, or from who knows
              where; clocks on UTC, on the wall, on GPS time, set by hand, or with a zero of their own;
              cut, repeated, disordered, frozen and lost records.
            - `truth/`: what was true and what was done to each log. No debrief reads it.
              `truth.json` has the air, exits and openings, closest approaches, matched windows,
              contacts, power changes, tail episodes, and each log's faults (`offset_s`: UTC is logged
              time plus this). An `opening` is when the canopy begins to brake, 0.8 s after the pull.
              `truth/NAME.csv` is the motion of a body's reference point, east, north and up of the
              `origin`: an aircraft's centre of gravity, a flyer's logger.

            `season.json` holds the team's criteria for its next step.
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
        return out.append(TAIL).toString();
    }
}
