package dev.injectorplanner.app.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.entry.RefusedEntryException;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a photograph. Orientation 6 and 8: row 0 is the right-hand or left-hand side (CIPA DC-008, Exif 2.3, 4.6.4 A). */
class SmallPictureTest {
    private static byte[] written(String format, int orientation) throws IOException {
        BufferedImage picture = new BufferedImage(60, 20, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 60; x++) {
            for (int y = 0; y < 20; y++) {
                picture.setRGB(x, y, (x < 30 ? Color.RED : Color.BLUE).getRGB());
            }
        }
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(picture, format, plain);
        if (orientation == 0) {
            return plain.toByteArray();
        }
        byte[] exif = ("Exif\0\0MM\0*\0\0\0\10\0\1\1\22\0\3\0\0\0\1\0" + (char) orientation + "\0\0\0\0\0\0")
                .getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream turned = new ByteArrayOutputStream();
        byte[] bytes = plain.toByteArray();
        turned.write(bytes, 0, 2);
        turned.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.length + 2)});
        turned.write(exif);
        turned.write(bytes, 2, bytes.length - 2);
        return turned.toByteArray();
    }

    private static boolean isRed(BufferedImage picture, int x, int y) {
        Color color = new Color(picture.getRGB(x, y));
        return color.getRed() > color.getBlue();
    }

    @ParameterizedTest
    @CsvSource({"1, 60, 20, true", "3, 60, 20, false", "6, 20, 60, true", "8, 20, 60, false"})
    void a_picture_of_a_turned_camera_is_upright(int orientation, int width, int height, boolean redFirst)
            throws IOException {
        SmallPicture small = SmallPicture.of(written("jpeg", orientation));
        assertThat(small.width()).isEqualTo(width);
        assertThat(small.height()).isEqualTo(height);
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(small.jpeg()));
        assertThat(isRed(picture, 2, 2)).isEqualTo(redFirst);
        assertThat(isRed(picture, width - 3, height - 3)).isEqualTo(!redFirst);
    }

    @Test
    void png_is_read_and_other_formats_are_not() throws IOException {
        assertThat(SmallPicture.of(written("png", 0)).width()).isEqualTo(60);
        byte[] bmp = written("bmp", 0);
        assertThatThrownBy(() -> SmallPicture.of(bmp))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("JPEG");
    }

    @ParameterizedTest
    @CsvSource({"100, 1", "3200, 1", "3201, 2", "6399, 2", "12000, 4"})
    void no_more_than_twice_the_side_is_in_the_memory(int side, int step) {
        assertThat(SmallPicture.step(side)).isEqualTo(step);
        assertThat(side / step).isLessThanOrEqualTo(3_200);
    }
}
