package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.joml.Vector3d;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pairdown.camera.Pose;
import pairdown.gl.Canvas;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;

class CompassTest {
    private static final Theme THEME = new Theme(Palette.LIGHT, Sizes.atPercent(100));

    /** Where the letters stand. */
    private static final class Letters implements InvocationHandler {
        final Map<String, double[]> found = new HashMap<>();

        @Override
        @SuppressWarnings("NullAway") // verbs give nothing back
        public @Nullable Object invoke(Object proxy, Method verb, Object[] given) {
            if (verb.getName().equals("text")) {
                found.put(given[0].toString(), new double[] {(float) given[1], (float) given[2]});
            }
            return verb.getReturnType() == float.class ? 0f : null;
        }
    }

    private static Map<String, double[]> letters(Pose pose) {
        Letters letters = new Letters();
        ClassLoader loader = Canvas.class.getClassLoader();
        Canvas canvas =
                (Canvas) Proxy.newProxyInstance(loader, new Class<?>[] {Canvas.class}, letters);
        Compass.drawInCorner(canvas, THEME, pose, 800, 0);
        return letters.found;
    }

    private static Pose looking(double heading_deg, double dip_deg, double roll_deg) {
        double h = Math.toRadians(heading_deg);
        double d = Math.toRadians(dip_deg);
        Vector3d forward =
                new Vector3d(Math.sin(h) * Math.cos(d), Math.cos(h) * Math.cos(d), -Math.sin(d));
        Vector3d top =
                new Vector3d(0, 0, 1)
                        .rotateAxis(Math.toRadians(roll_deg), forward.x, forward.y, forward.z);
        Pose pose = new Pose();
        pose.set(new Vector3d(), forward, top, 40, 0.1);
        return pose;
    }

    private static double[] from(Map<String, double[]> at, String one, String other) {
        double[] a = Objects.requireNonNull(at.get(one));
        double[] b = Objects.requireNonNull(at.get(other));
        return new double[] {b[0] - a[0], b[1] - a[1]};
    }

    @Property(tries = 200, seed = "5")
    void howeverTheCameraIsHeldTheRoseIsNoLine(
            @ForAll @DoubleRange(min = 0, max = 360) double heading_deg,
            @ForAll @DoubleRange(min = 0, max = 85) double dip_deg,
            @ForAll @DoubleRange(min = -180, max = 180) double roll_deg) {
        Map<String, double[]> at = letters(looking(heading_deg, dip_deg, roll_deg));
        double[] up = from(at, "S", "N");
        double[] right = from(at, "W", "E");
        double spread = Math.abs(up[0] * right[1] - up[1] * right[0]) / 4;
        double reach = 1.18 * THEME.sizes().mm(6);
        // Level with the ground nothing is left to stretch.
        double least = dip_deg < 1 ? 0 : 0.49;
        assertTrue(spread >= least * reach * reach, spread / (reach * reach) + " at " + dip_deg);
    }

    @Test
    void fromAboveWithTheNoseUpNorthIsWhereTheNosePoints() {
        Map<String, double[]> at = letters(looking(0, 89.9, 0));
        double[] up = from(at, "S", "N");
        double[] right = from(at, "W", "E");
        assertEquals(0, up[0], 0.1);
        assertTrue(up[1] < 0 && right[0] > 0);
    }
}
