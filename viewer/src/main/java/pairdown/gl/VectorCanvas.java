package pairdown.gl;

import static org.lwjgl.nanovg.NanoVG.*;
import static org.lwjgl.opengl.GL30.*;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lwjgl.nanovg.NVGColor;
import org.lwjgl.nanovg.NVGPaint;
import org.lwjgl.nanovg.NanoVGGL3;
import org.lwjgl.system.MemoryUtil;

/**
 * The canvas on the current OpenGL context, through NanoVG. One frame is {@link #begin}, the verbs,
 * {@link #end}. It leaves blending on and depth test, culling and scissor off; who draws in three
 * dimensions sets what it needs.
 */
public final class VectorCanvas implements Canvas, AutoCloseable {
    private static final int FIRST_TEXT_BYTES = 1024;

    private final long vg;
    private final NVGColor colour = NVGColor.malloc();
    private final NVGPaint paint = NVGPaint.malloc();
    private final List<ByteBuffer> fonts = new ArrayList<>();
    private final Map<Face, Integer> faces = new EnumMap<>(Face.class);
    private final List<@Nullable KeptPicture> pictures = new ArrayList<>();
    private final float[] clips = new float[4 * 16];
    private int clipDepth;
    private ByteBuffer text = MemoryUtil.memAlloc(FIRST_TEXT_BYTES);
    private int width_px;
    private int height_px;
    private final IntBuffer bound = MemoryUtil.memAllocInt(1);
    private int framebuffer;
    private @Nullable KeptPicture painting;

    private VectorCanvas(long vg) {
        this.vg = vg;
    }

    /**
     * A canvas on the context that is current.
     *
     * @throws IllegalStateException if the context gives no OpenGL 3.3
     */
    public static VectorCanvas create() {
        long vg = NanoVGGL3.nvgCreate(NanoVGGL3.NVG_ANTIALIAS | NanoVGGL3.NVG_STENCIL_STROKES);
        if (vg == MemoryUtil.NULL) {
            throw new IllegalStateException("no flat drawing on this OpenGL context");
        }
        VectorCanvas canvas = new VectorCanvas(vg);
        for (Face face : Face.values()) {
            canvas.faces.put(face, canvas.load(fontOf(face)));
        }
        return canvas;
    }

    private static String fontOf(Face face) {
        return switch (face) {
            case TEXT -> "Inter-Regular";
            case TEXT_BOLD -> "Inter-SemiBold";
            case FIGURES -> "JetBrainsMono-Regular";
            case FIGURES_BOLD -> "JetBrainsMono-Bold";
        };
    }

    private int load(String name) {
        ByteBuffer bytes = resource("/fonts/" + name + ".ttf");
        fonts.add(bytes);
        int face = nvgCreateFontMem(vg, name, bytes, false);
        if (face < 0) {
            throw new IllegalStateException("the font " + name + " can't be read");
        }
        return face;
    }

    private static ByteBuffer resource(String path) {
        try (InputStream in = VectorCanvas.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: no " + path);
            }
            byte[] bytes = in.readAllBytes();
            return MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Begins a frame on the framebuffer that is bound. */
    public void begin(int width_px, int height_px) {
        this.width_px = width_px;
        this.height_px = height_px;
        nglGetIntegerv(GL_FRAMEBUFFER_BINDING, MemoryUtil.memAddress0(bound));
        this.framebuffer = bound.get(0);
        clipDepth = 0;
        glViewport(0, 0, width_px, height_px);
        glClear(GL_STENCIL_BUFFER_BIT);
        nvgBeginFrame(vg, width_px, height_px, 1);
    }

    /** Ends the frame: everything is drawn. */
    public void end() {
        flush();
    }

    private void flush() {
        nvgEndFrame(vg);
        glDisable(GL_CULL_FACE);
        glDisable(GL_SCISSOR_TEST);
        glDisable(GL_DEPTH_TEST);
        glDisable(GL_STENCIL_TEST);
        glUseProgram(0);
        glBindVertexArray(0);
    }

    @Override
    public void fill(float x, float y, float width, float height, int rgba) {
        nvgBeginPath(vg);
        nvgRect(vg, x, y, width, height);
        fillPath(rgba);
    }

    @Override
    public void roundFill(float x, float y, float width, float height, float radius, int rgba) {
        nvgBeginPath(vg);
        nvgRoundedRect(vg, x, y, width, height, radius);
        fillPath(rgba);
    }

    @Override
    public void outline(
            float x, float y, float width, float height, float radius, float thickness, int rgba) {
        float half = thickness / 2;
        nvgBeginPath(vg);
        nvgRoundedRect(vg, x + half, y + half, width - thickness, height - thickness, radius);
        strokePath(thickness, rgba);
    }

    @Override
    public void line(float x0, float y0, float x1, float y1, float thickness, int rgba) {
        nvgBeginPath(vg);
        nvgMoveTo(vg, x0, y0);
        nvgLineTo(vg, x1, y1);
        strokePath(thickness, rgba);
    }

    @Override
    public void polyline(float[] xy, int count, float thickness, int rgba) {
        if (count < 2) {
            return;
        }
        follow(xy, count);
        nvgLineJoin(vg, NVG_BEVEL);
        strokePath(thickness, rgba);
    }

    @Override
    public void polygon(float[] xy, int count, int rgba) {
        if (count < 3) {
            return;
        }
        follow(xy, count);
        nvgClosePath(vg);
        fillPath(rgba);
    }

    private void follow(float[] xy, int count) {
        nvgBeginPath(vg);
        nvgMoveTo(vg, xy[0], xy[1]);
        for (int i = 1; i < count; i++) {
            nvgLineTo(vg, xy[2 * i], xy[2 * i + 1]);
        }
    }

    @Override
    public void disc(float x, float y, float radius, int rgba) {
        nvgBeginPath(vg);
        nvgCircle(vg, x, y, radius);
        fillPath(rgba);
    }

    private void fillPath(int rgba) {
        nvgFillColor(vg, colour(rgba));
        nvgFill(vg);
    }

    private void strokePath(float thickness, int rgba) {
        nvgStrokeColor(vg, colour(rgba));
        nvgStrokeWidth(vg, thickness);
        nvgStroke(vg);
    }

    private NVGColor colour(int rgba) {
        return colour.r((rgba >>> 24) / 255f)
                .g(((rgba >>> 16) & 0xFF) / 255f)
                .b(((rgba >>> 8) & 0xFF) / 255f)
                .a((rgba & 0xFF) / 255f);
    }

    @Override
    public void text(
            CharSequence words,
            float x,
            float baseline,
            Face face,
            float size,
            Align align,
            int rgba) {
        nvgTextAlign(vg, NVG_ALIGN_BASELINE | horizontal(align));
        nvgFillColor(vg, colour(rgba));
        long start = encode(words, face, size);
        nnvgText(vg, x, baseline, start, start + text.position());
    }

    private static int horizontal(Align align) {
        return switch (align) {
            case LEFT -> NVG_ALIGN_LEFT;
            case CENTRE -> NVG_ALIGN_CENTER;
            case RIGHT -> NVG_ALIGN_RIGHT;
        };
    }

    @Override
    public float textWidth(CharSequence words, Face face, float size) {
        nvgTextAlign(vg, NVG_ALIGN_BASELINE | NVG_ALIGN_LEFT);
        long start = encode(words, face, size);
        return nnvgTextBounds(vg, 0, 0, start, start + text.position(), MemoryUtil.NULL);
    }

    private long encode(CharSequence words, Face face, float size) {
        nvgFontFaceId(vg, faces.getOrDefault(face, 0));
        nvgFontSize(vg, size);
        if (text.capacity() < 3 * words.length()) {
            MemoryUtil.memFree(text);
            text = MemoryUtil.memAlloc(6 * words.length());
        }
        text.clear();
        utf8(words, text);
        return MemoryUtil.memAddress0(text);
    }

    /**
     * In UTF-8; a character outside the basic plane, which no face has, becomes a question mark.
     */
    static void utf8(CharSequence words, ByteBuffer into) {
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            if (c < 0x80) {
                into.put((byte) c);
            } else if (c < 0x800) {
                into.put((byte) (0xC0 | (c >> 6))).put((byte) (0x80 | (c & 0x3F)));
            } else if (Character.isSurrogate(c)) {
                into.put((byte) '?');
            } else {
                into.put((byte) (0xE0 | (c >> 12)));
                into.put((byte) (0x80 | ((c >> 6) & 0x3F))).put((byte) (0x80 | (c & 0x3F)));
            }
        }
    }

    @Override
    public void clip(float x, float y, float width, float height) {
        int at = 4 * clipDepth++;
        clips[at] = x;
        clips[at + 1] = y;
        clips[at + 2] = width;
        clips[at + 3] = height;
        nvgIntersectScissor(vg, x, y, width, height);
    }

    @Override
    public void unclip() {
        clipDepth--;
        nvgResetScissor(vg);
        for (int i = 0; i < clipDepth; i++) {
            int at = 4 * i;
            nvgIntersectScissor(vg, clips[at], clips[at + 1], clips[at + 2], clips[at + 3]);
        }
    }

    @Override
    public boolean beginPicture(int slot, long key, float x, float y, float width, float height) {
        while (pictures.size() <= slot) {
            pictures.add(null);
        }
        KeptPicture kept = pictures.get(slot);
        if (kept == null || !kept.hasPlace(x, y, width, height)) {
            if (kept != null) {
                kept.close();
            }
            kept = new KeptPicture(vg, x, y, width, height);
            pictures.set(slot, kept);
        } else if (kept.isOf(key)) {
            show(kept);
            return false;
        }
        flush();
        kept.paintOn(key);
        nvgBeginFrame(vg, kept.width_px(), kept.height_px(), 1);
        nvgTranslate(vg, -kept.x(), -kept.y());
        painting = kept;
        return true;
    }

    @Override
    public void endPicture() {
        KeptPicture done = painting;
        if (done == null) {
            throw new IllegalStateException("no picture was begun");
        }
        painting = null;
        flush();
        glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
        glViewport(0, 0, width_px, height_px);
        nvgBeginFrame(vg, width_px, height_px, 1);
        show(done);
    }

    private void show(KeptPicture kept) {
        nvgImagePattern(
                vg,
                kept.x(),
                kept.y(),
                kept.width_px(),
                kept.height_px(),
                0,
                kept.image(),
                1,
                paint);
        nvgBeginPath(vg);
        nvgRect(vg, kept.x(), kept.y(), kept.width_px(), kept.height_px());
        nvgFillPaint(vg, paint);
        nvgFill(vg);
    }

    @Override
    public void close() {
        for (KeptPicture kept : pictures) {
            if (kept != null) {
                kept.close();
            }
        }
        NanoVGGL3.nvgDelete(vg);
        fonts.forEach(MemoryUtil::memFree);
        MemoryUtil.memFree(text);
        MemoryUtil.memFree(bound);
        colour.free();
        paint.free();
    }
}
