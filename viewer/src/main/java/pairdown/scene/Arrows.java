package pairdown.scene;

import org.joml.Vector3d;

/** An arrow in space whose head keeps its size on screen. */
final class Arrows {
    private static final double HEAD_PX = 11;

    private Arrows() {}

    static void draw(
            Stage stage,
            double east,
            double north,
            double up,
            double de,
            double dn,
            double du,
            float width_px,
            int rgba) {
        double tipE = east + de;
        double tipN = north + dn;
        double tipU = up + du;
        stage.line(east, north, up, tipE, tipN, tipU, width_px, 0, rgba);
        double length = Math.sqrt(de * de + dn * dn + du * du);
        double head = stage.metresPerPixel(tipE, tipN, tipU) * stage.px(HEAD_PX);
        head = Math.min(head, length * 0.5);
        // The head lies across the line of sight, so that it never shows its edge.
        Vector3d eye = stage.sight().pose().eye();
        double sx = tipE - eye.x;
        double sy = tipN - eye.y;
        double sz = tipU - eye.z;
        double cx = dn * sz - du * sy;
        double cy = du * sx - de * sz;
        double cz = de * sy - dn * sx;
        double c = Math.sqrt(cx * cx + cy * cy + cz * cz);
        if (c < 1e-9) {
            return;
        }
        for (int side = -1; side <= 1; side += 2) {
            double k = side * 0.45 * head / c;
            stage.line(
                    tipE,
                    tipN,
                    tipU,
                    tipE - de / length * head + cx * k,
                    tipN - dn / length * head + cy * k,
                    tipU - du / length * head + cz * k,
                    width_px,
                    0,
                    rgba);
        }
    }
}
