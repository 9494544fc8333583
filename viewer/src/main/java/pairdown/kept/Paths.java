package pairdown.kept;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.Serializer;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import java.nio.file.Path;

/** Paths as they are spelt. */
final class Paths extends Serializer<Path> {
    Paths() {
        super(false, true);
    }

    @Override
    public void write(Kryo kryo, Output out, Path path) {
        out.writeString(path.toString());
    }

    @Override
    public Path read(Kryo kryo, Input in, Class<? extends Path> type) {
        return Path.of(in.readString());
    }
}
