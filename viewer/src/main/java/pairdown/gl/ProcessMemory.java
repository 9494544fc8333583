package pairdown.gl;

import org.lwjgl.system.JNI;
import org.lwjgl.system.Platform;
import org.lwjgl.system.linux.DynamicLinkLoader;

/**
 * Tells glibc to keep freed memory. A software renderer frees and takes back its buffers in every
 * frame; with glibc's defaults each time goes through the kernel, and page faults make frames up to
 * four times slower. Elsewhere, and with another libc, nothing is done.
 */
final class ProcessMemory {
    /** {@code mallopt} parameters, from glibc's {@code malloc.h}. */
    private static final int M_TRIM_THRESHOLD = -1;

    private static final int M_TOP_PAD = -2;
    private static final int M_MMAP_THRESHOLD = -3;

    private static boolean done;

    private ProcessMemory() {}

    static synchronized void keepFreed() {
        if (done || Platform.get() != Platform.LINUX) {
            return;
        }
        done = true;
        long libc = DynamicLinkLoader.dlopen("libc.so.6", DynamicLinkLoader.RTLD_LAZY);
        long mallopt = libc == 0 ? 0 : DynamicLinkLoader.dlsym(libc, "mallopt");
        if (mallopt != 0) {
            JNI.invokeI(M_TRIM_THRESHOLD, 2_000_000_000, mallopt);
            JNI.invokeI(M_MMAP_THRESHOLD, 1_000_000_000, mallopt);
            JNI.invokeI(M_TOP_PAD, 64 << 20, mallopt);
        }
    }
}
