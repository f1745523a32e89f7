package dev.injectorplanner.app.photo;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Which way up a camera was held: tag 0x0112 of the first directory of a JPEG's Exif segment (CIPA DC-008, Exif 2.3, 4.6.4 A),
 * values 1 to 8. A picture is drawn upright before that segment is dropped.
 */
final class Turned {
    private static final int UPRIGHT = 1;
    private static final int ORIENTATION = 0x0112;

    private Turned() {}

    /** 1 to 8; 1 where the file says nothing that can be read. */
    static int orientation(byte[] file) {
        try {
            return inJpeg(ByteBuffer.wrap(file));
        } catch (IndexOutOfBoundsException | IllegalArgumentException damaged) {
            return UPRIGHT;
        }
    }

    private static int inJpeg(ByteBuffer file) {
        int at = 2;
        if (file.getShort(0) != (short) 0xFFD8) {
            return UPRIGHT;
        }
        while ((file.get(at) & 0xFF) == 0xFF) {
            int marker = file.get(at + 1) & 0xFF;
            int length = file.getShort(at + 2) & 0xFFFF;
            if (marker == 0xDA || length < 2) {
                return UPRIGHT;
            }
            if (marker == 0xE1 && file.getInt(at + 4) == 0x45786966) { // "Exif"
                return inTiff(file.slice(at + 10, length - 8));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static int inTiff(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int entry = 0; entry < entries; entry++) {
            int at = directory + 2 + 12 * entry;
            if ((tiff.getShort(at) & 0xFFFF) == ORIENTATION) {
                int value = tiff.getShort(at + 8);
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    static BufferedImage upright(BufferedImage picture, int orientation) {
        if (orientation == UPRIGHT) {
            return picture;
        }
        int w = picture.getWidth();
        int h = picture.getHeight();
        AffineTransform turn = switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        boolean lying = orientation >= 5;
        BufferedImage upright = new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = upright.createGraphics();
        pen.drawImage(picture, turn, null);
        pen.dispose();
        return upright;
    }
}
