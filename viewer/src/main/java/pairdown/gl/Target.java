package pairdown.gl;

import static org.lwjgl.opengl.GL11.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL11.GL_NEAREST;
import static org.lwjgl.opengl.GL11.GL_PACK_ALIGNMENT;
import static org.lwjgl.opengl.GL11.GL_RGBA;
import static org.lwjgl.opengl.GL11.GL_RGBA8;
import static org.lwjgl.opengl.GL11.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL11.glPixelStorei;
import static org.lwjgl.opengl.GL11.glReadPixels;
import static org.lwjgl.opengl.GL11.glViewport;
import static org.lwjgl.opengl.GL30.GL_COLOR_ATTACHMENT0;
import static org.lwjgl.opengl.GL30.GL_DEPTH24_STENCIL8;
import static org.lwjgl.opengl.GL30.GL_DEPTH_STENCIL_ATTACHMENT;
import static org.lwjgl.opengl.GL30.GL_DRAW_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30.GL_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30.GL_FRAMEBUFFER_COMPLETE;
import static org.lwjgl.opengl.GL30.GL_READ_FRAMEBUFFER;
import static org.lwjgl.opengl.GL30.GL_RENDERBUFFER;
import static org.lwjgl.opengl.GL30.glBindFramebuffer;
import static org.lwjgl.opengl.GL30.glBindRenderbuffer;
import static org.lwjgl.opengl.GL30.glBlitFramebuffer;
import static org.lwjgl.opengl.GL30.glCheckFramebufferStatus;
import static org.lwjgl.opengl.GL30.glDeleteFramebuffers;
import static org.lwjgl.opengl.GL30.glDeleteRenderbuffers;
import static org.lwjgl.opengl.GL30.glFramebufferRenderbuffer;
import static org.lwjgl.opengl.GL30.glGenFramebuffers;
import static org.lwjgl.opengl.GL30.glGenRenderbuffers;
import static org.lwjgl.opengl.GL30.glRenderbufferStorageMultisample;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** A picture in the card's memory: colour, depth and stencil. */
final class Target implements AutoCloseable {
    private final int framebuffer;
    private final int colour;
    private final int depth;
    private final int width_px;
    private final int height_px;

    private Target(int width_px, int height_px, int samples) {
        this.width_px = width_px;
        this.height_px = height_px;
        this.framebuffer = glGenFramebuffers();
        this.colour = storage(GL_RGBA8, samples);
        this.depth = storage(GL_DEPTH24_STENCIL8, samples);
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour);
        glFramebufferRenderbuffer(
                GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, depth);
        int status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
        if (status != GL_FRAMEBUFFER_COMPLETE) {
            throw new IllegalStateException(
                    "a target of " + width_px + "×" + height_px + " px is refused: " + status);
        }
    }

    static Target of(int width_px, int height_px) {
        return new Target(width_px, height_px, 0);
    }

    static Target multisampled(int width_px, int height_px, int samples) {
        return new Target(width_px, height_px, samples);
    }

    private int storage(int format, int samples) {
        int buffer = glGenRenderbuffers();
        glBindRenderbuffer(GL_RENDERBUFFER, buffer);
        glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, width_px, height_px);
        return buffer;
    }

    int width_px() {
        return width_px;
    }

    int height_px() {
        return height_px;
    }

    void bind() {
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glViewport(0, 0, width_px, height_px);
    }

    void resolveTo(Target other) {
        blitTo(other.framebuffer);
    }

    /** Onto the window. */
    void resolveToWindow() {
        blitTo(0);
    }

    private void blitTo(int other) {
        glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
        glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other);
        glBlitFramebuffer(
                0,
                0,
                width_px,
                height_px,
                0,
                0,
                width_px,
                height_px,
                GL_COLOR_BUFFER_BIT,
                GL_NEAREST);
    }

    Pixels read() {
        glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
        return readBound(width_px, height_px);
    }

    /** What the framebuffer bound for reading shows. */
    static Pixels readBound(int width_px, int height_px) {
        ByteBuffer bytes = MemoryUtil.memAlloc(width_px * height_px * 4);
        try {
            glPixelStorei(GL_PACK_ALIGNMENT, 1);
            glReadPixels(0, 0, width_px, height_px, GL_RGBA, GL_UNSIGNED_BYTE, bytes);
            return Pixels.ofBottomUp(width_px, height_px, bytes);
        } finally {
            MemoryUtil.memFree(bytes);
        }
    }

    @Override
    public void close() {
        glDeleteFramebuffers(framebuffer);
        glDeleteRenderbuffers(colour);
        glDeleteRenderbuffers(depth);
    }
}
