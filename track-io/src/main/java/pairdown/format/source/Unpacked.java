package pairdown.format.source;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import pairdown.track.UnusableInputException;

/**
 * Undoes gzip and zip as the bytes say, not the name. Nothing is ever written, so an entry's path
 * is only a label; growth beyond the settings' ratio ends the reading.
 */
final class Unpacked {
    private Unpacked() {}

    static InputStream of(BufferedInputStream in, LogSource source)
            throws IOException, UnusableInputException {
        InputStream unpacked = unpacked(in, source);
        if (unpacked == in) {
            return in;
        }
        BufferedInputStream inner = new BufferedInputStream(unpacked);
        byte[] magic = magic(inner);
        if (isGzip(magic) || isZip(magic)) {
            throw source.unusable("is an archive within an archive", "unpack it once");
        }
        return inner;
    }

    private static InputStream unpacked(BufferedInputStream in, LogSource source)
            throws IOException, UnusableInputException {
        byte[] magic = magic(in);
        if (isGzip(magic)) {
            return gzip(in, source);
        }
        if (isZip(magic)) {
            return theOneLog(in, source);
        }
        if (starts(magic, 'P', 'K', 5, 6)) {
            throw source.unusable("is an empty zip archive", "put the log into it");
        }
        return in;
    }

    private static byte[] magic(BufferedInputStream in) throws IOException {
        in.mark(4);
        byte[] magic = in.readNBytes(4);
        in.reset();
        return magic;
    }

    private static boolean isGzip(byte[] magic) {
        return starts(magic, 0x1f, 0x8b);
    }

    private static boolean isZip(byte[] magic) {
        return starts(magic, 'P', 'K', 3, 4);
    }

    private static boolean starts(byte[] bytes, int... magic) {
        if (bytes.length < magic.length) {
            return false;
        }
        for (int i = 0; i < magic.length; i++) {
            if ((bytes[i] & 0xff) != magic[i]) {
                return false;
            }
        }
        return true;
    }

    private static InputStream gzip(BufferedInputStream in, LogSource source)
            throws IOException, UnusableInputException {
        Counted packed = new Counted(in);
        try {
            return new Guarded(new Lenient(new GZIPInputStream(packed)), packed, source);
        } catch (ZipException | EOFException e) {
            throw damaged("gzip", e, source);
        }
    }

    private static UnusableInputException damaged(String kind, Exception e, LogSource source) {
        return new UnusableInputException(
                "is a damaged " + kind + " archive (" + e.getMessage() + ")",
                source.name(),
                "unpack it by hand and give the log itself",
                e);
    }

    /** Positions a stream at the only entry that may be a log. */
    private static InputStream theOneLog(BufferedInputStream in, LogSource source)
            throws IOException, UnusableInputException {
        Counted packed = new Counted(in);
        ZipInputStream zip = new ZipInputStream(packed);
        InputStream guarded = new Guarded(new Lenient(zip), packed, source);
        try {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                if (!mayBeLog(e)) {
                    continue;
                }
                return new OnlyEntry(guarded, zip, source, e.getName());
            }
        } catch (ZipException | EOFException | IllegalArgumentException e) {
            throw damaged("zip", e, source);
        }
        throw source.unusable("is a zip archive without a log", "give the log itself");
    }

    /** Archives also carry folders, pictures and the shadow files some systems add. */
    private static boolean mayBeLog(ZipEntry e) {
        String name = e.getName().toLowerCase(Locale.ROOT);
        String last = name.substring(name.lastIndexOf('/') + 1);
        return !e.isDirectory()
                && !name.startsWith("__macosx/")
                && !last.startsWith(".")
                && !last.matches("(readme|licen[cs]e)(\\..*)?")
                && !last.matches(".*\\.(png|jpe?g|gif|bmp|svg|pdf|docx?|mp4|mov|html?|md)");
    }

    /** The entry's bytes; at their end, a second log in the archive is an error. */
    private static final class OnlyEntry extends FilterInputStream {
        private final ZipInputStream zip;
        private final LogSource source;
        private final String first;
        private boolean checked;

        OnlyEntry(InputStream in, ZipInputStream zip, LogSource source, String first) {
            super(in);
            this.zip = zip;
            this.source = source;
            this.first = first;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            int n = checked ? -1 : in.read(to, from, length);
            if (n < 0 && !checked) {
                checked = true;
                refuseSecondLog();
            }
            return n;
        }

        private void refuseSecondLog() throws IOException {
            try {
                for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                    if (mayBeLog(e)) {
                        throw new Refused(
                                source.unusable(
                                        "is an archive with several logs ("
                                                + first
                                                + ", "
                                                + e.getName()
                                                + ", …)",
                                        "unpack it and give each log by itself"));
                    }
                }
            } catch (ZipException | EOFException | IllegalArgumentException e) {
                // The log itself was read whole; what follows it in the archive is no matter.
                return;
            }
        }
    }

    /** A refusal met in the middle of a stream, where only IOException may pass. */
    static final class Refused extends IOException {
        private static final long serialVersionUID = 1L;
        private final UnusableInputException reason;

        Refused(UnusableInputException reason) {
            super(reason.getMessage(), reason);
            this.reason = reason;
        }

        UnusableInputException reason() {
            return reason;
        }
    }

    /** A packed log cut short ends where it is cut, as an unpacked one does. */
    private static final class Lenient extends FilterInputStream {
        Lenient(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            try {
                return in.read();
            } catch (EOFException | ZipException e) {
                return -1;
            }
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            try {
                return in.read(to, from, length);
            } catch (EOFException | ZipException e) {
                return -1;
            }
        }
    }

    private static final class Counted extends FilterInputStream {
        private long count;

        Counted(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int b = in.read();
            count += b < 0 ? 0 : 1;
            return b;
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            int n = in.read(to, from, length);
            count += Math.max(n, 0);
            return n;
        }
    }

    private static final class Guarded extends FilterInputStream {
        private final Counted packed;
        private final LogSource source;
        private long count;

        Guarded(InputStream in, Counted packed, LogSource source) {
            super(in);
            this.packed = packed;
            this.source = source;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            int n = in.read(to, from, length);
            count += Math.max(n, 0);
            ReadSettings limits = source.settings();
            if (count > limits.unpackedBytes() && count / limits.unpackedRatio() > packed.count) {
                throw new Refused(
                        source.unusable(
                                "unpacks to more than "
                                        + limits.unpackedRatio()
                                        + " times its size, which no log does",
                                "unpack it by hand and look at it"));
            }
            return n;
        }
    }
}
