package pairdown.kept;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.Serializer;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * Maps by the values of an enum. What enum it is shows only in their keys: an empty one comes back
 * as an ordinary map.
 */
final class EnumMaps extends Serializer<Map<?, ?>> {
    @Override
    public void write(Kryo kryo, Output out, Map<?, ?> map) {
        out.writeVarInt(map.size(), true);
        map.forEach(
                (key, value) -> {
                    kryo.writeClassAndObject(out, key);
                    kryo.writeClassAndObject(out, value);
                });
    }

    @Override
    public Map<?, ?> read(Kryo kryo, Input in, Class<? extends Map<?, ?>> type) {
        int size = in.readVarInt(true);
        if (size == 0) {
            Map<?, ?> empty = new HashMap<>();
            kryo.reference(empty);
            return empty;
        }
        return filled(kryo, in, size);
    }

    private static <K extends Enum<K>> Map<K, Object> filled(Kryo kryo, Input in, int size) {
        K first = key(kryo, in);
        Map<K, Object> map = new EnumMap<>(first.getDeclaringClass());
        kryo.reference(map);
        map.put(first, kryo.readClassAndObject(in));
        for (int i = 1; i < size; i++) {
            K key = key(kryo, in);
            map.put(key, kryo.readClassAndObject(in));
        }
        return map;
    }

    @SuppressWarnings("unchecked")
    private static <K extends Enum<K>> K key(Kryo kryo, Input in) {
        return (K) kryo.readClassAndObject(in);
    }
}
