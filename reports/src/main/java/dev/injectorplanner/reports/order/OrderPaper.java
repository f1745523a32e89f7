package dev.injectorplanner.reports.order;

import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.paper.PaperDocument;
import dev.injectorplanner.reports.paper.PaperDocument.Column;
import dev.injectorplanner.reports.paper.PaperDocument.Field;
import dev.injectorplanner.reports.paper.PaperDocument.Section;
import dev.injectorplanner.reports.table.SheetTable;
import dev.injectorplanner.reports.table.TableColumn;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.Formula;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A purchase order as its supplier gets it.
 *
 * @param number its number
 * @param supplier who gets it
 * @param address the supplier's address, line by line
 * @param customerNumber the site's number with the supplier, or empty
 * @param site who orders
 * @param placedOn day it was placed
 * @param placedBy who placed it
 * @param note what the supplier is told beside the lines, or empty
 * @param lines its lines
 */
public record OrderPaper(
        String number,
        String supplier,
        List<String> address,
        String customerNumber,
        String site,
        LocalDate placedOn,
        String placedBy,
        String note,
        List<Line> lines) {
    public OrderPaper {
        address = List.copyOf(address);
        lines = List.copyOf(lines);
    }

    /** A line: {@code price} and {@code deposit} are of one piece. */
    public record Line(
            String part,
            String description,
            String depot,
            double quantity,
            BigDecimal price,
            BigDecimal deposit,
            LocalDate wanted) {
        BigDecimal sum() {
            return price.multiply(BigDecimal.valueOf(quantity));
        }

        BigDecimal deposits() {
            return deposit.multiply(BigDecimal.valueOf(quantity));
        }
    }

    /** How the site writes amounts, quantities and days. */
    public interface Style {
        String money(BigDecimal amount);

        String pieces(double quantity);

        String day(LocalDate day);
    }

    /** The document to send. */
    public PaperDocument document(Style style, SiteForm form) {
        List<String> to = new ArrayList<>(List.of(supplier));
        to.addAll(address);
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("Date", style.day(placedOn)));
        fields.add(new Field("Ordered by", placedBy));
        if (!customerNumber.isEmpty()) {
            fields.add(new Field("Customer number", customerNumber));
        }
        fields.add(new Field(form.money("Order value"), style.money(total(Line::sum))));
        List<String> closing = new ArrayList<>();
        if (!note.isEmpty()) {
            closing.add(note);
        }
        closing.add("Please confirm day, quantity and price of each line, and put the number " + number
                + " on your delivery note.");
        return new PaperDocument(
                "Purchase order",
                number,
                to,
                List.of(site),
                fields,
                List.of(new Section(
                        "",
                        List.of(),
                        List.of(
                                Column.figure("Line"),
                                Column.code("Part"),
                                Column.text("Description"),
                                Column.text("Deliver to"),
                                Column.figure("Quantity"),
                                Column.figure(form.money("Each")),
                                Column.figure(form.money("Sum")),
                                Column.text("Wanted by")),
                        rows(style),
                        sums(style, form),
                        closing)),
                "Purchase order " + number + ", " + site);
    }

    private List<List<String>> rows(Style style) {
        List<List<String>> rows = new ArrayList<>();
        for (Line line : lines) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    line.part(),
                    line.description(),
                    line.depot(),
                    style.pieces(line.quantity()),
                    style.money(line.price()),
                    style.money(line.sum()),
                    style.day(line.wanted())));
        }
        return rows;
    }

    private List<Field> sums(Style style, SiteForm form) {
        BigDecimal deposits = total(Line::deposits);
        List<Field> sums = new ArrayList<>();
        sums.add(new Field(form.money("Order value"), style.money(total(Line::sum))));
        if (deposits.signum() > 0) {
            sums.add(new Field(form.money("Core deposits"), style.money(deposits)));
            sums.add(new Field(
                    form.money("Together"), style.money(total(Line::sum).add(deposits))));
        }
        return sums;
    }

    private BigDecimal total(Function<Line, BigDecimal> amount) {
        return lines.stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Writes it as a workbook: a quantity or a price that is changed changes the sums. */
    public void workbook(SiteForm form, OutputStream out) throws IOException {
        try (Book book = new Book("Purchase order " + number, form)) {
            SheetTable.add(
                    book,
                    number,
                    "Purchase order " + number + " to " + supplier,
                    site + ", " + form.dates().of(placedOn) + ", " + placedBy + (note.isEmpty() ? "" : ". " + note),
                    columns(),
                    lines);
            book.write(out);
        }
    }

    private static List<TableColumn<Line>> columns() {
        return List.of(
                TableColumn.text("Part", 16, Line::part),
                TableColumn.wrapped("Description", 34, Line::description),
                TableColumn.text("Deliver to", 14, Line::depot),
                pieces("Quantity", Line::quantity),
                TableColumn.money("Each", 11, Line::price),
                TableColumn.<Line>money(
                                "Sum",
                                12,
                                line -> new Formula("D#*E#", line.sum().doubleValue()))
                        .summed(),
                TableColumn.money("Deposit of one", 11, Line::deposit),
                TableColumn.<Line>money(
                                "Deposits",
                                12,
                                line -> new Formula("D#*G#", line.deposits().doubleValue()))
                        .summed(),
                TableColumn.date("Wanted by", 12, Line::wanted));
    }

    private static TableColumn<Line> pieces(String heading, Function<Line, @Nullable Object> value) {
        return TableColumn.count(heading, 9, value).written(Format.QUANTITY);
    }
}
