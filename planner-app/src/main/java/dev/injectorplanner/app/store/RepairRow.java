package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Repair;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "repair")
class RepairRow implements Row<Repair> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "repair_seq")
    @SequenceGenerator(name = "repair_seq", sequenceName = "repair_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false)
    private LocalDate doneOn;

    private @Nullable Double odometerKm;

    @Column(nullable = false, length = 2000)
    private String what;

    private @Nullable Double hours;

    @Column(nullable = false, length = 2000)
    private String remark;

    @Column(name = "done_by", nullable = false, length = 60)
    private String by;

    protected RepairRow() {}

    @Override
    public void take(Repair row) {
        this.truck = row.truck();
        this.doneOn = row.doneOn();
        this.odometerKm = row.odometerKm();
        this.what = row.what();
        this.hours = row.hours();
        this.remark = row.remark();
        this.by = row.by();
    }

    @Override
    public Repair row() {
        return new Repair(truck, doneOn, odometerKm, what, hours, remark, by);
    }
}
