package pairdown.gl;

import static org.lwjgl.opengl.GL11.GL_FALSE;
import static org.lwjgl.opengl.GL20.GL_COMPILE_STATUS;
import static org.lwjgl.opengl.GL20.GL_FRAGMENT_SHADER;
import static org.lwjgl.opengl.GL20.GL_LINK_STATUS;
import static org.lwjgl.opengl.GL20.GL_VERTEX_SHADER;
import static org.lwjgl.opengl.GL20.glAttachShader;
import static org.lwjgl.opengl.GL20.glCompileShader;
import static org.lwjgl.opengl.GL20.glCreateProgram;
import static org.lwjgl.opengl.GL20.glCreateShader;
import static org.lwjgl.opengl.GL20.glDeleteProgram;
import static org.lwjgl.opengl.GL20.glDeleteShader;
import static org.lwjgl.opengl.GL20.glGetProgramInfoLog;
import static org.lwjgl.opengl.GL20.glGetProgrami;
import static org.lwjgl.opengl.GL20.glGetShaderInfoLog;
import static org.lwjgl.opengl.GL20.glGetShaderi;
import static org.lwjgl.opengl.GL20.glGetUniformLocation;
import static org.lwjgl.opengl.GL20.glLinkProgram;
import static org.lwjgl.opengl.GL20.glShaderSource;
import static org.lwjgl.opengl.GL20.glUseProgram;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A program of one vertex and one fragment shader. Uniforms are looked up once, at load. */
public final class Shader implements AutoCloseable {
    private final String name;
    private final Optional<Path> disk;
    private final List<Uniform> uniforms = new ArrayList<>();
    private List<String> files = List.of();
    private long changed;
    private int program;

    /**
     * @throws IllegalStateException if it does not compile, with file and line
     */
    Shader(String name, Optional<Path> disk) {
        this.name = name;
        this.disk = disk;
        ShaderSource vertex = ShaderSource.own(name + ".vert", disk);
        ShaderSource fragment = ShaderSource.own(name + ".frag", disk);
        program = link(vertex, fragment);
        remember(vertex, fragment);
    }

    private void remember(ShaderSource vertex, ShaderSource fragment) {
        files = new ArrayList<>(vertex.files());
        files.addAll(fragment.files());
        changed = disk.map(folder -> ShaderSource.changed(files, folder)).orElse(0L);
    }

    private int link(ShaderSource vertex, ShaderSource fragment) {
        int v = compile(GL_VERTEX_SHADER, vertex);
        int f = compile(GL_FRAGMENT_SHADER, fragment);
        int linked = glCreateProgram();
        glAttachShader(linked, v);
        glAttachShader(linked, f);
        glLinkProgram(linked);
        glDeleteShader(v);
        glDeleteShader(f);
        if (glGetProgrami(linked, GL_LINK_STATUS) == GL_FALSE) {
            String log = glGetProgramInfoLog(linked);
            glDeleteProgram(linked);
            throw new IllegalStateException("shader " + name + " does not link: " + log);
        }
        return linked;
    }

    private static int compile(int kind, ShaderSource source) {
        int shader = glCreateShader(kind);
        glShaderSource(shader, source.text());
        glCompileShader(shader);
        if (glGetShaderi(shader, GL_COMPILE_STATUS) == GL_FALSE) {
            String log = source.named(glGetShaderInfoLog(shader));
            glDeleteShader(shader);
            throw new IllegalStateException("shaders/" + source.files().get(0) + ": " + log);
        }
        return shader;
    }

    /** A uniform by its name in the shader; setting one the compiler dropped does nothing. */
    public Uniform uniform(String uniform) {
        Uniform found = new Uniform(uniform);
        found.resolve(glGetUniformLocation(program, uniform));
        uniforms.add(found);
        return found;
    }

    /** Draws with this from now on. */
    public void use() {
        glUseProgram(program);
    }

    /**
     * Takes up the files on disk if they changed. A mistake keeps the last good program.
     *
     * @return what is wrong with the new files, with file and line
     */
    Optional<String> reloadIfChanged() {
        if (disk.isEmpty() || ShaderSource.changed(files, disk.get()) <= changed) {
            return Optional.empty();
        }
        try {
            ShaderSource vertex = ShaderSource.read(name + ".vert", disk);
            ShaderSource fragment = ShaderSource.read(name + ".frag", disk);
            remember(vertex, fragment);
            int fresh = link(vertex, fragment);
            glDeleteProgram(program);
            program = fresh;
            uniforms.forEach(u -> u.resolve(glGetUniformLocation(program, u.name())));
            return Optional.empty();
        } catch (IllegalStateException | java.io.IOException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    @Override
    public void close() {
        glDeleteProgram(program);
    }
}
