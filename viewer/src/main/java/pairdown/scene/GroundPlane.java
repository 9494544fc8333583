package pairdown.scene;

import java.util.Optional;
import org.joml.Vector3d;
import pairdown.camera.Ground;
import pairdown.gl.Mesh;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;

/** The ground with its grid: a plain, and relief where the attempt brings a terrain tile. */
final class GroundPlane implements AutoCloseable {
    /** Half the side of the plain: to the horizon from 4 km up, nearly. */
    private static final float HALF_M = 60_000;

    /** Eye height over the ground for which the finest grid is this many times smaller. */
    private static final double FINENESS = 10;

    private static final double FINEST_M = 10;
    private static final double COARSEST_M = 1000;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform offset;
    private final Uniform scale;
    private final Uniform eyeOnGrid;
    private final Uniform groundColour;
    private final Uniform line;
    private final Uniform sky;
    private final Uniform spacing;
    private final Uniform haze;
    private final Uniform relief;
    private final Mesh plate = square();
    private final Optional<Relief> tile;
    private final Optional<Mesh> tileMesh;
    private final double lowest_m;
    private final Ground ground;

    GroundPlane(Shaders shaders, Ground ground, Optional<Relief> tile) {
        this.ground = ground;
        this.tile = tile;
        this.tileMesh = tile.map(Relief::upload);
        this.lowest_m = tile.map(Relief::lowest_m).orElse(0.0);
        shader = shaders.load("ground");
        relativeToClip = shader.uniform("relativeToClip");
        offset = shader.uniform("offset_m");
        scale = shader.uniform("scale");
        eyeOnGrid = shader.uniform("eye_m");
        groundColour = shader.uniform("ground");
        line = shader.uniform("line");
        sky = shader.uniform("sky");
        spacing = shader.uniform("spacing_m");
        haze = shader.uniform("haze_m");
        relief = shader.uniform("relief");
    }

    private static Mesh square() {
        return new Mesh(
                new float[] {
                    -1, -1, 0, 0, 0, 1, 1, -1, 0, 0, 0, 1, 1, 1, 0, 0, 0, 1, -1, 1, 0, 0, 0, 1
                },
                new int[] {0, 1, 2, 0, 2, 3},
                3,
                3);
    }

    /** Side of the grid's small squares from where the camera stands (m). */
    double spacing_m(Stage stage) {
        Vector3d eye = stage.sight().pose().eye();
        double over = Math.max(1, eye.z - ground.up_m(eye.x, eye.y));
        double power = Math.pow(10, Math.floor(Math.log10(over / FINENESS)));
        return Math.max(FINEST_M, Math.min(COARSEST_M, power));
    }

    void draw(Stage stage) {
        Vector3d eye = stage.sight().pose().eye();
        double step = spacing_m(stage);
        double round = 10 * step;
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        groundColour.setColour(stage.palette().ground());
        line.setColour(stage.palette().groundGrid());
        sky.setColour(stage.palette().sky());
        spacing.set((float) step);
        haze.set((float) Math.max(9000, 4 * (eye.z - ground.up_m(eye.x, eye.y))));
        eyeOnGrid.set(
                (float) (eye.x - Math.floor(eye.x / round) * round),
                (float) (eye.y - Math.floor(eye.y / round) * round),
                0);
        double plain = tile.isPresent() ? lowest_m : ground.up_m(eye.x, eye.y);
        relief.set(0);
        scale.set(HALF_M, HALF_M, 1);
        offset.set(0, 0, (float) (plain - eye.z));
        plate.draw();
        if (tileMesh.isPresent()) {
            relief.set(1);
            scale.set(1, 1, 1);
            offset.set((float) -eye.x, (float) -eye.y, (float) -eye.z);
            tileMesh.get().draw();
        }
    }

    @Override
    public void close() {
        plate.close();
        tileMesh.ifPresent(Mesh::close);
    }
}
