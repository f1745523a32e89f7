package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.PurchaseLine;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "purchase_line")
class PurchaseLineRow implements Row<PurchaseLine> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "purchase_line_seq")
    @SequenceGenerator(name = "purchase_line_seq", sequenceName = "purchase_line_seq", allocationSize = 1000)
    private long id;

    @Column(name = "purchase_order", nullable = false, length = 60)
    private String order;

    @Column(nullable = false, length = 60)
    private String part;

    @Column(nullable = false, length = 60)
    private String depot;

    @Column(nullable = false)
    private double quantity;

    @Column(nullable = false)
    private LocalDate dueOn;

    private @Nullable LocalDate receivedOn;

    private @Nullable LocalDate confirmedOn;

    @Column(nullable = false)
    private double received;

    private @Nullable BigDecimal price;

    protected PurchaseLineRow() {}

    @Override
    public void take(PurchaseLine row) {
        this.order = row.order();
        this.part = row.part();
        this.depot = row.depot();
        this.quantity = row.quantity();
        this.dueOn = row.dueOn();
        this.receivedOn = row.receivedOn();
        this.confirmedOn = row.confirmedOn();
        this.received = row.received();
        this.price = row.price();
    }

    @Override
    public PurchaseLine row() {
        return new PurchaseLine(order, part, depot, quantity, dueOn, receivedOn, confirmedOn, received, price);
    }
}
