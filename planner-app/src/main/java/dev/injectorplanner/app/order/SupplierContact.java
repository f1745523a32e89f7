package dev.injectorplanner.app.order;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;

/**
 * Where a supplier gets its orders.
 *
 * @param supplier its name, as in the table of parts
 * @param mail address for orders, or empty
 * @param address postal address, lines as typed, or empty
 * @param customerNumber the site's number with the supplier, or empty
 * @param mailsOrders whether an order is mailed when it is placed
 */
public record SupplierContact(
        String supplier, String mail, String address, String customerNumber, boolean mailsOrders) {
    public SupplierContact {
        supplier = Require.name("supplier", supplier);
        mail = mail.strip();
        if (!mail.isEmpty() && !mail.matches("[^@\\s,;<>]{1,64}@[^@\\s,;<>]{1,180}")) {
            throw new InvalidValueException("mail", mail, "is not an email address", "write it as name@example.org");
        }
        if (mailsOrders && mail.isEmpty()) {
            throw new InvalidValueException(
                    "mail", "", "is empty, but orders are to be mailed", "enter the address, or untick mailing");
        }
        address = address.strip();
        if (address.length() > 2_000) {
            throw new InvalidValueException("address", "", "is longer than 2,000 characters", "shorten it");
        }
        customerNumber = Require.text("customer_number", customerNumber.strip());
    }

    /** Nothing is known of a supplier but its name. */
    public static SupplierContact unknown(String supplier) {
        return new SupplierContact(supplier, "", "", "", false);
    }
}
