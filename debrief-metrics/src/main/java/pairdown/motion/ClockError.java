package pairdown.motion;

import pairdown.height.AlignedLog;

/** What is left of a log's clock error. */
final class ClockError {
    private ClockError() {}

    /**
     * The alignment's sigma; and half-known seconds where a plain IGC log with whole-second times
     * was never measured against another.
     */
    static double sigma_s(AlignedLog log) {
        boolean cut =
                log.clock().measured().isEmpty()
                        && log.track().report().format().equals("igc")
                        && WholeSeconds.only(log.track());
        return Math.hypot(log.clock().offsetSigma_s(), cut ? Quantisation.sigma(1) : 0);
    }
}
