package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.visit.Visit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The plan in force at a depot: its visits, by week and truck, a page at a time. */
public final class PlanAnswer {
    private PlanAnswer() {}

    public static Map<String, Object> of(String depot, KeptPlan kept, Cursor cursor, SiteForm form) {
        Plan plan = kept.plan();
        List<Visit> visits = plan.visits().stream()
                .filter(visit -> visit.depot().equals(depot))
                .sorted(java.util.Comparator.comparing(Visit::week).thenComparing(Visit::truck))
                .toList();
        int from = (int) Math.min(cursor.after(), visits.size());
        int to = Math.min(from + cursor.most(), visits.size());
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("plan", kept.id());
        answer.put("depot", depot);
        answer.put("planned_on", plan.today().toString());
        answer.put("kept_at", kept.keptAt().toString());
        answer.put("first_week", plan.firstWeek().toString());
        answer.put("weeks", plan.weeks());
        answer.put(
                "items",
                visits.subList(from, to).stream()
                        .map(visit -> visit(visit, form))
                        .toList());
        if (!form.currency().isEmpty()) {
            answer.put("currency", form.currency());
        }
        @Nullable String next = to < visits.size() ? Cursor.text(to) : null;
        answer.put("next", next);
        return answer;
    }

    private static Map<String, Object> visit(Visit visit, SiteForm form) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("truck", visit.truck());
        fields.put("week", visit.week().toString());
        fields.put("cylinders", visit.cylinders());
        fields.put("steps", visit.steps());
        fields.put("tasks", visit.tasks());
        fields.put("inspection", visit.inspection());
        fields.put("labour_hours", visit.labourHours());
        AnswerUnits.volume(fields, "drained", visit.drainedLitres(), form);
        fields.put("why", form.units().sentence(visit.why()));
        return fields;
    }
}
