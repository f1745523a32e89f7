package dev.injectorplanner.core.change;

import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.RemainingDelay;
import dev.injectorplanner.core.history.UnitLife;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Watches every part and origin for injectors that fail sooner than those fitted before them: all fitted since a quarter
 * began, and each quarter's own. Each group is held against the life of what was fitted before it, never its own.
 */
public final class ChangeWatch {
    /** Failure rate, against the expected one, that the watch is laid out for. */
    static final double RATIO = 3;

    /** Score that raises the alarm: in a fleet where nothing changes one in some eighty part-years (computed, see tests). */
    static final double ALARM = 4.5;

    /** Below this share of the alarm later weeks have taken it back: a batch that is over, or chance. */
    private static final double STILL = 0.6;

    /** Less than this against the expected failures is not worth an alarm, however certain. */
    private static final double LEAST_RATIO = 1.75;

    private static final int LEAST_FAILURES = 3;
    private static final int LEAST_BEFORE = 10;
    private static final int MOST_QUARTERS = 16;
    private static final double WORTH_A_LOOK = 1.5;

    private final RemainingDelay remaining;
    private final LocalDate today;
    private final UnaryOperator<String> supplierOf;

    /**
     * @param remaining what an injector found worn would have run on
     * @param supplierOf names a part's supplier, empty where it has none
     */
    public ChangeWatch(RemainingDelay remaining, LocalDate today, UnaryOperator<String> supplierOf) {
        this.remaining = remaining;
        this.today = today;
        this.supplierOf = supplierOf;
    }

    private record Found(LifeChange change, double score) {}

    /** Changes by part and origin, at most one of each: the one that the failures say most for. */
    public List<LifeChange> find(List<UnitLife> units, LifeBook all) {
        Map<String, List<UnitLife>> byPart = new TreeMap<>();
        units.forEach(unit ->
                byPart.computeIfAbsent(unit.part(), part -> new ArrayList<>()).add(unit));
        List<LifeChange> changes = new ArrayList<>();
        byPart.forEach((part, own) -> {
            for (Origin origin : Origin.KNOWN) {
                Found found = find(part, origin, own, all);
                if (found != null) {
                    changes.add(found.change());
                }
            }
        });
        return changes;
    }

    private @Nullable Found find(String part, Origin origin, List<UnitLife> own, LifeBook all) {
        Cohorts cohorts =
                Cohorts.of(own.stream().filter(unit -> unit.origin() == origin).toList(), all.clockOf(part), today);
        Found most = null;
        for (LocalDate from : quarters(cohorts)) {
            for (LocalDate before : new LocalDate[] {null, from.plusMonths(3)}) {
                Cohorts group = cohorts.fitted(from, before);
                if (looks(group, all, part, origin)) {
                    Found found = judge(part, origin, own, group, from, before);
                    most = found != null && (most == null || found.score() > most.score() + 1e-9) ? found : most;
                }
            }
        }
        return most;
    }

    private List<LocalDate> quarters(Cohorts cohorts) {
        LocalDate quarter = today.with(IsoFields.DAY_OF_QUARTER, 1);
        List<LocalDate> quarters = new ArrayList<>();
        for (int i = 0; i < MOST_QUARTERS && cohorts.hasFittedBefore(quarter); i++) {
            quarters.add(quarter);
            quarter = quarter.minusMonths(3);
        }
        return quarters;
    }

    /** A cheap first look by the life of all: a group that is no worse than that is left alone. */
    private static boolean looks(Cohorts group, LifeBook all, String part, Origin origin) {
        double failures = group.failures();
        if (failures < LEAST_FAILURES) {
            return false;
        }
        double expected = group.expected(all.predictive(all.of(part, origin)));
        return failures > expected && failures * Math.log(failures / expected) - failures + expected > WORTH_A_LOOK;
    }

    private @Nullable Found judge(
            String part, Origin origin, List<UnitLife> own, Cohorts group, LocalDate from, @Nullable LocalDate before) {
        List<UnitLife> earlier =
                own.stream().filter(unit -> unit.fittedOn().isBefore(from)).toList();
        if (earlier.stream().filter(UnitLife::failedOrWould).count() < LEAST_BEFORE) {
            return null;
        }
        LifeBook book = LifeBook.of(List.of(part), earlier, remaining);
        if (book.clockOf(part) != group.clock()) {
            return null;
        }
        List<UnitLife> alike =
                earlier.stream().filter(unit -> unit.origin() == origin).toList();
        EarlierLife life = new EarlierLife(book.predictive(book.of(part, origin)), alike, group.clock());
        Cohorts.Course course = group.course(life, from);
        FailureCusum sum = new FailureCusum(RATIO);
        LocalDate noticed = null;
        for (int week = 0; week < course.weeks(); week++) {
            double score = sum.add(course.failures()[week], course.expected()[week]);
            if (noticed == null && score >= ALARM) {
                LocalDate end = from.plusDays(7L * (week + 1));
                noticed = end.isAfter(today) ? today : end;
            }
        }
        boolean slight = group.failures() < LEAST_RATIO * course.sum();
        return noticed == null || slight || sum.score() < STILL * ALARM
                ? null
                : new Found(
                        new LifeChange(
                                part,
                                supplierOf.apply(part),
                                origin,
                                from,
                                before,
                                group.size(),
                                group.failures(),
                                course.sum(),
                                noticed),
                        sum.score());
    }
}
