package dev.injectorplanner.reports.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The faces that paper is set in, for one document. Ligatures are off: the library looks for them by an expression that it compiles
 * again for every piece of text, which took two fifths of the time of a bay sheet, and the text can be searched as it was written.
 */
final class PaperFonts implements Closeable {
    private final PDDocument document;
    private final List<TrueTypeFont> open = new ArrayList<>();

    PaperFonts(PDDocument document) {
        this.document = document;
    }

    /** To be closed when the document has been written, since only what it uses is taken from the faces then. */
    void into(PdfRendererBuilder builder) throws IOException {
        face(builder, "LiberationSans-Regular", "Liberation Sans", 400);
        face(builder, "LiberationSans-Bold", "Liberation Sans", 700);
        face(builder, "LiberationMono-Bold", "Liberation Mono", 700);
    }

    private void face(PdfRendererBuilder builder, String file, String family, int weight) throws IOException {
        try (InputStream stream = PdfPage.resource("bay/fonts/" + file + ".ttf")) {
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(stream));
            open.add(face);
            face.setEnableGsub(false);
            builder.useFont(
                    new PDFontSupplier(PDType0Font.load(document, face, true)), family, weight, FontStyle.NORMAL, true);
        }
    }

    @Override
    public void close() throws IOException {
        for (TrueTypeFont face : open) {
            face.close();
        }
    }
}
