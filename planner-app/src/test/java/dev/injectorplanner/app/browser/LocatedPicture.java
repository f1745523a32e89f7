package dev.injectorplanner.app.browser;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** A JPEG as a phone writes it: with an APP1 segment whose name is Exif, where the position stands (JEITA CP-3451). */
final class LocatedPicture {
    private LocatedPicture() {}

    static byte[] jpeg(int width, int height) throws IOException {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                picture.setRGB(x, y, x * y);
            }
        }
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpeg", plain);
        byte[] exif = "Exif\0\0MM\0*\0\0\0\10\0\0GPS 54.68 N 25.28 E".getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream located = new ByteArrayOutputStream();
        byte[] bytes = plain.toByteArray();
        located.write(bytes, 0, 2);
        located.write(0xFF);
        located.write(0xE1);
        located.write((exif.length + 2) >> 8);
        located.write((exif.length + 2) & 0xFF);
        located.write(exif);
        located.write(bytes, 2, bytes.length - 2);
        return located.toByteArray();
    }

    static int width(byte[] jpeg) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth();
    }
}
