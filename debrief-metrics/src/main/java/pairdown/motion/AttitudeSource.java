package pairdown.motion;

import java.util.Optional;

/** Attitude at an instant; empty where it can't be known. */
@FunctionalInterface
public interface AttitudeSource {
    Optional<Attitude> at(double t_s);
}
