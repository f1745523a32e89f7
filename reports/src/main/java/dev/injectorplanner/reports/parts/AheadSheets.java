package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.Outlook.PartMonth;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Sheets {@code Year ahead} (a line a part) and {@code Year ahead by month} (a line a part and month, with its band). */
final class AheadSheets {
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM uuuu", Locale.UK);

    private final Outlook outlook;
    private final Descriptions descriptions;
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, Map<YearMonth, Band>> byPart = new HashMap<>();
    private final List<YearMonth> months;
    private final String remark;

    AheadSheets(FleetSnapshot fleet, Outlook outlook, Descriptions descriptions) {
        this.outlook = outlook;
        this.descriptions = descriptions;
        fleet.parts().forEach(part -> parts.put(part.part(), part));
        outlook.partsOf(null)
                .forEach(row -> byPart.computeIfAbsent(row.part(), part -> new HashMap<>())
                        .put(row.month(), row.pieces()));
        this.months = outlook.months().stream().map(Outlook.Month::month).toList();
        this.remark = outlook.runs() + " runs from " + outlook.today()
                + ". Middle value; 10 and 90 %: eight runs in ten end between them. Bands of months do not add up.";
    }

    void write(Book book) {
        List<PartMonth> totals = outlook.partTotals().stream()
                .filter(total -> total.depot() == null && total.pieces().high() > 0)
                .sorted(Comparator.comparingDouble((PartMonth total) -> -value(total))
                        .thenComparing(PartMonth::part))
                .toList();
        SheetTable.add(book, "Year ahead", "Needs of the year ahead, by part", remark, year(), totals);
        List<PartMonth> rows = new ArrayList<>();
        for (PartMonth total : totals) {
            outlook.partsOf(null).stream()
                    .filter(row ->
                            row.part().equals(total.part()) && row.pieces().high() > 0)
                    .forEach(rows::add);
        }
        SheetTable.add(
                book, "Year ahead by month", "Needs of the year ahead, by part and month", remark, byMonth(), rows);
    }

    private double price(PartMonth row) {
        Part part = parts.get(row.part());
        return part == null ? 0 : part.price().doubleValue();
    }

    private double value(PartMonth row) {
        return price(row) * row.pieces().median();
    }

    private static TableColumn<PartMonth> pieces(String heading, Function<PartMonth, @Nullable Object> value) {
        return TableColumn.<PartMonth>count(heading, 8, value).written(Format.QUANTITY);
    }

    private List<TableColumn<PartMonth>> year() {
        List<TableColumn<PartMonth>> columns = new ArrayList<>();
        columns.add(TableColumn.text("Part", 13, PartMonth::part));
        columns.add(TableColumn.wrapped("Description", 26, row -> descriptions.of(row.part())));
        columns.add(TableColumn.text("Supplier", 20, row -> supplier(row)));
        for (YearMonth month : months) {
            columns.add(pieces(
                    MONTH.format(month).replace("Sept", "Sep"),
                    row -> byPart.getOrDefault(row.part(), Map.of())
                            .getOrDefault(month, Band.NONE)
                            .median()));
        }
        columns.add(pieces("10 %, year", row -> row.pieces().low()));
        columns.add(pieces("Year, middle", row -> row.pieces().median()));
        columns.add(pieces("90 %, year", row -> row.pieces().high()));
        columns.add(TableColumn.money("Each", 10, this::price));
        String middle = org.apache.poi.ss.util.CellReference.convertNumToColString(columns.size() - 3);
        String each = org.apache.poi.ss.util.CellReference.convertNumToColString(columns.size() - 1);
        columns.add(TableColumn.<PartMonth>money(
                        "Value, middle", 12, row -> new Formula(middle + "#*" + each + "#", value(row)))
                .summed());
        return columns;
    }

    private String supplier(PartMonth row) {
        Part part = parts.get(row.part());
        return part == null ? "" : part.supplier();
    }

    private List<TableColumn<PartMonth>> byMonth() {
        return List.of(
                TableColumn.text("Part", 14, PartMonth::part),
                TableColumn.wrapped("Description", 30, row -> descriptions.of(row.part())),
                TableColumn.text("Month", 12, row -> MONTH.format(row.month()).replace("Sept", "Sep")),
                pieces("10 %", row -> row.pieces().low()),
                pieces("Middle", row -> row.pieces().median()),
                pieces("90 %", row -> row.pieces().high()),
                pieces("Mean", row -> row.pieces().mean()));
    }
}
