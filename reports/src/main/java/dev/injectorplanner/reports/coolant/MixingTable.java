package dev.injectorplanner.reports.coolant;

import dev.injectorplanner.core.coolant.CoolantMixer;
import dev.injectorplanner.core.coolant.GlycolWater;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Sheet {@code Mixing table}: strengths with their freezing points by both curves. Its rows hold every bend of the curve
 * in use, so that straight lines between them give the engine's figure.
 */
final class MixingTable {
    private static final double[] BENDS = {
        0, 4.4, 8.9, 13.6, 18.1, 20.1, 22, 23.9, 25.8, 27.7, 29.6, 31.6, 33.5, 35.5, 37.5, 39.5, 41.5, 43.5, 45.5, 47.6,
        49.6, 51.6, 53.7, 55.7, 57.8
    };
    private static final double[] ROUND = {10, 20, 30, 35, 40, 45, 50, 55, 60};
    private static final double MIX = 10;
    private static final double POUNDS_A_GALLON = 3.785411784 / 0.45359237; // of 1 kg a litre, by definition

    private final String remark;
    private final List<Double> percents = DoubleStream.concat(DoubleStream.of(BENDS), DoubleStream.of(ROUND))
            .sorted()
            .boxed()
            .toList();

    MixingTable(String remark) {
        this.remark = remark;
    }

    /** In litres, or in US gallons where the site reads those: the share of each is the same. */
    void write(Book book, SiteUnits units) {
        boolean gallons = units.volume() == SiteUnits.Volume.US_GALLONS;
        String mix = (int) MIX + " " + units.volumeUnit();
        TableSheet sheet = book.table(
                "Mixing table",
                "Strength, freezing point and the mix for " + (int) MIX + (gallons ? " US gallons" : " litres"),
                remark + ". The warmer of two published curves; see Assumptions.",
                List.of(
                        SheetColumn.of("Glycol, % by volume", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Glycol, % by mass", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("ASHRAE 2001, C", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Melinder 2010, C", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Freezes at, C", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("Concentrate for " + mix, Format.TWO_DECIMALS, 12),
                        SheetColumn.of("Water for " + mix, Format.TWO_DECIMALS, 11),
                        SheetColumn.of(
                                gallons ? "Lb a US gallon at 68 F" : "Kg a litre at 20 C", Format.TWO_DECIMALS, 11),
                        SheetColumn.of("Heavy-duty concentrate (ASTM D6210)", Format.TEXT, 22)));
        for (double percent : percents) {
            boolean within = percent <= GlycolWater.CURVES_END_PERCENT;
            sheet.row(
                    percent,
                    GlycolWater.massPercent(percent),
                    within ? GlycolWater.ashraeC(percent) : null,
                    within ? GlycolWater.melinderC(percent) : null,
                    GlycolWater.findFreezingPointC(percent).orElseThrow(),
                    new Formula("A#*" + (int) MIX + "/100", percent * MIX / 100),
                    new Formula((int) MIX + "-F#", MIX - percent * MIX / 100),
                    GlycolWater.kgPerLitre(percent) * (gallons ? POUNDS_A_GALLON : 1),
                    percent < CoolantMixer.LEAST_PERCENT ? "too weak" : "within 40 to 60 %");
        }
        sheet.finish();
    }

    /** Freezing point of a strength: straight between the table's rows, to four decimals. */
    String freezing(String cell) {
        int first = TableSheet.firstRow();
        int last = first + percents.size() - 1;
        String at = "'Mixing table'!$A$" + first + ":$A$" + last;
        String values = "'Mixing table'!$E$" + first + ":$E$" + last;
        String row = "MIN(MATCH(" + cell + "," + at + ",1)," + (percents.size() - 1) + ")";
        return "ROUND(INDEX(" + values + "," + row + ")+(" + cell + "-INDEX(" + at + "," + row + "))*(INDEX(" + values
                + ","
                + row + "+1)-INDEX(" + values + "," + row + "))/(INDEX(" + at + "," + row + "+1)-INDEX(" + at + ","
                + row
                + ")),4)";
    }
}
