package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.Vin;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "truck")
class TruckRow implements Row<Truck> {
    @Id
    @Column(length = 60)
    private String truck;

    @Column(name = "vin_if_known", length = 17)
    private @Nullable String vin;

    @Column(nullable = false, length = 60)
    private String depot;

    @Column(nullable = false, length = 60)
    private String family;

    @Column(length = 60)
    private @Nullable String dutyGroup;

    @Column(nullable = false)
    private LocalDate inServiceOn;

    private @Nullable LocalDate outOfServiceOn;

    private @Nullable LocalDate warrantyUntil;

    private @Nullable LocalDate recordsSince;

    protected TruckRow() {}

    @Override
    public void take(Truck row) {
        this.truck = row.truck();
        this.vin = row.vin() == null ? null : row.vinText();
        this.depot = row.depot();
        this.family = row.family();
        this.dutyGroup = row.dutyGroup();
        this.inServiceOn = row.inServiceOn();
        this.outOfServiceOn = row.outOfServiceOn();
        this.warrantyUntil = row.warrantyUntil();
        this.recordsSince = row.recordsSince();
    }

    @Override
    public Truck row() {
        return new Truck(
                truck,
                vin == null ? null : new Vin(vin),
                depot,
                family,
                dutyGroup,
                inServiceOn,
                outOfServiceOn,
                warrantyUntil,
                recordsSince);
    }
}
