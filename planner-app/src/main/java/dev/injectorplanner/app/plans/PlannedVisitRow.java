package dev.injectorplanner.app.plans;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "planned_visit")
class PlannedVisitRow {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "planned_visit_seq")
    @SequenceGenerator(name = "planned_visit_seq", sequenceName = "planned_visit_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false)
    private long planRun;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false, length = 60)
    private String depot;

    @Column(nullable = false, length = 8)
    private String week;

    @Column(nullable = false, length = 100)
    private String cylinders;

    @Column(nullable = false, length = 4000)
    private String tasks;

    @Column(nullable = false)
    private boolean inspection;

    @Column(nullable = false)
    private double labourHours;

    @Column(nullable = false)
    private double drainedLitres;

    @Column(nullable = false)
    private boolean diagnosis;

    private @Nullable Integer bay;

    private @Nullable LocalDateTime startsAt;

    private @Nullable LocalDateTime endsAt;

    protected PlannedVisitRow() {}

    static PlannedVisitRow of(long planRun, Plan plan, Visit visit) {
        PlannedVisitRow row = new PlannedVisitRow();
        row.planRun = planRun;
        row.truck = visit.truck();
        row.depot = visit.depot();
        row.week = visit.week().toString();
        row.cylinders = visit.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" "));
        row.tasks = String.join("\n", visit.tasks());
        row.inspection = visit.inspection();
        row.diagnosis = visit.diagnosis();
        row.labourHours = visit.labourHours();
        row.drainedLitres = visit.drainedLitres();
        DepotDays.find(plan.days(), visit).ifPresent(laid -> {
            row.bay = laid.bay();
            row.startsAt = laid.start();
            row.endsAt = laid.end();
        });
        return row;
    }

    KeptVisit kept() {
        return new KeptVisit(
                truck,
                depot,
                IsoWeek.parse(week),
                cylinders.isEmpty()
                        ? List.of()
                        : Arrays.stream(cylinders.split(" ", -1))
                                .map(Integer::valueOf)
                                .toList(),
                tasks.isEmpty() ? List.of() : List.of(tasks.split("\n", -1)),
                inspection,
                labourHours,
                drainedLitres,
                bay,
                startsAt,
                endsAt);
    }
}
