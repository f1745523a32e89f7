package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.IntervalTask;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "interval_task")
class IntervalTaskRow implements Row<IntervalTask> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "interval_task_seq")
    @SequenceGenerator(name = "interval_task_seq", sequenceName = "interval_task_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String family;

    @Column(nullable = false, length = 60)
    private String task;

    private @Nullable Double everyKm;

    private @Nullable Double everyHours;

    private @Nullable Integer everyMonths;

    @Column(nullable = false)
    private double hours;

    @Column(nullable = false)
    private boolean rides;

    protected IntervalTaskRow() {}

    @Override
    public void take(IntervalTask row) {
        this.family = row.family();
        this.task = row.task();
        this.everyKm = row.everyKm();
        this.everyHours = row.everyHours();
        this.everyMonths = row.everyMonths();
        this.hours = row.hours();
        this.rides = row.rides();
    }

    @Override
    public IntervalTask row() {
        return new IntervalTask(family, task, everyKm, everyHours, everyMonths, hours, rides);
    }
}
