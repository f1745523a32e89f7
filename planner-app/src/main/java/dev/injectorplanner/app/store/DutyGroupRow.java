package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.DutyGroup;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;

@Entity
@Table(name = "duty_group")
class DutyGroupRow implements Row<DutyGroup> {
    @Id
    @Column(length = 60)
    private String dutyGroup;

    @Column(nullable = false)
    private int minimumOnRoad;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal downtimePerDay;

    protected DutyGroupRow() {}

    @Override
    public void take(DutyGroup row) {
        this.dutyGroup = row.dutyGroup();
        this.minimumOnRoad = row.minimumOnRoad();
        this.downtimePerDay = row.downtimePerDay();
    }

    @Override
    public DutyGroup row() {
        return new DutyGroup(dutyGroup, minimumOnRoad, downtimePerDay);
    }
}
