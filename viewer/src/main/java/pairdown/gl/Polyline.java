package pairdown.gl;

import static org.lwjgl.opengl.GL11.GL_FLOAT;
import static org.lwjgl.opengl.GL11.GL_TRIANGLE_STRIP;
import static org.lwjgl.opengl.GL15.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15.GL_STATIC_DRAW;
import static org.lwjgl.opengl.GL15.glBindBuffer;
import static org.lwjgl.opengl.GL15.glBufferData;
import static org.lwjgl.opengl.GL15.glBufferSubData;
import static org.lwjgl.opengl.GL15.glDeleteBuffers;
import static org.lwjgl.opengl.GL15.glGenBuffers;
import static org.lwjgl.opengl.GL20.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL20.glVertexAttribPointer;
import static org.lwjgl.opengl.GL30.glBindVertexArray;
import static org.lwjgl.opengl.GL30.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL30.glGenVertexArrays;
import static org.lwjgl.opengl.GL31.glDrawArraysInstanced;
import static org.lwjgl.opengl.GL33.glVertexAttribDivisor;

/**
 * Points of lines in the card's memory, there for good: four figures a point (place and time).
 * Drawn as one quad a segment, whose ends are a point (location 0) and the next (location 1), so
 * any stretch of the points is a line.
 */
public final class Polyline implements AutoCloseable {
    /** Figures a point: x, y, z, time. */
    public static final int WIDTH = 4;

    private static final int STRIDE = WIDTH * Float.BYTES;

    private final int array;
    private final int buffer;

    /** Room for points, brought by {@link #put}. */
    public Polyline(int points) {
        array = glGenVertexArrays();
        buffer = glGenBuffers();
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
        glBufferData(GL_ARRAY_BUFFER, (long) points * STRIDE, GL_STATIC_DRAW);
        for (int i = 0; i < 2; i++) {
            glEnableVertexAttribArray(i);
            glVertexAttribDivisor(i, 1);
        }
        glBindVertexArray(0);
    }

    /**
     * Brings points into the card's memory.
     *
     * @param first number of the first of them
     */
    public void put(int first, float[] points) {
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
        glBufferSubData(GL_ARRAY_BUFFER, (long) first * STRIDE, points);
    }

    /** To be called once before {@link #draw}s in a row. */
    public void bind() {
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, buffer);
    }

    /** Draws the segments between {@code count} points from {@code first} on. */
    public void draw(int first, int count) {
        if (count < 2) {
            return;
        }
        // OpenGL 3.3 has no first instance: the attributes start elsewhere instead.
        long from = (long) first * STRIDE;
        glVertexAttribPointer(0, WIDTH, GL_FLOAT, false, STRIDE, from);
        glVertexAttribPointer(1, WIDTH, GL_FLOAT, false, STRIDE, from + STRIDE);
        glDrawArraysInstanced(GL_TRIANGLE_STRIP, 0, 4, count - 1);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(buffer);
    }
}
