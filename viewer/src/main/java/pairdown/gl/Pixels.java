package pairdown.gl;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;

/** A finished picture: top row first, eight bits a channel. */
public final class Pixels {
    private final int width_px;
    private final int height_px;
    private final int[] rgb;

    private Pixels(int width_px, int height_px, int[] rgb) {
        this.width_px = width_px;
        this.height_px = height_px;
        this.rgb = rgb;
    }

    /** From bytes red, green, blue, alpha with the bottom row first, as a card hands them over. */
    static Pixels ofBottomUp(int width_px, int height_px, ByteBuffer rgba) {
        int[] rgb = new int[width_px * height_px];
        for (int y = 0; y < height_px; y++) {
            int from = (height_px - 1 - y) * width_px * 4;
            for (int x = 0; x < width_px; x++) {
                int at = from + 4 * x;
                rgb[y * width_px + x] =
                        ((rgba.get(at) & 0xff) << 16)
                                | ((rgba.get(at + 1) & 0xff) << 8)
                                | (rgba.get(at + 2) & 0xff);
            }
        }
        return new Pixels(width_px, height_px, rgb);
    }

    public int width_px() {
        return width_px;
    }

    public int height_px() {
        return height_px;
    }

    /** The colour at a pixel as {@code 0xRRGGBB}; (0, 0) is the top left. */
    public int rgb(int x, int y) {
        if (x < 0 || y < 0 || x >= width_px || y >= height_px) {
            throw new IllegalArgumentException(
                    "pixel " + x + ", " + y + " is outside " + width_px + "×" + height_px);
        }
        return rgb[y * width_px + x];
    }

    /** The picture for the JDK's image writers. */
    public BufferedImage toImage() {
        BufferedImage image = new BufferedImage(width_px, height_px, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width_px, height_px, rgb, 0, width_px);
        return image;
    }

    /** Red, green, blue bytes, top row first, into an array of at least 3·width·height. */
    public void copyRgbTo(byte[] into) {
        int at = 0;
        for (int c : rgb) {
            into[at++] = (byte) (c >> 16);
            into[at++] = (byte) (c >> 8);
            into[at++] = (byte) c;
        }
    }

    /** Half the size each way, each pixel the mean of four: smooth edges for a still. */
    public Pixels halved() {
        int w = width_px / 2;
        int h = height_px / 2;
        int[] out = new int[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                out[y * w + x] = meanOfFour(2 * x, 2 * y);
            }
        }
        return new Pixels(w, h, out);
    }

    private int meanOfFour(int x, int y) {
        int a = rgb[y * width_px + x];
        int b = rgb[y * width_px + x + 1];
        int c = rgb[(y + 1) * width_px + x];
        int d = rgb[(y + 1) * width_px + x + 1];
        int mean = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            int sum =
                    ((a >> shift) & 0xff)
                            + ((b >> shift) & 0xff)
                            + ((c >> shift) & 0xff)
                            + ((d >> shift) & 0xff);
            mean |= ((sum + 2) / 4) << shift;
        }
        return mean;
    }
}
