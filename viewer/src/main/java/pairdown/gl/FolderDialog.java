package pairdown.gl;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.lwjgl.PointerBuffer;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.util.nfd.NativeFileDialog;

/** The system's own dialog for choosing a folder, where there is one. */
public final class FolderDialog {
    /** What came of asking. */
    public enum Outcome {
        CHOSEN,
        LEFT,
        /** There is no dialog here: a path has to be typed. */
        NONE_HERE
    }

    /**
     * The answer.
     *
     * @param folder only for {@link Outcome#CHOSEN}
     */
    public record Answer(Outcome outcome, Optional<Path> folder) {}

    private FolderDialog() {}

    /** Asks, and waits for the answer. On the thread of the window. */
    public static Answer ask() {
        if (!starts()) {
            return new Answer(Outcome.NONE_HERE, Optional.empty());
        }
        try (MemoryStack stack = MemoryStack.stackPush()) {
            PointerBuffer chosen = stack.mallocPointer(1);
            int result = NativeFileDialog.NFD_PickFolder(chosen, (CharSequence) null);
            if (result == NativeFileDialog.NFD_OKAY) {
                String path = chosen.getStringUTF8(0);
                NativeFileDialog.NFD_FreePath(chosen.get(0));
                return new Answer(Outcome.CHOSEN, Optional.of(Path.of(path)));
            }
            return new Answer(
                    result == NativeFileDialog.NFD_CANCEL ? Outcome.LEFT : Outcome.NONE_HERE,
                    Optional.empty());
        } catch (InvalidPathException e) {
            return new Answer(Outcome.NONE_HERE, Optional.empty());
        } finally {
            NativeFileDialog.NFD_Quit();
        }
    }

    /** Without a display or the toolkit the dialog's library refuses, or can't be loaded at all. */
    private static boolean starts() {
        try {
            return NativeFileDialog.NFD_Init() == NativeFileDialog.NFD_OKAY;
        } catch (UnsatisfiedLinkError | ExceptionInInitializerError | NoClassDefFoundError e) {
            return false;
        }
    }
}
