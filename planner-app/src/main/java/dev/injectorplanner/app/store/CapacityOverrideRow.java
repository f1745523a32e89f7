package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.CapacityOverride;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;

@Entity
@Table(name = "capacity")
class CapacityOverrideRow implements Row<CapacityOverride> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "capacity_seq")
    @SequenceGenerator(name = "capacity_seq", sequenceName = "capacity_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String depot;

    @Column(name = "on_day", nullable = false)
    private LocalDate date;

    @Column(nullable = false)
    private double labourHours;

    @Column(nullable = false)
    private int bays;

    protected CapacityOverrideRow() {}

    @Override
    public void take(CapacityOverride row) {
        this.depot = row.depot();
        this.date = row.date();
        this.labourHours = row.labourHours();
        this.bays = row.bays();
    }

    @Override
    public CapacityOverride row() {
        return new CapacityOverride(depot, date, labourHours, bays);
    }
}
