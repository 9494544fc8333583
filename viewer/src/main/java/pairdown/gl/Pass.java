package pairdown.gl;

import static org.lwjgl.opengl.GL11.*;

/**
 * How what follows mixes with what is there. Each sets everything it relies on, so that passes can
 * come in any order and flat drawing in between does no harm.
 */
public final class Pass {
    private Pass() {}

    /** Clears a part of the target to a colour, and makes it the part drawn on. */
    public static void begin(int x_px, int y_px, int width_px, int height_px, int rgba) {
        glViewport(x_px, y_px, width_px, height_px);
        glEnable(GL_SCISSOR_TEST);
        glScissor(x_px, y_px, width_px, height_px);
        glDepthMask(true);
        glColorMask(true, true, true, true);
        glStencilMask(0xff);
        glClearColor(
                (rgba >>> 24) / 255f,
                ((rgba >>> 16) & 0xff) / 255f,
                ((rgba >>> 8) & 0xff) / 255f,
                1);
        glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
        glDisable(GL_SCISSOR_TEST);
        glDisable(GL_STENCIL_TEST);
        glFrontFace(GL_CCW);
    }

    /** Solid things: they hide what is behind. */
    public static void solid() {
        glDisable(GL_BLEND);
        glEnable(GL_DEPTH_TEST);
        glDepthFunc(GL_LESS);
        glDepthMask(true);
        glDisable(GL_CULL_FACE);
    }

    /** Things seen through: hidden by what is before them, hiding nothing. */
    public static void translucent() {
        glEnable(GL_BLEND);
        glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
        glEnable(GL_DEPTH_TEST);
        glDepthFunc(GL_LEQUAL);
        glDepthMask(false);
        glDisable(GL_CULL_FACE);
    }

    /** Translucent hulls: only the side that faces the camera. */
    public static void outside() {
        translucent();
        glEnable(GL_CULL_FACE);
        glCullFace(GL_BACK);
    }

    /** Leaves nothing set that flat drawing would stumble over. */
    public static void end() {
        glDepthMask(true);
        glDisable(GL_DEPTH_TEST);
        glDisable(GL_CULL_FACE);
        glDisable(GL_BLEND);
        org.lwjgl.opengl.GL30.glBindVertexArray(0);
        org.lwjgl.opengl.GL20.glUseProgram(0);
    }
}
