package pairdown.gl;

import static org.lwjgl.opengl.GL20.glUniform1f;
import static org.lwjgl.opengl.GL20.glUniform2f;
import static org.lwjgl.opengl.GL20.glUniform3f;
import static org.lwjgl.opengl.GL20.glUniform4f;
import static org.lwjgl.opengl.GL20.glUniformMatrix3fv;
import static org.lwjgl.opengl.GL20.glUniformMatrix4fv;

import org.joml.Matrix3f;
import org.joml.Matrix4f;

/** A value a shader reads, the same for all it draws at once. Set it while its shader is in use. */
public final class Uniform {
    private final String name;
    private final float[] scratch = new float[16];
    private final float[] scratch9 = new float[9];
    private int location;

    Uniform(String name) {
        this.name = name;
    }

    void resolve(int at) {
        location = at;
    }

    String name() {
        return name;
    }

    public void set(float x) {
        glUniform1f(location, x);
    }

    public void set(float x, float y) {
        glUniform2f(location, x, y);
    }

    public void set(float x, float y, float z) {
        glUniform3f(location, x, y, z);
    }

    public void set(float x, float y, float z, float w) {
        glUniform4f(location, x, y, z, w);
    }

    /** A colour: red, green, blue, opacity from the top byte down. */
    public void setColour(int rgba) {
        set(
                (rgba >>> 24) / 255f,
                ((rgba >>> 16) & 0xff) / 255f,
                ((rgba >>> 8) & 0xff) / 255f,
                (rgba & 0xff) / 255f);
    }

    public void set(Matrix4f m) {
        glUniformMatrix4fv(location, false, m.get(scratch));
    }

    public void set(Matrix3f m) {
        glUniformMatrix3fv(location, false, m.get(scratch9));
    }
}
