package pairdown.gl;

import static org.lwjgl.opengl.GL11.GL_FLOAT;
import static org.lwjgl.opengl.GL11.GL_TRIANGLE_STRIP;
import static org.lwjgl.opengl.GL11.GL_UNSIGNED_BYTE;
import static org.lwjgl.opengl.GL15.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15.GL_STREAM_DRAW;
import static org.lwjgl.opengl.GL15.glBindBuffer;
import static org.lwjgl.opengl.GL15.glDeleteBuffers;
import static org.lwjgl.opengl.GL15.glGenBuffers;
import static org.lwjgl.opengl.GL15.nglBufferData;
import static org.lwjgl.opengl.GL20.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL20.glVertexAttribPointer;
import static org.lwjgl.opengl.GL30.glBindVertexArray;
import static org.lwjgl.opengl.GL30.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL30.glGenVertexArrays;
import static org.lwjgl.opengl.GL31.glDrawArraysInstanced;
import static org.lwjgl.opengl.GL33.glVertexAttribDivisor;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * Straight lines that change with every frame: gathered by {@link #line}, drawn all at once by
 * {@link #draw} with the shader in use, and forgotten. Each has its width on screen, its colour and
 * its dashes.
 */
public final class Strokes implements AutoCloseable {
    private static final int FIGURES = 10;
    private static final int STRIDE = FIGURES * Float.BYTES;
    private static final int FIRST_CAPACITY = 2048;

    private final int array;
    private final int buffer;
    private ByteBuffer data = MemoryUtil.memAlloc(FIRST_CAPACITY * STRIDE);
    private int count;

    public Strokes() {
        array = glGenVertexArrays();
        buffer = glGenBuffers();
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
        glVertexAttribPointer(0, 3, GL_FLOAT, false, STRIDE, 0);
        glVertexAttribPointer(1, 3, GL_FLOAT, false, STRIDE, 12);
        glVertexAttribPointer(2, 3, GL_FLOAT, false, STRIDE, 24);
        glVertexAttribPointer(3, 4, GL_UNSIGNED_BYTE, true, STRIDE, 36);
        for (int i = 0; i < 4; i++) {
            glEnableVertexAttribArray(i);
            glVertexAttribDivisor(i, 1);
        }
        glBindVertexArray(0);
    }

    /**
     * A line from one place to another, both relative to the camera (m).
     *
     * @param width_px on screen
     * @param dash_px length of a dash and of the space after it; 0 for a whole line
     * @param phase_px how far into the pattern the line begins
     * @param rgba red, green, blue, opacity from the top byte down
     */
    public void line(
            double x0,
            double y0,
            double z0,
            double x1,
            double y1,
            double z1,
            float width_px,
            float dash_px,
            float phase_px,
            int rgba) {
        if ((count + 1) * STRIDE > data.capacity()) {
            data = MemoryUtil.memRealloc(data, data.capacity() * 2);
        }
        int at = count++ * STRIDE;
        data.putFloat(at, (float) x0).putFloat(at + 4, (float) y0).putFloat(at + 8, (float) z0);
        data.putFloat(at + 12, (float) x1).putFloat(at + 16, (float) y1);
        data.putFloat(at + 20, (float) z1);
        data.putFloat(at + 24, width_px).putFloat(at + 28, dash_px).putFloat(at + 32, phase_px);
        data.put(at + 36, (byte) (rgba >>> 24)).put(at + 37, (byte) (rgba >>> 16));
        data.put(at + 38, (byte) (rgba >>> 8)).put(at + 39, (byte) rgba);
    }

    public boolean isEmpty() {
        return count == 0;
    }

    /** Draws what was gathered and forgets it. */
    public void draw() {
        if (count > 0) {
            glBindVertexArray(array);
            glBindBuffer(GL_ARRAY_BUFFER, buffer);
            nglBufferData(
                    GL_ARRAY_BUFFER,
                    (long) count * STRIDE,
                    MemoryUtil.memAddress0(data),
                    GL_STREAM_DRAW);
            glDrawArraysInstanced(GL_TRIANGLE_STRIP, 0, 4, count);
        }
        count = 0;
    }

    @Override
    public void close() {
        MemoryUtil.memFree(data);
        glDeleteVertexArrays(array);
        glDeleteBuffers(buffer);
    }
}
