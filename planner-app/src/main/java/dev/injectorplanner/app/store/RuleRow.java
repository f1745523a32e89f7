package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "due_rule")
class RuleRow implements Row<Rule> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "due_rule_seq")
    @SequenceGenerator(name = "due_rule_seq", sequenceName = "due_rule_seq", allocationSize = 1000)
    private long id;

    @Column(length = 60)
    private @Nullable String family;

    @Enumerated(EnumType.STRING)
    @Column(name = "rule_kind", nullable = false, length = 20)
    private RuleKind rule;

    @Column(name = "limit_value", nullable = false)
    private double limit;

    private @Nullable Integer windowDays;

    @Column(nullable = false, length = 60)
    private String familyKey;

    protected RuleRow() {}

    @Override
    public void take(Rule row) {
        this.family = row.family();
        this.rule = row.rule();
        this.limit = row.limit();
        this.windowDays = row.windowDays();
        this.familyKey = row.family() == null ? "" : row.family();
    }

    @Override
    public Rule row() {
        return new Rule(family, rule, limit, windowDays);
    }
}
