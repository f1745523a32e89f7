package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Depot;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "depot")
class DepotRow implements Row<Depot> {
    @Id
    @Column(length = 60)
    private String depot;

    @Column(nullable = false, length = 60)
    private String name;

    @Column(nullable = false, length = 60)
    private String timeZone;

    @Column(nullable = false)
    private int bays;

    @Column(nullable = false)
    private double labourHoursPerDay;

    @Column(nullable = false, length = 100)
    private String workDays;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal labourPerHour;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal overtimePerHour;

    @Column(nullable = false)
    private double overtimeHoursPerWeek;

    private @Nullable LocalDate recordsSince;

    protected DepotRow() {}

    @Override
    public void take(Depot row) {
        this.depot = row.depot();
        this.name = row.name();
        this.timeZone = row.timeZone().getId();
        this.bays = row.bays();
        this.labourHoursPerDay = row.labourHoursPerDay();
        this.workDays = Texts.days(row.workDays());
        this.labourPerHour = row.labourPerHour();
        this.overtimePerHour = row.overtimePerHour();
        this.overtimeHoursPerWeek = row.overtimeHoursPerWeek();
        this.recordsSince = row.recordsSince();
    }

    @Override
    public Depot row() {
        return new Depot(
                depot,
                name,
                ZoneId.of(timeZone),
                bays,
                labourHoursPerDay,
                Texts.days(workDays),
                labourPerHour,
                overtimePerHour,
                overtimeHoursPerWeek,
                recordsSince);
    }
}
