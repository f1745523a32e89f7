package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.reports.order.OrderPaper;
import java.math.BigDecimal;
import java.time.LocalDate;

/** Amounts, quantities and days of orders as the site's pages write them. */
final class OrderStyle implements OrderPaper.Style {
    @Override
    public String money(BigDecimal amount) {
        return DisplayFormat.cents(amount);
    }

    @Override
    public String pieces(double quantity) {
        return DisplayFormat.pieces(quantity);
    }

    @Override
    public String day(LocalDate day) {
        return DisplayFormat.shortDate(day);
    }
}
