package pairdown.motion;

import pairdown.clock.ClockDoubt;
import pairdown.height.AlignedLog;

/** What is left of a log's clock error. */
final class ClockError {
    private ClockError() {}

    /**
     * The alignment's doubt; and half-known seconds where a plain IGC log with whole-second times
     * was never measured against another.
     */
    static ClockDoubt of(AlignedLog log) {
        boolean cut =
                log.clock().measured().isEmpty()
                        && log.track().report().format().equals("igc")
                        && WholeSeconds.only(log.track());
        return log.clock().doubt().plusOwn(cut ? Quantisation.sigma(1) : 0);
    }
}
