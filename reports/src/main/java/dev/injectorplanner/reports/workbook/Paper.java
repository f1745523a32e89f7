package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.units.SiteForm.PaperSize;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;

/** Print shared access: one page wide, as many long as it takes, page numbers below. */
final class Paper {
    private static final double SIDE_INCHES = 0.4;
    private static final double END_INCHES = 0.6;

    private Paper() {}

    static void setUp(Sheet sheet, boolean landscape, PaperSize size) {
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(size == PaperSize.LETTER ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
        print.setLandscape(landscape);
        sheet.setFitToPage(true);
        sheet.setAutobreaks(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.LEFT, SIDE_INCHES);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.RIGHT, SIDE_INCHES);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.TOP, END_INCHES);
        sheet.setMargin(org.apache.poi.ss.usermodel.PageMargin.BOTTOM, END_INCHES);
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("page &P of &N");
        sheet.setDisplayGridlines(false);
    }
}
