package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.Origin;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "injector")
class FittedInjectorRow implements Row<FittedInjector> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "injector_seq")
    @SequenceGenerator(name = "injector_seq", sequenceName = "injector_seq", allocationSize = 1000)
    private long id;

    private static final LocalDate FOREVER = LocalDate.of(9999, 12, 31);

    @Column(nullable = false, length = 60)
    private String truck;

    @Column(nullable = false)
    private int cylinder;

    @Column(nullable = false, length = 60)
    private String part;

    @Column(length = 60)
    private @Nullable String serial;

    @Column(length = 60)
    private @Nullable String calibrationCode;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 20)
    private Origin origin;

    @Column(nullable = false)
    private LocalDate fittedOn;

    private @Nullable Double odometerKm;

    private @Nullable Double engineHours;

    private @Nullable LocalDate removedOn;

    private @Nullable Double removedOdometerKm;

    private @Nullable Double removedEngineHours;

    @Enumerated(EnumType.STRING)
    @Column(length = 20)
    private @Nullable Found found;

    @Column(nullable = false)
    private LocalDate removedKey;

    @Column(nullable = false)
    private int fitting;

    @Column(nullable = false, length = 20)
    private String inKey;

    protected FittedInjectorRow() {}

    @Override
    public void take(FittedInjector row) {
        this.truck = row.truck();
        this.cylinder = row.cylinder();
        this.part = row.part();
        this.serial = row.serial();
        this.calibrationCode = row.calibrationCode();
        this.origin = row.origin();
        this.fittedOn = row.fittedOn();
        this.odometerKm = row.odometerKm();
        this.engineHours = row.engineHours();
        this.removedOn = row.removedOn();
        this.removedOdometerKm = row.removedOdometerKm();
        this.removedEngineHours = row.removedEngineHours();
        this.found = row.found();
        this.removedKey = row.removedOn() == null ? FOREVER : row.removedOn();
        this.fitting = row.fitting();
        this.inKey = row.removedOn() == null ? "" : row.fittedOn() + "/" + row.fitting();
    }

    @Override
    public FittedInjector row() {
        return new FittedInjector(
                truck,
                cylinder,
                part,
                serial,
                calibrationCode,
                origin,
                fittedOn,
                odometerKm,
                engineHours,
                removedOn,
                removedOdometerKm,
                removedEngineHours,
                found,
                fitting);
    }
}
