package dev.injectorplanner.app.web.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.replay.outlook.Band;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.schedule.WeekLoad;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Expected later work stands on the booked hours, so that a month adds up to what the outlook says of it. */
class LaterWorkTest {
    private static Outlook outlook(YearMonth month, double hours) {
        Band none = Band.NONE;
        Outlook.Month of =
                new Outlook.Month(month, "North", none, none, none, new Band(hours, hours, hours, hours), none, none);
        return new Outlook(
                LocalDate.of(2026, 2, 2),
                LocalDate.of(2026, 8, 2),
                200,
                false,
                "",
                List.of(),
                0,
                List.of(),
                List.of(of),
                List.of(),
                List.of(),
                List.of());
    }

    private static List<WeekLoad> loads(double hours) {
        List<WeekLoad> loads = new ArrayList<>();
        for (int ahead = 0; ahead < 8; ahead++) {
            loads.add(new WeekLoad("North", IsoWeek.parse("2026-W06").plus(ahead), 1, hours, 40, 0, 1, 10));
        }
        return loads;
    }

    /** By hand: February 2026 is four whole weeks from Monday 2 to Sunday 1 March; 28 of its days are in the plan but the first. */
    @Test
    void a_month_adds_up_to_its_outlook() {
        LaterWork later = new LaterWork(outlook(YearMonth.of(2026, 2), 112));
        Map<IsoWeek, Double> weeks = later.of("North", loads(7));

        // 27 of 28 days are covered: 108 h of 112; booked 7 h a week is 27 h; 81 h more on 27 days, 3 a day
        assertThat(weeks.get(IsoWeek.parse("2026-W06"))).isCloseTo(21, within(1e-9));
        assertThat(weeks.get(IsoWeek.parse("2026-W09"))).isCloseTo(18, within(1e-9)); // its Sunday is in March
        assertThat(weeks).doesNotContainKey(IsoWeek.parse("2026-W10"));
    }

    @Test
    void a_month_that_is_booked_fuller_than_expected_expects_no_more() {
        LaterWork later = new LaterWork(outlook(YearMonth.of(2026, 2), 10));
        assertThat(later.of("North", loads(30)).values()).allMatch(hours -> hours == 0);
    }

    @Test
    void nothing_is_expected_where_nothing_is_known() {
        assertThat(new LaterWork(null).of("North", loads(7))).isEmpty();
        assertThat(new LaterWork(outlook(YearMonth.of(2026, 2), 112)).of("South", loads(7)))
                .isEmpty();
    }
}
