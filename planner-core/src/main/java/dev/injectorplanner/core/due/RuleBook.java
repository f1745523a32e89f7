package dev.injectorplanner.core.due;

import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.TestKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Which rule holds for which family: the family's own, else the site's for all, else the planner's default. */
public final class RuleBook {
    private static final String ALL = "";

    private final Map<String, Map<RuleKind, DueRule>> site = new HashMap<>();
    private final FleetSnapshot fleet;

    public RuleBook(FleetSnapshot fleet) {
        this(fleet, null);
    }

    /** @param without a rule of the site's that is left out, as if it had never been set; null for none */
    public RuleBook(FleetSnapshot fleet, @Nullable Rule without) {
        this.fleet = fleet;
        for (Rule rule : fleet.rules()) {
            if (rule.equals(without)) {
                continue;
            }
            String family = rule.family() == null ? ALL : rule.family();
            site.computeIfAbsent(family, name -> new HashMap<>())
                    .put(rule.rule(), new DueRule(rule.rule(), rule.limit(), rule.windowDays(), DueRule.SITE));
        }
    }

    /** The rule of a kind that holds for a family; none for a kind without default that the site does not name. */
    public Optional<DueRule> find(String family, RuleKind kind) {
        return Stream.of(family, ALL)
                .map(name -> site.getOrDefault(name, Map.of()).get(kind))
                .flatMap(Stream::ofNullable)
                .findFirst()
                .or(() -> Optional.ofNullable(RuleDefaults.of(kind)));
    }

    /** Defaults that hold for at least one family of the fleet, in the order of the kinds. */
    public List<DueRule> listDefaultsInUse() {
        return Stream.of(RuleKind.values())
                .flatMap(kind -> fleet.engineFamilies().stream()
                        .flatMap(family -> find(family.family(), kind).stream())
                        .filter(rule -> rule.source().equals(DueRule.DEFAULT))
                        .limit(1))
                .toList();
    }

    /** A balance or return-flow test's value over the limit that holds for a family; NaN where they cannot be compared. */
    public double ratio(String family, CylinderTest test) {
        if (!TestRules.comparable(test)) {
            return Double.NaN;
        }
        boolean balance = test.test() == TestKind.BALANCE;
        double value = balance ? Math.abs(test.value()) : test.value();
        return find(family, balance ? RuleKind.BALANCE : RuleKind.RETURN_FLOW)
                .map(rule -> value / rule.limit())
                .orElse(Double.NaN);
    }
}
