package dev.injectorplanner.app.web.order;

import dev.injectorplanner.app.mail.Attachment;
import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.mail.Mail;
import dev.injectorplanner.app.order.OrderFile;
import dev.injectorplanner.app.order.OrderHead;
import dev.injectorplanner.app.order.OrderMailing;
import dev.injectorplanner.app.order.SupplierContact;
import dev.injectorplanner.app.order.Suppliers;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.order.OrderPaper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** An order as its supplier gets it: document, workbook and mail. */
public final class OrderPapers {
    private final Store store;
    private final Suppliers suppliers;
    private final OrderMailing mailing;
    private final SiteSettings settings;

    /** @param settings what the site calls itself, its currency and paper */
    public OrderPapers(Store store, SiteSettings settings) {
        this.store = store;
        this.suppliers = new Suppliers(store);
        this.mailing = new OrderMailing(store);
        this.settings = settings;
    }

    Map<String, Part> parts() {
        return store.inJointTransaction((connection, writer) ->
                writer.all(Part.class).stream().collect(Collectors.toMap(Part::part, part -> part)));
    }

    /**
     * The document of an order.
     *
     * @param lines those that go on it
     * @throws NotHereException where it has none
     */
    OrderPaper paper(String order, OrderFile file, List<PurchaseLine> lines) {
        if (lines.isEmpty()) {
            throw new NotHereException("Order " + order + " has no lines. Fix: open the orders and choose another.");
        }
        Map<String, Part> parts = parts();
        OrderHead head = file.head()
                .orElseGet(() -> new OrderHead(
                        order,
                        supplier(parts, lines.get(0)),
                        lines.get(0).dueOn(),
                        "loaded from a file",
                        "",
                        null,
                        null));
        SupplierContact contact = suppliers.of(head.supplier());
        return new OrderPaper(
                order,
                head.supplier(),
                contact.address().lines().toList(),
                contact.customerNumber(),
                settings.siteName().isBlank() ? "Workshop" : settings.siteName(),
                head.placedOn(),
                head.placedBy(),
                head.note(),
                lines.stream().map(line -> line(line, parts)).toList());
    }

    static String supplier(Map<String, Part> parts, PurchaseLine line) {
        Part part = parts.get(line.part());
        return part == null ? "" : part.supplier();
    }

    private static OrderPaper.Line line(PurchaseLine line, Map<String, Part> parts) {
        Part part = parts.get(line.part());
        BigDecimal listed = part == null ? BigDecimal.ZERO : part.price();
        BigDecimal price = line.price();
        return new OrderPaper.Line(
                line.part(),
                part == null ? "" : part.description(),
                line.depot(),
                line.quantity(),
                price == null ? listed : price,
                part == null ? BigDecimal.ZERO : part.coreDeposit(),
                line.expectedOn());
    }

    /**
     * Puts the order into the outbox for its supplier, once an address.
     *
     * @return the address, or empty where the supplier has none
     */
    String mail(String order, OrderFile file, Instant at, String by) throws IOException {
        OrderPaper paper = paper(order, file, file.lines());
        SupplierContact contact = suppliers.of(paper.supplier());
        if (contact.mail().isEmpty()) {
            return "";
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        SiteForm form = settings.form();
        paper.document(new OrderStyle(), form).write(form.paper(), pdf);
        ByteArrayOutputStream book = new ByteArrayOutputStream();
        paper.workbook(form, book);
        Letter letter = new Letter("Purchase order " + order + " from " + paper.site());
        letter.say("Please find our order " + order + " attached, "
                + lines(paper.lines().size()) + ". Please confirm day, quantity and price of each line.");
        mailing.queue(
                order,
                new Mail(
                        "purchase order " + order + "/" + contact.mail(),
                        contact.mail(),
                        letter.title(),
                        letter.text(),
                        letter.html(),
                        List.of(
                                new Attachment(order + ".pdf", "application/pdf", pdf.toByteArray()),
                                new Attachment(order + ".xlsx", Attachment.WORKBOOK, book.toByteArray()))),
                at,
                by);
        return contact.mail();
    }

    /** Mails it where the supplier's orders are mailed. */
    public void mailIfWanted(String order, OrderFile file, Instant at, String by) throws IOException {
        boolean wanted = file.head()
                .map(head -> suppliers.of(head.supplier()).mailsOrders())
                .orElse(false);
        if (wanted) {
            mail(order, file, at, by);
        }
    }

    private static String lines(int count) {
        return count == 1 ? "1 line" : count + " lines";
    }

    /** Day on which a line was placed for, for lists. */
    static LocalDate expected(List<PurchaseLine> lines) {
        return lines.stream()
                .filter(line -> line.openQuantity() > 0)
                .map(PurchaseLine::expectedOn)
                .min(LocalDate::compareTo)
                .orElse(lines.get(0).expectedOn());
    }
}
