package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "part")
class PartRow implements Row<Part> {
    @Id
    @Column(length = 60)
    private String part;

    @Column(nullable = false, length = 2000)
    private String description;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 20)
    private PartKind kind;

    @Column(nullable = false, length = 60)
    private String supplier;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal price;

    @Column(nullable = false, precision = 17, scale = 4)
    private BigDecimal coreDeposit;

    @Column(nullable = false)
    private int coreDays;

    @Column(nullable = false)
    private int leadDays;

    @Column(nullable = false)
    private int leadDaysMax;

    @Column(nullable = false)
    private int pack;

    @Column(nullable = false)
    private int minimumOrder;

    @Column(nullable = false)
    private int warrantyMonths;

    @Column(nullable = false)
    private double warrantyKm;

    @Column(length = 2000)
    private @Nullable String codePattern;

    protected PartRow() {}

    @Override
    public void take(Part row) {
        this.part = row.part();
        this.description = row.description();
        this.kind = row.kind();
        this.supplier = row.supplier();
        this.price = row.price();
        this.coreDeposit = row.coreDeposit();
        this.coreDays = row.coreDays();
        this.leadDays = row.leadDays();
        this.leadDaysMax = row.leadDaysMax();
        this.pack = row.pack();
        this.minimumOrder = row.minimumOrder();
        this.warrantyMonths = row.warrantyMonths();
        this.warrantyKm = row.warrantyKm();
        this.codePattern = row.codePattern();
    }

    @Override
    public Part row() {
        return new Part(
                part,
                description,
                kind,
                supplier,
                price,
                coreDeposit,
                coreDays,
                leadDays,
                leadDaysMax,
                pack,
                minimumOrder,
                warrantyMonths,
                warrantyKm,
                codePattern == null ? null : StoredPatterns.usable(part, codePattern));
    }
}
