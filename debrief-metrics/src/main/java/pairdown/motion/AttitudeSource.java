package pairdown.motion;

import java.util.Optional;

/** Attitude at an instant; empty where it can't be known. */
@FunctionalInterface
public interface AttitudeSource {
    Optional<Attitude> at(double t_s);

    /** Where no attitude can be known. */
    static AttitudeSource unknown() {
        return Unknown.AT_ALL_TIMES;
    }

    /** A value rather than a function, so that a debrief can be kept on disk. */
    enum Unknown implements AttitudeSource {
        AT_ALL_TIMES;

        @Override
        public Optional<Attitude> at(double t_s) {
            return Optional.empty();
        }
    }
}
