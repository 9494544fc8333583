package pairdown.attempt;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.Hostile;

/** A file of marks made up by a fuzzer. */
class MarksFileFuzzTest {
    @MethodSource("files")
    @FuzzTest
    void marks(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Hostile.check(
                bytes.length, () -> MarksFile.marks(JsonFile.parse(Path.of("marks.json"), text)));
    }

    static Stream<byte[]> files() {
        return Stream.of(
                        """
                        {"format": "pairdown-marks", "version": 1, "marks": [
                         {"time": "2031-05-14T15:02:11.350Z", "kind": "touch",
                          "participants": ["blue", "lead"], "note": "left hand", "video": "a.mp4"},
                         {"time": "2031-05-14T15:02:31Z", "kind": "moment"}]}
                        """)
                .map(json -> json.getBytes(StandardCharsets.UTF_8));
    }
}
