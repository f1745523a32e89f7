package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.TaskDone;
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
@Table(name = "task_done")
class TaskDoneRow implements Row<TaskDone> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "task_done_seq")
    @SequenceGenerator(name = "task_done_seq", sequenceName = "task_done_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false, length = 60)
    private String task;

    @Column(nullable = false)
    private LocalDate doneOn;

    private @Nullable Double odometerKm;

    private @Nullable Double engineHours;

    protected TaskDoneRow() {}

    @Override
    public void take(TaskDone row) {
        this.truck = row.truck();
        this.task = row.task();
        this.doneOn = row.doneOn();
        this.odometerKm = row.odometerKm();
        this.engineHours = row.engineHours();
    }

    @Override
    public TaskDone row() {
        return new TaskDone(truck, task, doneOn, odometerKm, engineHours);
    }
}
