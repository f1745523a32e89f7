package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Transfer;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;

@Entity
@Table(name = "transfer")
class TransferRow implements Row<Transfer> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "transfer_seq")
    @SequenceGenerator(name = "transfer_seq", sequenceName = "transfer_seq", allocationSize = 1000)
    private long id;

    @Column(name = "from_depot", nullable = false, length = 60)
    private String from;

    @Column(name = "to_depot", nullable = false, length = 60)
    private String to;

    @Column(nullable = false)
    private BigDecimal cost;

    @Column(nullable = false)
    private int days;

    protected TransferRow() {}

    @Override
    public void take(Transfer row) {
        this.from = row.from();
        this.to = row.to();
        this.cost = row.cost();
        this.days = row.days();
    }

    @Override
    public Transfer row() {
        return new Transfer(from, to, cost, days);
    }
}
