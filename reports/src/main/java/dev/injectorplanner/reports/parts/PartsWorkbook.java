package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Words;
import java.io.IOException;
import java.io.OutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Workbook {@code parts-needs}, for the parts buyer: what to order now and later, what is short and which visit suffers,
 * the shelves week by week, what is kept for failures no plan foresees, cores, claims, and what the figures rest on. A
 * quantity that is changed changes values, sums and shelves.
 */
public final class PartsWorkbook {
    private final FleetSnapshot fleet;
    private final Plan plan;
    private final @Nullable Outlook ahead;

    public PartsWorkbook(FleetSnapshot fleet, Plan plan) {
        this(fleet, plan, null);
    }

    /** @param ahead the year ahead, or null for a workbook without it */
    public PartsWorkbook(FleetSnapshot fleet, Plan plan, @Nullable Outlook ahead) {
        this.fleet = fleet;
        this.plan = plan;
        this.ahead = ahead;
    }

    /** In km, litres and degrees C. */
    public void write(OutputStream out) throws IOException {
        write(out, SiteForm.STANDARD);
    }

    /** In a site's units, currency, dates and paper. */
    public void write(OutputStream out, SiteForm form) throws IOException {
        String remark = Words.planOf(plan);
        Descriptions descriptions = new Descriptions(fleet);
        try (Book book = new Book("Parts needs", form)) {
            OrderSheets orders = new OrderSheets(plan, remark);
            orders.now(book);
            orders.later(book);
            new ShortSheet(plan, remark, descriptions).write(book);
            new StockSheets(plan, remark, descriptions, orders).write(book);
            new NeedSheets(plan, remark, descriptions).write(book);
            if (ahead != null) {
                new AheadSheets(fleet, ahead, descriptions).write(book);
            }
            new ReturnSheets(plan, remark, descriptions).write(book);
            book.assumptions(plan.assumptions(), remark);
            book.write(out);
        }
    }
}
