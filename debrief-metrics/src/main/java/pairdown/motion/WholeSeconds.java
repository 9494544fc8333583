package pairdown.motion;

import pairdown.track.Track;

/** Whether a log knows no fraction of a second. */
final class WholeSeconds {
    private WholeSeconds() {}

    static boolean only(Track track) {
        double first = track.time_s(0);
        for (int i = 1; i < track.size(); i++) {
            double since = track.time_s(i) - first;
            if (Math.abs(since - Math.rint(since)) > 1e-6) {
                return false;
            }
        }
        return true;
    }
}
