package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.EngineFamily;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;

@Entity
@Table(name = "engine_family")
class EngineFamilyRow implements Row<EngineFamily> {
    @Id
    @Column(length = 60)
    private String family;

    @Column(nullable = false)
    private int cylinders;

    @Column(nullable = false, length = 400)
    private String banks;

    @Column(nullable = false, length = 100)
    private String firingOrder;

    @Column(nullable = false)
    private double cylinderHours;

    @Column(nullable = false)
    private double coolantLitres;

    @Column(nullable = false)
    private double glycolPercent;

    @Column(nullable = false, length = 60)
    private String injectorPart;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal roadFailureCost;

    protected EngineFamilyRow() {}

    @Override
    public void take(EngineFamily row) {
        this.family = row.family();
        this.cylinders = row.cylinders();
        this.banks = Texts.banks(row.banks());
        this.firingOrder = Texts.numbers(row.firingOrder());
        this.cylinderHours = row.cylinderHours();
        this.coolantLitres = row.coolantLitres();
        this.glycolPercent = row.glycolPercent();
        this.injectorPart = row.injectorPart();
        this.roadFailureCost = row.roadFailureCost();
    }

    @Override
    public EngineFamily row() {
        return new EngineFamily(
                family,
                cylinders,
                Texts.banks(banks),
                Texts.numbers(firingOrder),
                cylinderHours,
                coolantLitres,
                glycolPercent,
                injectorPart,
                roadFailureCost);
    }
}
