package dev.injectorplanner.core.schedule.days;

import dev.injectorplanner.core.check.Require;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A day on which a depot works. Work in a bay goes on through the spans and rests between them; a minute of work is counted
 * from the day's opening, breaks left out.
 *
 * @param date the day
 * @param labourHours technicians' plain hours for planned work
 * @param bays bays in use
 * @param spans when bays are worked in, by time, apart from one another
 */
public record WorkDay(LocalDate date, double labourHours, int bays, List<Span> spans) {
    private static final int QUARTER = 15;
    private static final double MINUTES = 60;
    private static final double ROUNDING = 1e-6;

    public WorkDay {
        Require.notNegative("labour_hours", labourHours);
        Require.within("bays", bays, 0, 1_000);
        spans = spans.stream().sorted(Comparator.comparingInt(Span::from)).toList();
        for (int i = 1; i < spans.size(); i++) {
            Require.within(
                    "start of a span", spans.get(i).from(), spans.get(i - 1).to(), 24 * 60);
        }
    }

    /** Minutes of work in one bay from opening to closing. */
    public int workMinutes() {
        return spans.stream().mapToInt(Span::minutes).sum();
    }

    /** Technicians' plain minutes. */
    int labourMinutes() {
        return (int) Math.floor(labourHours * MINUTES + ROUNDING);
    }

    /** The clock's minute at which work begins that has this much of the day's work before it. */
    int begins(int work) {
        int left = work;
        for (Span span : spans) {
            if (left < span.minutes()) {
                return span.from() + left;
            }
            left -= span.minutes();
        }
        throw new IllegalArgumentException("minute " + work + " of a day with " + workMinutes() + " minutes of work");
    }

    /** The clock's minute at which that much of the day's work is done; a break that follows is left out. */
    int ends(int work) {
        int left = work;
        for (Span span : spans) {
            if (left <= span.minutes()) {
                return span.from() + left;
            }
            left -= span.minutes();
        }
        throw new IllegalArgumentException("minute " + work + " of a day with " + workMinutes() + " minutes of work");
    }

    /** Work before each quarter hour of the clock at which work may begin. */
    List<Integer> starts() {
        List<Integer> starts = new ArrayList<>();
        int before = 0;
        for (Span span : spans) {
            for (int minute = (span.from() + QUARTER - 1) / QUARTER * QUARTER; minute < span.to(); minute += QUARTER) {
                starts.add(before + minute - span.from());
            }
            before += span.minutes();
        }
        return starts;
    }

    /** Work before a minute of the clock; -1 where bays are not worked in then. */
    int workAt(int minute) {
        int before = 0;
        for (Span span : spans) {
            if (minute >= span.from() && minute < span.to()) {
                return before + minute - span.from();
            }
            before += span.minutes();
        }
        return -1;
    }
}
