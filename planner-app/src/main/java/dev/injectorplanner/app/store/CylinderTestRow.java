package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.TestKind;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;

@Entity
@Table(name = "cylinder_test")
class CylinderTestRow implements Row<CylinderTest> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "cylinder_test_seq")
    @SequenceGenerator(name = "cylinder_test_seq", sequenceName = "cylinder_test_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false)
    private int cylinder;

    @Column(nullable = false)
    private Instant testedAt;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 20)
    private TestKind test;

    @Column(name = "result", nullable = false)
    private double value;

    @Column(nullable = false, length = 60)
    private String unit;

    @Column(nullable = false, length = 2000)
    private String engineState;

    protected CylinderTestRow() {}

    @Override
    public void take(CylinderTest row) {
        this.truck = row.truck();
        this.cylinder = row.cylinder();
        this.testedAt = row.testedAt();
        this.test = row.test();
        this.value = row.value();
        this.unit = row.unit();
        this.engineState = row.engineState();
    }

    @Override
    public CylinderTest row() {
        return new CylinderTest(truck, cylinder, testedAt, test, value, unit, engineState);
    }
}
