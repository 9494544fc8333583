package pairdown.scene;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pairdown.gl.Shaders;
import pairdown.replay.Alignment;
import pairdown.replay.Moment;

/** A second attempt: its flyers as they stood to their lead, with the paths they took there. */
final class GhostTrails implements AutoCloseable {
    /** Keys of words, by what two attempts are aligned on. */
    private static final Map<Alignment.On, String> ALIGNED =
            Arrays.stream(Alignment.On.values())
                    .collect(Collectors.toMap(on -> on, on -> "scene.aligned." + on.key()));

    private final Ghosts ghosts;
    private final Trails paths;
    private final float[] xy = new float[2];

    GhostTrails(Shaders shaders, Ghosts ghosts, Paths paths) {
        this.ghosts = ghosts;
        this.paths = new Trails(shaders, paths);
    }

    /** Brings a further block of points into the card's memory; false once all are there. */
    boolean upload() {
        return paths.upload();
    }

    void draw(Stage stage, Bodies bodies) {
        paths.drawAsGhost(stage, ghosts.moment());
        bodies.drawGhost(stage, ghosts);
        for (int i = 0; i < ghosts.size(); i++) {
            if (!ghosts.isShown(i)) {
                continue;
            }
            double[] at = ghosts.place(stage, i);
            if (stage.shows(pairdown.replay.ViewState.Layer.LABELS)
                    && stage.sight().project(at[0], at[1], at[2], xy)) {
                Labels.Label mark =
                        stage.labels()
                                .add(Labels.Rank.SLOT, xy[0], xy[1], stage.palette().inkSoft());
                mark.marked(pairdown.theme.Marker.of(i), true);
                mark.row(0)
                        .add(ghosts.body(i).id())
                        .add(' ')
                        .add(stage.word("scene.of"))
                        .add(' ')
                        .add(ghosts.moment().debrief().attempt().id());
                Optional<Moment.Ghost> ghost = stage.moment().ghost();
                if (ghost.isPresent()) {
                    Alignment.On on = ghost.get().alignment().on();
                    mark.row(1).add(stage.word(ALIGNED.getOrDefault(on, "")));
                }
            }
        }
    }

    @Override
    public void close() {
        paths.close();
    }
}
