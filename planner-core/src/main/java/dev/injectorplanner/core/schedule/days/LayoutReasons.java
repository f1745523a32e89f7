package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.units.Figures;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Why a visit has no place in its week, in words. */
final class LayoutReasons {
    private final DepotWeek week;
    private final WeekBoard board;
    private final DutySpare spare;

    LayoutReasons(DepotWeek week, WeekBoard board, DutySpare spare) {
        this.week = week;
        this.board = board;
        this.spare = spare;
    }

    String of(DayVisit visit) {
        if (week.days().isEmpty() || board.bays() == 0) {
            return "the depot has no working day that week";
        }
        DayVisit free = new DayVisit(
                visit.truck(),
                visit.week(),
                visit.labourHours(),
                false,
                visit.dutyGroup(),
                visit.notOn(),
                visit.held(),
                null);
        if (visit.pin() != null && fits(visit) == null && fits(free) != null) {
            return "it is pinned to " + visit.pin().words() + ", and does not fit there";
        }
        if (fits(free) == null) {
            return alone(visit);
        }
        double left = leftHours();
        if (left + 1e-9 < visit.labourHours()) {
            return "with the other visits " + Figures.tidy(left) + " h are left in the week, and it takes "
                    + Figures.tidy(visit.labourHours()) + " h";
        }
        return visit.pin() != null
                ? "it is pinned to " + visit.pin().words() + ", where other visits stand"
                : "the week has enough hours, but no bay is free for long enough while technicians are available";
    }

    private @Nullable Place fits(DayVisit visit) {
        WeekBoard empty = new WeekBoard(week, spare);
        for (int bay = 0; bay < empty.bays(); bay++) {
            for (int day = 0; day < week.days().size(); day++) {
                for (int start : week.days().get(day).starts()) {
                    Place place = empty.place(visit, bay, day, start * Ticks.MINUTE, Ticks.overtime(week));
                    if (place != null) {
                        return place;
                    }
                }
            }
        }
        return null;
    }

    private String alone(DayVisit visit) {
        List<LocalDate> out = week.days().stream()
                .map(WorkDay::date)
                .filter(visit.notOn()::contains)
                .toList();
        if (!out.isEmpty()) {
            return "the days on which it can be spared are too few or not consecutive; it cannot be spared on "
                    + Figures.count(out.size(), "day", "days");
        }
        boolean group = visit.dutyGroup() != null
                && week.days().stream().anyMatch(day -> spare.spare(visit.dutyGroup(), day.date()) < 1);
        return group
                ? "duty group " + visit.dutyGroup() + " can spare no truck for long enough that week"
                : "it needs more than one bay and its technicians have in the whole week";
    }

    private double leftHours() {
        int sum = Math.max(0, Ticks.overtime(week) - board.overtime());
        for (int day = 0; day < week.days().size(); day++) {
            sum += Math.max(0, board.plainLeft(day));
        }
        return Ticks.hours(sum);
    }
}
