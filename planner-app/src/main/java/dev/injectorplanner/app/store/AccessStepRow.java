package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.AccessStep;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;

@Entity
@Table(name = "access_step")
class AccessStepRow implements Row<AccessStep> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "access_step_seq")
    @SequenceGenerator(name = "access_step_seq", sequenceName = "access_step_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String family;

    @Column(nullable = false, length = 60)
    private String step;

    @Column(name = "step_order", nullable = false)
    private int order;

    @Column(nullable = false)
    private double hours;

    @Column(nullable = false, length = 100)
    private String cylinders;

    @Column(nullable = false)
    private double drainsCoolantPercent;

    @Column(nullable = false, length = 2000)
    private String cautions;

    protected AccessStepRow() {}

    @Override
    public void take(AccessStep row) {
        this.family = row.family();
        this.step = row.step();
        this.order = row.order();
        this.hours = row.hours();
        this.cylinders = Texts.numbers(row.cylinders());
        this.drainsCoolantPercent = row.drainsCoolantPercent();
        this.cautions = row.cautions();
    }

    @Override
    public AccessStep row() {
        return new AccessStep(family, step, order, hours, Texts.numbers(cylinders), drainsCoolantPercent, cautions);
    }
}
