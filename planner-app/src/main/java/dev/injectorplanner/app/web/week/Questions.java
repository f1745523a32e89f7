package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.desk.Decision;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What somebody must decide, one question a cause, the costliest first. */
final class Questions {
    private final @Nullable IsoWeek week;

    /** @param week a later week, which asks for its own visits alone; null for the plans' first, which asks for all */
    Questions(@Nullable IsoWeek week) {
        this.week = week;
    }

    /** @param decided what was decided at each depot and stands */
    List<DeskQuestion> of(List<DepotPlan> plans, Map<String, List<Decision>> decided) {
        List<DeskQuestion> questions = new ArrayList<>();
        for (DepotPlan plan : plans) {
            List<Decision> left = decided.getOrDefault(plan.depot(), List.of()).stream()
                    .filter(decision -> decision.kind() == Decision.Kind.LEAVE)
                    .toList();
            List<DeskQuestion> asked = new ArrayList<>(new ShortQuestions(plan).list(week));
            if (week == null) {
                asked.addAll(new VisitQuestions(plan).list());
            }
            asked.stream().filter(question -> !isLeft(question, left)).forEach(questions::add);
        }
        questions.sort(Comparator.comparingDouble(DeskQuestion::stake)
                .reversed()
                .thenComparing(DeskQuestion::depot)
                .thenComparing(DeskQuestion::subject));
        return List.copyOf(questions);
    }

    private static boolean isLeft(DeskQuestion question, List<Decision> left) {
        return left.stream()
                .anyMatch(decision -> decision.subject().equals(question.subject())
                        && decision.seen().equals(shortened(question.state())));
    }

    /** As it is stored. */
    static String shortened(String state) {
        return state.length() <= 2000 ? state : state.substring(0, 1900) + " #" + Integer.toHexString(state.hashCode());
    }
}
