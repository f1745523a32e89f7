package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.StockLine;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;

@Entity
@Table(name = "stock")
class StockLineRow implements Row<StockLine> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "stock_seq")
    @SequenceGenerator(name = "stock_seq", sequenceName = "stock_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String depot;

    @Column(nullable = false, length = 60)
    private String part;

    @Column(nullable = false)
    private double onHand;

    protected StockLineRow() {}

    @Override
    public void take(StockLine row) {
        this.depot = row.depot();
        this.part = row.part();
        this.onHand = row.onHand();
    }

    @Override
    public StockLine row() {
        return new StockLine(depot, part, onHand);
    }
}
