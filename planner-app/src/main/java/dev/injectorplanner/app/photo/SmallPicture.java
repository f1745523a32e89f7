package dev.injectorplanner.app.photo;

import dev.injectorplanner.app.entry.RefusedEntryException;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A photograph made small and drawn anew: what comes out has the picture and nothing else, no place, no time, no camera.
 *
 * @param jpeg the picture
 */
record SmallPicture(byte[] jpeg, int width, int height) {
    /** Most bytes that are looked at. */
    static final int MOST_BYTES = 12 * 1024 * 1024;

    private static final int MOST_SIDE = 1_600;
    private static final int MOST_SIDE_READ = 12_000;
    private static final float QUALITY = 0.8f;
    private static final Set<String> FORMATS = Set.of("jpeg", "png");

    /** One large picture in the memory is enough. */
    private static final Object ONE_AT_A_TIME = new Object();

    static SmallPicture of(byte[] file) {
        if (file.length == 0) {
            throw refused("the file is empty", "take the photograph again");
        }
        if (file.length > MOST_BYTES) {
            throw refused("the photograph is larger than 12 MB", "take it with a smaller size");
        }
        try {
            synchronized (ONE_AT_A_TIME) {
                return written(Turned.upright(scaled(read(file)), Turned.orientation(file)));
            }
        } catch (IOException | RuntimeException e) {
            if (e instanceof RefusedEntryException told) {
                throw told;
            }
            throw refused("the photograph cannot be read", "send a JPEG or PNG");
        }
    }

    /** Read coarsely where it is large, so that its pixels never fill the memory. */
    private static BufferedImage read(byte[] file) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                throw refused("the file is not a photograph", "send a JPEG or PNG");
            }
            ImageReader reader = readers.next();
            try {
                if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                    throw refused("the file is neither JPEG nor PNG", "send a JPEG or PNG");
                }
                reader.setInput(in, true, true);
                int side = Math.max(reader.getWidth(0), reader.getHeight(0));
                if (side > MOST_SIDE_READ) {
                    throw refused(
                            "the photograph is more than " + MOST_SIDE_READ + " pixels wide", "take a smaller one");
                }
                ImageReadParam how = reader.getDefaultReadParam();
                int step = step(side);
                how.setSourceSubsampling(step, step, 0, 0);
                return reader.read(0, how);
            } finally {
                reader.dispose();
            }
        }
    }

    /** Every which pixel is read: rounded up, so that never more than twice the side that is kept is in the memory. */
    static int step(int side) {
        return Math.max(1, -Math.floorDiv(-side, 2 * MOST_SIDE));
    }

    private static BufferedImage scaled(BufferedImage picture) {
        double scale = Math.min(1, (double) MOST_SIDE / Math.max(picture.getWidth(), picture.getHeight()));
        int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = small.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.drawImage(picture, 0, 0, width, height, Color.WHITE, null);
        pen.dispose();
        return small;
    }

    private static SmallPicture written(BufferedImage picture) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(picture, null, null), how);
        } finally {
            writer.dispose();
        }
        return new SmallPicture(bytes.toByteArray(), picture.getWidth(), picture.getHeight());
    }

    private static RefusedEntryException refused(String what, String fix) {
        return RefusedEntryException.of("photo", what, fix);
    }
}
