package pairdown.kept;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.KryoException;
import com.esotericsoftware.kryo.Registration;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import com.esotericsoftware.kryo.serializers.ImmutableCollectionsSerializers;
import com.esotericsoftware.kryo.util.DefaultClassResolver;
import com.esotericsoftware.kryo.util.DefaultInstantiatorStrategy;
import com.esotericsoftware.kryo.util.MapReferenceResolver;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.zip.CRC32C;
import java.util.zip.CheckedOutputStream;
import org.objenesis.strategy.StdInstantiatorStrategy;
import pairdown.debrief.Debrief;
import pairdown.season.FolderContent;

/**
 * A debrief as bytes, exact to the last bit, with what it was made from in front and a checksum at
 * the end. Only the build that wrote them can read them. The content in front is read alone first:
 * where it no longer holds, the rest need not be read.
 */
final class DebriefBytes {
    /** Larger ones take longer to read back than they save, and fill disks (bytes). */
    private static final long LARGEST = 256L << 20;

    private static final int BUFFER = 1 << 16;

    private final Kryo kryo;
    private final Input input;
    private final String program;
    private final FolderContent content;

    private DebriefBytes(Input input) {
        this.kryo = kryo();
        this.input = input;
        this.program = kryo.readObject(input, String.class);
        this.content = (FolderContent) kryo.readClassAndObject(input);
    }

    static void write(Path to, String program, FolderContent content, Debrief debrief)
            throws IOException {
        try (DataOutputStream file =
                new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(to)))) {
            CheckedOutputStream summed = new CheckedOutputStream(file, new CRC32C());
            Output out = new Output(summed, BUFFER);
            Kryo kryo = kryo();
            kryo.writeObject(out, program);
            kryo.writeClassAndObject(out, content);
            kryo.writeClassAndObject(out, debrief);
            out.flush();
            file.writeLong(summed.getChecksum().getValue());
        } catch (KryoException e) {
            throw new IOException("a debrief that can't be written as bytes", e);
        }
        if (Files.size(to) > LARGEST) {
            throw new IOException("too large to be kept");
        }
    }

    /**
     * Opens a file.
     *
     * @throws IOException if it can't be read or is not whole
     */
    static DebriefBytes read(Path file) throws IOException {
        byte[] all = Files.readAllBytes(file);
        int size = all.length - Long.BYTES;
        CRC32C sum = new CRC32C();
        sum.update(all, 0, Math.max(0, size));
        if (size < 0 || ByteBuffer.wrap(all, size, Long.BYTES).getLong() != sum.getValue()) {
            throw new IOException(file + ": damaged");
        }
        try {
            return new DebriefBytes(new Input(all, 0, size));
        } catch (KryoException e) {
            throw new IOException(file + ": not written by this program", e);
        }
    }

    String program() {
        return program;
    }

    FolderContent content() {
        return content;
    }

    /** The debrief; to be called once. */
    Debrief debrief() throws IOException {
        try {
            return (Debrief) kryo.readClassAndObject(input);
        } catch (KryoException e) {
            throw new IOException("a kept debrief that can't be read", e);
        }
    }

    static Kryo kryo() {
        Kryo kryo = new Kryo(new OurClasses(), new MapReferenceResolver());
        kryo.setRegistrationRequired(false);
        kryo.setInstantiatorStrategy(
                new DefaultInstantiatorStrategy(new StdInstantiatorStrategy()));
        ImmutableCollectionsSerializers.addDefaultSerializers(kryo);
        kryo.addDefaultSerializer(EnumMap.class, new EnumMaps());
        kryo.addDefaultSerializer(Path.class, new Paths());
        return kryo;
    }

    /** A file names the classes to be made: none but the program's own, matrices and plain ones. */
    private static final class OurClasses extends DefaultClassResolver {
        @Override
        @SuppressWarnings("rawtypes") // as it is declared where it is overridden
        public Registration registerImplicit(Class type) {
            Class<?> element = type;
            while (element.isArray()) {
                element = element.getComponentType();
            }
            String name = element.getName();
            boolean plain =
                    element.isPrimitive()
                            || name.startsWith("pairdown.")
                            || name.startsWith("org.hipparchus.linear.")
                            || name.startsWith("java.util.")
                            || name.startsWith("java.time.")
                            || name.startsWith("java.lang.")
                            || Path.class.isAssignableFrom(element);
            if (!plain) {
                throw new KryoException("no class of a debrief: " + name);
            }
            return super.registerImplicit(type);
        }
    }
}
