package dev.injectorplanner.app.plans;

import com.fasterxml.jackson.annotation.JsonProperty;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.option.VisitReason;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.parts.ShortLine;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Unplanned;
import dev.injectorplanner.core.visit.Visit;
import java.math.BigDecimal;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/** The names that a plan's fields have in JSON: those of the first version, so that kept plans and other programs go on reading them. */
public final class PlanJson {
    private PlanJson() {}

    /** A mapper that uses those names. */
    public static JsonMapper.Builder named(JsonMapper.Builder mapper) {
        List.of(Plan.class, Visit.class, Unplanned.class, VisitReason.class, ShortLine.class, Advisor.Option.class)
                .forEach(type -> mapper.addMixIn(type, Names.class));
        mapper.addMixIn(OrderRules.class, OrderNames.class);
        return mapper;
    }

    private interface OrderNames {
        @JsonProperty("movingPerWeek")
        BigDecimal postponementPerWeek();
    }

    private interface Names {
        @JsonProperty("findings")
        List<DueItem> dueItems();

        @JsonProperty("setUp")
        double sharedCost();

        @JsonProperty("movingCost")
        BigDecimal postponementCost();
    }
}
