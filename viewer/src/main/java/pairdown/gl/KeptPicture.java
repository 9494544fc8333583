package pairdown.gl;

import static org.lwjgl.opengl.GL30.*;

import org.lwjgl.nanovg.NanoVG;
import org.lwjgl.nanovg.NanoVGGL3;

/** A piece of flat drawing kept as a texture, and the key it was painted under. */
final class KeptPicture implements AutoCloseable {
    private final long vg;
    private final int x;
    private final int y;
    private final int width_px;
    private final int height_px;
    private final int framebuffer;
    private final int texture;
    private final int stencil;
    private final int image;
    private long key;
    private boolean painted;

    KeptPicture(long vg, float x, float y, float width, float height) {
        this.vg = vg;
        this.x = (int) x;
        this.y = (int) y;
        this.width_px = Math.max(1, (int) Math.ceil(width));
        this.height_px = Math.max(1, (int) Math.ceil(height));
        int before = glGetInteger(GL_FRAMEBUFFER_BINDING);
        texture = glGenTextures();
        glBindTexture(GL_TEXTURE_2D, texture);
        glTexImage2D(
                GL_TEXTURE_2D, 0, GL_RGBA8, width_px, height_px, 0, GL_RGBA, GL_UNSIGNED_BYTE, 0);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
        stencil = glGenRenderbuffers();
        glBindRenderbuffer(GL_RENDERBUFFER, stencil);
        glRenderbufferStorage(GL_RENDERBUFFER, GL_DEPTH24_STENCIL8, width_px, height_px);
        framebuffer = glGenFramebuffers();
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, texture, 0);
        glFramebufferRenderbuffer(
                GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, stencil);
        glBindFramebuffer(GL_FRAMEBUFFER, before);
        glBindTexture(GL_TEXTURE_2D, 0);
        image =
                NanoVGGL3.nvglCreateImageFromHandle(
                        vg,
                        texture,
                        width_px,
                        height_px,
                        NanoVG.NVG_IMAGE_FLIPY
                                | NanoVG.NVG_IMAGE_PREMULTIPLIED
                                | NanoVG.NVG_IMAGE_NEAREST
                                | NanoVGGL3.NVG_IMAGE_NODELETE);
    }

    boolean hasPlace(float px, float py, float width, float height) {
        return x == (int) px
                && y == (int) py
                && width_px == Math.max(1, (int) Math.ceil(width))
                && height_px == Math.max(1, (int) Math.ceil(height));
    }

    boolean isOf(long wanted) {
        return painted && key == wanted;
    }

    /** Makes this what is drawn on, empty, under a new key. */
    void paintOn(long newKey) {
        key = newKey;
        painted = true;
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glViewport(0, 0, width_px, height_px);
        glClearColor(0, 0, 0, 0);
        glClear(GL_COLOR_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    }

    int x() {
        return x;
    }

    int y() {
        return y;
    }

    int width_px() {
        return width_px;
    }

    int height_px() {
        return height_px;
    }

    int image() {
        return image;
    }

    @Override
    public void close() {
        NanoVG.nvgDeleteImage(vg, image);
        glDeleteFramebuffers(framebuffer);
        glDeleteRenderbuffers(stencil);
        glDeleteTextures(texture);
    }
}
