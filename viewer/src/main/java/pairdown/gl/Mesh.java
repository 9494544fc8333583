package pairdown.gl;

import static org.lwjgl.opengl.GL11.GL_FLOAT;
import static org.lwjgl.opengl.GL11.GL_TRIANGLES;
import static org.lwjgl.opengl.GL11.GL_UNSIGNED_INT;
import static org.lwjgl.opengl.GL11.glDrawElements;
import static org.lwjgl.opengl.GL15.GL_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15.GL_ELEMENT_ARRAY_BUFFER;
import static org.lwjgl.opengl.GL15.GL_STATIC_DRAW;
import static org.lwjgl.opengl.GL15.glBindBuffer;
import static org.lwjgl.opengl.GL15.glBufferData;
import static org.lwjgl.opengl.GL15.glDeleteBuffers;
import static org.lwjgl.opengl.GL15.glGenBuffers;
import static org.lwjgl.opengl.GL20.glEnableVertexAttribArray;
import static org.lwjgl.opengl.GL20.glVertexAttribPointer;
import static org.lwjgl.opengl.GL30.glBindVertexArray;
import static org.lwjgl.opengl.GL30.glDeleteVertexArrays;
import static org.lwjgl.opengl.GL30.glGenVertexArrays;

/** Triangles in the card's memory. */
public final class Mesh implements AutoCloseable {
    private final int array;
    private final int vertices;
    private final int indices;
    private final int count;

    /**
     * @param vertices figures of all vertices, one vertex after the other
     * @param indices three a triangle
     * @param widths how many figures each attribute has, in the order of the shader's locations
     */
    public Mesh(float[] vertices, int[] indices, int... widths) {
        this.array = glGenVertexArrays();
        this.vertices = glGenBuffers();
        this.indices = glGenBuffers();
        this.count = indices.length;
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, this.vertices);
        glBufferData(GL_ARRAY_BUFFER, vertices, GL_STATIC_DRAW);
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, this.indices);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, indices, GL_STATIC_DRAW);
        int stride = 0;
        for (int width : widths) {
            stride += width;
        }
        int from = 0;
        for (int i = 0; i < widths.length; i++) {
            glEnableVertexAttribArray(i);
            glVertexAttribPointer(
                    i, widths[i], GL_FLOAT, false, stride * Float.BYTES, (long) from * Float.BYTES);
            from += widths[i];
        }
        glBindVertexArray(0);
    }

    public void draw() {
        glBindVertexArray(array);
        glDrawElements(GL_TRIANGLES, count, GL_UNSIGNED_INT, 0);
    }

    @Override
    public void close() {
        glDeleteVertexArrays(array);
        glDeleteBuffers(vertices);
        glDeleteBuffers(indices);
    }
}
