package pairdown.scene;

import java.util.Optional;
import pairdown.camera.Ground;
import pairdown.replay.GroundLevel;
import pairdown.replay.Heights;
import pairdown.replay.Moment;
import pairdown.replay.Recording;

/**
 * All of a scene that can be made without a window: paths, shapes, ground. It takes long and is
 * made where the recording is read, so that the window goes on meanwhile.
 */
public final class Blueprint {
    private final Recording recording;
    private final Optional<Relief> relief;
    private final Ground ground;
    private final Heights heights;
    private final Paths paths;
    private final Airframe.Shapes shapes;

    private Blueprint(Recording recording, Optional<Relief> relief, Paths paths) {
        this.recording = recording;
        this.relief = relief;
        this.ground = relief.<Ground>map(r -> r).orElseGet(() -> GroundLevel.of(recording));
        this.heights = Heights.of(recording.debrief());
        this.paths = paths;
        this.shapes = Airframe.Shapes.make();
        takeSamples();
    }

    /** Attitudes and sigmas round the moments shown first are sampled here, not in a frame. */
    private void takeSamples() {
        Moment moment = new Moment(recording);
        moment.fill(recording.middle_s());
        double beginning_s = recording.beginning_s();
        for (int i = 0; i < recording.participants().size(); i++) {
            // Each time it takes another one's samples ahead.
            moment.fill(beginning_s);
        }
    }

    /**
     * @param relief terrain, where the attempt brings a tile
     */
    public static Blueprint of(Recording recording, Optional<Relief> relief) {
        return new Blueprint(recording, relief, Paths.of(recording));
    }

    /**
     * @param blockPoints points of the paths that go into the card's memory at a time
     */
    static Blueprint of(Recording recording, int blockPoints) {
        return new Blueprint(recording, Optional.empty(), Paths.of(recording, blockPoints));
    }

    public Recording recording() {
        return recording;
    }

    Optional<Relief> relief() {
        return relief;
    }

    /** The ground, the relief's own where there is one. */
    Ground ground() {
        return ground;
    }

    Heights heights() {
        return heights;
    }

    Paths paths() {
        return paths;
    }

    Airframe.Shapes shapes() {
        return shapes;
    }
}
