package dev.injectorplanner.app.web.bay;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Reads a page of labels as a scanner does: each label by itself, margins 10 and 12 mm, labels of 94 by 66 mm. */
final class LabelReading {
    private LabelReading() {}

    static List<String> of(byte[] pdf) throws Exception {
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 150);
            double pixelsPerMm = page.getWidth() / 210.0;
            int width = (int) (94 * pixelsPerMm);
            int height = (int) (66 * pixelsPerMm);
            for (int place = 0; place < 8; place++) {
                int x = (int) (10 * pixelsPerMm) + place % 2 * width;
                int y = (int) (12 * pixelsPerMm) + place / 2 * height;
                int[] pixels = page.getRGB(x, y, width, height, null, 0, width);
                var source = new RGBLuminanceSource(width, height, pixels);
                try {
                    texts.add(new QRCodeReader()
                            .decode(
                                    new BinaryBitmap(new HybridBinarizer(source)),
                                    Map.of(DecodeHintType.TRY_HARDER, true))
                            .getText());
                } catch (NotFoundException e) {
                    continue; // an empty place of the page
                }
            }
        }
        return texts;
    }
}
