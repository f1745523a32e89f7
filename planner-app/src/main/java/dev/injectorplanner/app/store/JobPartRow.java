package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.Per;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "job_part")
class JobPartRow implements Row<JobPart> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "job_part_seq")
    @SequenceGenerator(name = "job_part_seq", sequenceName = "job_part_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String family;

    @Enumerated(EnumType.STRING)
    @Column(name = "counted_per", nullable = false, length = 20)
    private Per per;

    @Column(length = 60)
    private @Nullable String step;

    @Column(nullable = false, length = 60)
    private String part;

    @Column(nullable = false)
    private double quantity;

    @Column(nullable = false)
    private double chance;

    @Column(length = 60)
    private @Nullable String task;

    @Column(nullable = false, length = 60)
    private String stepKey;

    protected JobPartRow() {}

    @Override
    public void take(JobPart row) {
        this.family = row.family();
        this.per = row.per();
        this.step = row.step();
        this.part = row.part();
        this.quantity = row.quantity();
        this.chance = row.chance();
        this.task = row.task();
        this.stepKey = Objects.requireNonNullElse(row.step(), Objects.requireNonNullElse(row.task(), ""));
    }

    @Override
    public JobPart row() {
        return new JobPart(family, per, step, part, quantity, chance, task);
    }
}
