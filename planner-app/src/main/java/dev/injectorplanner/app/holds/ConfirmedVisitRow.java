package dev.injectorplanner.app.holds;

import dev.injectorplanner.core.calendar.IsoWeek;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "announced_visit")
class ConfirmedVisitRow {
    @Id
    @Column(length = 60)
    private String truck;

    @Column(nullable = false, length = 8)
    private String week;

    @Column(nullable = false)
    private Instant announcedAt;

    @Column(nullable = false, length = 60)
    private String announcedBy;

    protected ConfirmedVisitRow() {}

    ConfirmedVisitRow(String truck, IsoWeek week, Instant at, String by) {
        this.truck = truck;
        this.week = week.toString();
        this.announcedAt = at;
        this.announcedBy = by;
    }

    String truck() {
        return truck;
    }

    IsoWeek week() {
        return IsoWeek.parse(week);
    }
}
