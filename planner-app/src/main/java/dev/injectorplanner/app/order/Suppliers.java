package dev.injectorplanner.app.order;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.fleet.Part;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Suppliers of the table of parts, with where they get their orders. */
public final class Suppliers {
    private final Store store;

    public Suppliers(Store store) {
        this.store = store;
    }

    /** Every supplier that sells a part, by name. */
    public List<SupplierContact> list() {
        return store.inJointTransaction((connection, writer) -> {
            Map<String, SupplierContact> known = known(connection);
            return writer.all(Part.class).stream()
                    .map(Part::supplier)
                    .filter(supplier -> !supplier.isBlank())
                    .distinct()
                    .sorted()
                    .map(supplier -> known.getOrDefault(supplier, SupplierContact.unknown(supplier)))
                    .toList();
        });
    }

    /** One supplier. */
    public SupplierContact of(String supplier) {
        return new StoreSql(store.dataSource())
                .inTransaction(Suppliers::known)
                .getOrDefault(supplier, SupplierContact.unknown(supplier));
    }

    private static Map<String, SupplierContact> known(Connection connection) throws SQLException {
        Map<String, SupplierContact> known = new HashMap<>();
        StoreSql.list(
                        connection,
                        "select supplier, mail, address, customer_number, mails_orders from supplier_contact",
                        row -> new SupplierContact(
                                row.getString("supplier"),
                                row.getString("mail"),
                                row.getString("address"),
                                row.getString("customer_number"),
                                row.getBoolean("mails_orders")))
                .forEach(each -> known.put(each.supplier(), each));
        return known;
    }

    /** Keeps a supplier's contact in the place of the one before. */
    public void save(SupplierContact contact, Instant at, String by) {
        new StoreSql(store.dataSource()).inTransaction(connection -> {
            SupplierContact before =
                    known(connection).getOrDefault(contact.supplier(), SupplierContact.unknown(contact.supplier()));
            StoreSql.update(connection, "delete from supplier_contact where supplier = ?", contact.supplier());
            StoreSql.update(
                    connection,
                    "insert into supplier_contact (supplier, mail, address, customer_number, mails_orders, changed_at,"
                            + " changed_by) values (?, ?, ?, ?, ?, ?, ?)",
                    contact.supplier(),
                    contact.mail(),
                    contact.address(),
                    contact.customerNumber(),
                    contact.mailsOrders(),
                    at,
                    by);
            AuditTrail.write(
                    connection, at, by, "change a supplier", contact.supplier(), words(before), words(contact));
            return true;
        });
    }

    private static String words(SupplierContact contact) {
        return (contact.mail().isEmpty() ? "no mail address" : contact.mail())
                + (contact.mailsOrders() ? ", orders are mailed" : ", orders are not mailed")
                + (contact.customerNumber().isEmpty() ? "" : ", customer number " + contact.customerNumber());
    }
}
