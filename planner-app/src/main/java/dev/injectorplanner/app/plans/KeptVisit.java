package dev.injectorplanner.app.plans;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.visit.Visit;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A visit of a kept plan, without its reasons.
 *
 * @param truck the truck
 * @param depot where
 * @param week the ISO week
 * @param cylinders cylinders whose injectors are replaced
 * @param tasks scheduled services done along
 * @param inspection whether the injectors are tested
 * @param labourHours labour
 * @param drainedLitres coolant that comes out
 * @param bay its bay, from 1, or null where days are not laid yet
 * @param startsAt its start at the depot, or null
 * @param endsAt its end at the depot, or null
 */
public record KeptVisit(
        String truck,
        String depot,
        IsoWeek week,
        List<Integer> cylinders,
        List<String> tasks,
        boolean inspection,
        double labourHours,
        double drainedLitres,
        @Nullable Integer bay,
        @Nullable LocalDateTime startsAt,
        @Nullable LocalDateTime endsAt) {
    public KeptVisit {
        cylinders = List.copyOf(cylinders);
        tasks = List.copyOf(tasks);
    }

    /** Of each truck the visit that pins and confirmations speak of: the one with cylinders, or else its first; no diagnosis. */
    public static List<KeptVisit> mainOnes(List<KeptVisit> visits) {
        Map<String, KeptVisit> main = new LinkedHashMap<>();
        for (KeptVisit visit : visits) {
            if (!visit.diagnosis()) {
                main.merge(
                        visit.truck(),
                        visit,
                        (one, other) ->
                                one.cylinders().isEmpty() && !other.cylinders().isEmpty() ? other : one);
            }
        }
        return List.copyOf(main.values());
    }

    /** Whether it is a truck's diagnosis visit. */
    public boolean diagnosis() {
        return tasks.equals(List.of(Visit.DIAGNOSIS));
    }
}
