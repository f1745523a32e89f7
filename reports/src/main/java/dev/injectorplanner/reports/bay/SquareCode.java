package dev.injectorplanner.reports.bay;

import java.util.Locale;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.graphics.Rectangle;

/** A QR code (ISO/IEC 18004), error correction level M, as SVG with the quiet zone of four modules. */
final class SquareCode {
    private static final int QUIET = 4;
    private static final int WIDTH = 120;

    private SquareCode() {}

    static String of(String text) {
        QrCode code = new QrCode();
        code.setPreferredEccLevel(QrCode.EccLevel.M);
        code.setContent(text);
        int modules = code.getWidth();
        StringBuilder path = new StringBuilder();
        for (Rectangle module : code.getRectangles()) {
            path.append(String.format(
                    Locale.ROOT,
                    "M%.0f %.0fh%.0fv%.0fh%.0fz",
                    module.x,
                    module.y,
                    module.width,
                    module.height,
                    -module.width));
        }
        int side = modules + 2 * QUIET;
        return String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"%d %d %d %d\">"
                        + "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>"
                        + "<path d=\"%s\" fill=\"#000000\"/></svg>",
                WIDTH,
                WIDTH,
                -QUIET,
                -QUIET,
                side,
                side,
                -QUIET,
                -QUIET,
                side,
                side,
                path);
    }
}
