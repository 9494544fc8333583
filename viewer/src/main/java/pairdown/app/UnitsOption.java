package pairdown.app;

import pairdown.words.Units;
import picocli.CommandLine.Option;

/** The units that figures are shown in, chosen once. Result files are in SI whatever is chosen. */
final class UnitsOption {
    /** The ready-made sets by the name typed. */
    enum Set {
        miles,
        knots,
        metric
    }

    @Option(
            names = "--units",
            paramLabel = "SET",
            description = "units shown: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})",
            defaultValue = "miles")
    private Set set = Set.miles;

    Units units() {
        return switch (set) {
            case miles -> Units.MILES;
            case knots -> Units.KNOTS;
            case metric -> Units.METRIC;
        };
    }
}
