package pairdown.scene;

import pairdown.replay.Alignment;
import pairdown.replay.Moment;

/**
 * A second attempt laid over the first.
 *
 * @param alignment how its time lies against the first's
 */
public record Overlay(Blueprint other, Alignment alignment) {
    Moment.Ghost ghost() {
        return new Moment.Ghost(new Moment(other.recording()), alignment);
    }
}
