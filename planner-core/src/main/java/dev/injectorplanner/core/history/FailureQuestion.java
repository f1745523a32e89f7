package dev.injectorplanner.core.history;

import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.UnknownAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A part that has run long without one failure on record. Either it is that good, or nobody wrote failures down: the
 * records cannot say which, so somebody has to be asked.
 *
 * @param part part number
 * @param since first day of observation
 * @param service what its injectors ran since then, in the clock's unit
 * @param clock km, or engine hours where no meter shows km
 * @param expected failures that the planner's default life lets expect in that service
 */
public record FailureQuestion(String part, LocalDate since, double service, Clock clock, double expected) {
    /**
     * Asked from this number of expected failures on: with 3, none at all has a chance of 5 % (Poisson, exp(-3); the "rule of three",
     * Hanley and Lippman-Hand 1983, JAMA 249:1743-1745). Planner default.
     */
    public static final double ASKED_FROM = 3;

    private static final double MILLION = 1e6;

    static List<FailureQuestion> of(List<UnitLife> units, List<FailureAnswer> answers) {
        Set<String> answered = answers.stream().map(FailureAnswer::part).collect(Collectors.toSet());
        Map<String, List<UnitLife>> byPart = new TreeMap<>();
        units.forEach(unit ->
                byPart.computeIfAbsent(unit.part(), part -> new ArrayList<>()).add(unit));
        List<FailureQuestion> questions = new ArrayList<>();
        byPart.forEach((part, own) -> {
            FailureQuestion question = answered.contains(part) ? null : of(part, own);
            if (question != null && question.expected >= ASKED_FROM) {
                questions.add(question);
            }
        });
        return List.copyOf(questions);
    }

    private static @Nullable FailureQuestion of(String part, List<UnitLife> units) {
        if (units.stream().anyMatch(UnitLife::failedOrWould)) {
            return null;
        }
        Clock clock = units.stream().anyMatch(unit -> unit.km() != null) ? Clock.DISTANCE : Clock.HOURS;
        LocalDate since = units.stream()
                .map(UnitLife::observedFrom)
                .min(LocalDate::compareTo)
                .orElseThrow();
        double service = 0;
        double expected = 0;
        for (UnitLife unit : units) {
            Span span = unit.on(clock);
            if (span != null) {
                service += span.exit() - span.entry();
                expected += hazard(span.exit(), clock) - hazard(span.entry(), clock);
            }
        }
        return new FailureQuestion(part, since, service, clock, expected);
    }

    private static double hazard(double age, Clock clock) {
        double scale = clock == Clock.DISTANCE ? UnknownAge.USUAL_SCALE_KM : UnknownAge.USUAL_SCALE_HOURS;
        return Math.pow(age / scale, UnknownAge.USUAL_SHAPE);
    }

    /** {@code No KV-8140 failure since 2019 in 14 million km. Is that so, or were failures not recorded?} */
    public String words() {
        String ran = service >= MILLION
                ? Figures.given(Math.round(service / MILLION * 10) / 10.0) + " million " + clock.unit()
                : Figures.whole(service) + " " + clock.unit();
        return "No " + part + " failure since " + since.getYear() + " in " + ran
                + ". Is that so, or were failures not recorded?";
    }

    /** What stands beside each chance until it is answered. */
    public String meanwhile() {
        return "Chances for " + part + " rest on the planner's default life alone until this is answered.";
    }
}
