package pairdown.film;

import java.io.IOException;
import java.nio.file.Path;
import org.jcodec.api.transcode.PixelStore.LoanerPicture;
import org.jcodec.api.transcode.SinkImpl;
import org.jcodec.api.transcode.VideoFrameWithPacket;
import org.jcodec.common.Codec;
import org.jcodec.common.Format;
import org.jcodec.common.io.FileChannelWrapper;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Packet;
import org.jcodec.common.model.Packet.FrameType;
import org.jcodec.common.model.Picture;
import pairdown.gl.Pixels;

/**
 * Films with no program installed: H.264 by JCodec, about three times the size. Colours are turned
 * into video's by our own: the library's way crushes black.
 *
 * <p>Source: ITU-R BT.601-7, 2.5: Y′ from 16 to 235, colour differences 16 to 240 round 128. BT.601
 * is what players take an unlabelled film for.
 */
final class OwnWriter implements FilmWriter {
    /** The library keeps samples as signed bytes round zero. */
    private static final int ZERO = 128;

    private final FileChannelWrapper channel;
    private final SinkImpl sink;
    private final Picture picture;
    private final int rate_Hz;
    private final byte[] rgb;
    private int frame;

    OwnWriter(Path file, int width_px, int height_px, int rate_Hz) throws IOException {
        this.rate_Hz = rate_Hz;
        this.rgb = new byte[width_px * height_px * 3];
        this.picture = Picture.create(width_px, height_px, ColorSpace.YUV420J);
        this.channel = NIOUtils.writableChannel(file.toFile());
        this.sink = SinkImpl.createWithStream(channel, Format.MOV, Codec.H264, null);
        sink.init();
    }

    @Override
    public String encoder() {
        return "the built-in encoder (H.264); with ffmpeg on the path films are smaller";
    }

    @Override
    public void add(Pixels pixels) throws IOException {
        pixels.copyRgbTo(rgb);
        luma();
        chroma();
        Packet packet =
                Packet.createPacket(null, frame, rate_Hz, 1, frame, FrameType.UNKNOWN, null);
        sink.outputVideoFrame(new VideoFrameWithPacket(packet, new LoanerPicture(picture, 1)));
        frame++;
    }

    private void luma() {
        byte[] y = picture.getPlaneData(0);
        for (int i = 0; i < y.length; i++) {
            y[i] =
                    (byte)
                            (luma(rgb[3 * i] & 0xff, rgb[3 * i + 1] & 0xff, rgb[3 * i + 2] & 0xff)
                                    - ZERO);
        }
    }

    /** Y′ of a colour, 16 to 235. */
    static int luma(int r, int g, int b) {
        return (int) Math.round(16 + (0.299 * r + 0.587 * g + 0.114 * b) * 219 / 255);
    }

    /** Each colour difference stands for four pixels: their mean. */
    private void chroma() {
        int width = picture.getWidth();
        byte[] cb = picture.getPlaneData(1);
        byte[] cr = picture.getPlaneData(2);
        int half = width / 2;
        for (int i = 0; i < cb.length; i++) {
            int at = 3 * (2 * (i / half) * width + 2 * (i % half));
            int below = at + 3 * width;
            double r = mean(at, below, 0);
            double g = mean(at, below, 1);
            double b = mean(at, below, 2);
            double y = 0.299 * r + 0.587 * g + 0.114 * b;
            cb[i] = (byte) (Math.round(128 + (b - y) / 1.772 * 224 / 255) - ZERO);
            cr[i] = (byte) (Math.round(128 + (r - y) / 1.402 * 224 / 255) - ZERO);
        }
    }

    private double mean(int at, int below, int channelOfThree) {
        int a = at + channelOfThree;
        int b = below + channelOfThree;
        return ((rgb[a] & 0xff) + (rgb[a + 3] & 0xff) + (rgb[b] & 0xff) + (rgb[b + 3] & 0xff))
                / 4.0;
    }

    @Override
    public void finish() throws IOException {
        sink.finish();
        channel.close();
    }

    @Override
    public void close() {
        NIOUtils.closeQuietly(channel);
    }
}
