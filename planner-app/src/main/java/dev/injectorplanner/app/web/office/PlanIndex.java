package dev.injectorplanner.app.web.office;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.TruckReason;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.visit.Visit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A plan's rows at hand by truck and depot; made once for a plan and forgotten with it. */
final class PlanIndex {
    private static final LoadingCache<Plan, PlanIndex> MADE =
            Caffeine.newBuilder().weakKeys().build(PlanIndex::new);

    private final Map<String, List<Visit>> visitsAt;
    private final Map<String, Visit> visitOf = new HashMap<>();
    private final Map<String, List<DueItem>> dueAt;
    private final Map<String, TruckReason> reasonOf = new HashMap<>();
    private final Map<String, List<InjectorRisk>> risksOf;

    private PlanIndex(Plan plan) {
        visitsAt = by(plan.visits(), Visit::depot);
        Stream.of(
                        plan.visits().stream().filter(plan::isMain),
                        plan.visits().stream().filter(visit -> !visit.diagnosis()),
                        plan.visits().stream())
                .flatMap(Function.identity())
                .forEach(visit -> visitOf.putIfAbsent(visit.depot() + "\n" + visit.truck(), visit));
        dueAt = by(plan.dueItems(), DueItem::depot);
        plan.reasons().forEach(reason -> reasonOf.putIfAbsent(reason.truck(), reason));
        risksOf = by(plan.risks(), InjectorRisk::truck);
    }

    private static <R> Map<String, List<R>> by(List<R> rows, Function<R, String> name) {
        return rows.stream().collect(Collectors.groupingBy(name, Collectors.toUnmodifiableList()));
    }

    static PlanIndex of(Plan plan) {
        return MADE.get(plan);
    }

    List<Visit> visitsAt(String depot) {
        return visitsAt.getOrDefault(depot, List.of());
    }

    /** A truck's main visit; else another one, a diagnosis last. */
    Optional<Visit> findVisit(String depot, String truck) {
        return Optional.ofNullable(visitOf.get(depot + "\n" + truck));
    }

    List<DueItem> dueAt(String depot) {
        return dueAt.getOrDefault(depot, List.of());
    }

    Optional<TruckReason> findReason(String truck) {
        return Optional.ofNullable(reasonOf.get(truck));
    }

    List<InjectorRisk> risksOf(String truck) {
        return risksOf.getOrDefault(truck, List.of());
    }
}
