package pairdown.camera;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.joml.Vector3d;
import org.joml.Vector4f;

class SightTest {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 700;

    /** What words are placed by is what the card draws by. */
    @Property(tries = 200, seed = "3")
    void aPlaceLandsWhereTheCardDrawsIt(
            @ForAll @DoubleRange(min = -30, max = 30) double east_m,
            @ForAll @DoubleRange(min = 20, max = 90) double north_m,
            @ForAll @DoubleRange(min = -20, max = 20) double up_m,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double shift) {
        Sight sight = new Sight();
        sight.set(pose(shift), 0, 0, WIDTH, HEIGHT);
        float[] xy = new float[2];
        assertTrue(sight.project(east_m, north_m, up_m, xy));
        Vector4f clip = new Vector4f((float) east_m, (float) north_m, (float) up_m, 1);
        sight.relativeToClip().transform(clip);
        assertEquals((1 + clip.x / clip.w) * WIDTH / 2, xy[0], 0.05);
        assertEquals((1 - clip.y / clip.w) * HEIGHT / 2, xy[1], 0.05);
    }

    @Property(tries = 50, seed = "4")
    void aShiftMovesThePictureAndChangesNoAngle(
            @ForAll @DoubleRange(min = -30, max = 30) double east_m,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double shift) {
        float[] straight = new float[2];
        float[] shifted = new float[2];
        Sight sight = new Sight();
        sight.set(pose(0), 0, 0, WIDTH, HEIGHT);
        sight.project(east_m, 50, 3, straight);
        sight.set(pose(shift), 0, 0, WIDTH, HEIGHT);
        sight.project(east_m, 50, 3, shifted);
        assertEquals(shift * WIDTH / 2, shifted[0] - straight[0], 0.01);
        assertEquals(straight[1], shifted[1], 0.01);
    }

    private static Pose pose(double shift) {
        return new Pose()
                .set(new Vector3d(), new Vector3d(0, 1, 0.1), new Vector3d(0, 0, 1), 40, 0.3)
                .shift(shift);
    }
}
