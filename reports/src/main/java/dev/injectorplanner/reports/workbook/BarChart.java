package dev.injectorplanner.reports.workbook;

import dev.injectorplanner.core.units.SiteUnits;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Standing bars, told apart by dark and light ink so that a grey print shows them too.
 *
 * @param title what it shows
 * @param valueTitle title of the upright axis, with the unit
 * @param categories column of the categories, from 0
 * @param series columns of the values, from 0; their headings name them
 * @param fromZero whether the upright axis begins at zero, or goes below where values do
 */
public record BarChart(String title, String valueTitle, int categories, List<Integer> series, boolean fromZero) {
    private static final PresetColor[] INKS = {PresetColor.DARK_SLATE_GRAY, PresetColor.LIGHT_GRAY, PresetColor.GRAY};
    private static final int COLUMNS_WIDE = 12;
    private static final int ROWS_HIGH = 22;

    /** With an upright axis from zero. */
    public BarChart(String title, String valueTitle, int categories, List<Integer> series) {
        this(title, valueTitle, categories, series, true);
    }

    /** With the site's unit of volume on its upright axis. */
    BarChart in(SiteUnits units) {
        return valueTitle.equals("litres") && units.volume() != SiteUnits.Volume.LITRES
                ? new BarChart(title, "US gallons", categories, series, fromZero)
                : this;
    }

    void draw(XSSFSheet sheet, int head, int last, int atColumn) {
        XSSFClientAnchor anchor =
                new XSSFClientAnchor(0, 0, 0, 0, atColumn, head, atColumn + COLUMNS_WIDE, head + ROWS_HIGH);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        var weeks = chart.createCategoryAxis(AxisPosition.BOTTOM);
        var values = chart.createValueAxis(AxisPosition.LEFT);
        values.setTitle(valueTitle);
        values.setCrosses(AxisCrosses.AUTO_ZERO);
        if (fromZero) {
            values.setMinimum(0);
        } else {
            weeks.setTickLabelPosition(AxisTickLabelPosition.LOW);
        }
        XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, weeks, values);
        data.setBarDirection(BarDirection.COL);
        var names = XDDFDataSourcesFactory.fromStringCellRange(sheet, range(head + 1, last, categories));
        for (int i = 0; i < series.size(); i++) {
            int column = series.get(i);
            XDDFChartData.Series each = data.addSeries(
                    names, XDDFDataSourcesFactory.fromNumericCellRange(sheet, range(head + 1, last, column)));
            each.setTitle(
                    sheet.getRow(head).getCell(column).getStringCellValue(),
                    new org.apache.poi.ss.util.CellReference(sheet.getSheetName(), head, column, true, true));
            each.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(INKS[i % INKS.length])));
        }
        chart.plot(data);
    }

    private static CellRangeAddress range(int first, int last, int column) {
        return new CellRangeAddress(first, last, column, column);
    }
}
