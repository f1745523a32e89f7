package dev.injectorplanner.app.order;

import dev.injectorplanner.app.mail.Mail;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreSql;
import java.time.Instant;

/** Orders that go to their supplier by mail: in the outbox and in the order's file in one transaction. */
public final class OrderMailing {
    private final StoreSql sql;
    private final Outbox outbox;

    public OrderMailing(Store store) {
        this.sql = new StoreSql(store.dataSource());
        this.outbox = new Outbox(store.dataSource());
    }

    /** Queues an order's mail; the same order to the same address is queued once. */
    public boolean queue(String order, Mail mail, Instant at, String by) {
        // made again where another transaction was in the way: the embedded database gives up one of two that meet
        return sql.retried(connection -> {
            boolean queued = outbox.queue(connection, mail, at);
            if (queued) {
                OrderBooks.mailed(connection, order, mail.recipient());
                OrderBooks.note(
                        connection, at, by, "mail an order", order, order, "", "queued for " + mail.recipient());
            }
            return queued;
        });
    }
}
