package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.UnitReturn;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "unit_return")
class UnitReturnRow implements Row<UnitReturn> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "unit_return_seq")
    @SequenceGenerator(name = "unit_return_seq", sequenceName = "unit_return_seq", allocationSize = 1000)
    private long id;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 20)
    private UnitReturn.What what;

    @Column(nullable = false, length = 60)
    private String truck;

    private int cylinder;

    @Column(nullable = false)
    private LocalDate fittedOn;

    private int fitting;

    @Column(nullable = false, length = 60)
    private String document;

    @Column(nullable = false)
    private LocalDate sentOn;

    @Column(nullable = false, length = 60)
    private String sentBy;

    @Column(nullable = false)
    private BigDecimal amount;

    private @Nullable LocalDate settledOn;

    @Column(length = 60)
    private @Nullable String settledBy;

    private @Nullable BigDecimal credit;

    @Column(nullable = false, length = 2000)
    private String reason;

    protected UnitReturnRow() {}

    @Override
    public void take(UnitReturn row) {
        this.what = row.what();
        this.truck = row.truck();
        this.cylinder = row.cylinder();
        this.fittedOn = row.fittedOn();
        this.fitting = row.fitting();
        this.document = row.document();
        this.sentOn = row.sentOn();
        this.sentBy = row.sentBy();
        this.amount = row.amount();
        this.settledOn = row.settledOn();
        this.settledBy = row.settledBy();
        this.credit = row.credit();
        this.reason = row.reason();
    }

    @Override
    public UnitReturn row() {
        return new UnitReturn(
                what, truck, cylinder, fittedOn, fitting, document, sentOn, sentBy, amount, settledOn, settledBy,
                credit, reason);
    }
}
