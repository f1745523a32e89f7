package dev.injectorplanner.app.web.plan;

import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.plan.Holds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is held, by whom, why and until when. */
final class HoldList {
    private HoldList() {}

    /**
     * A hold.
     *
     * @param what what is held, in words
     * @param by who held it, and when
     * @param why the reason given, or empty
     * @param until when it ends by itself, in words
     * @param release whether it can be taken back here
     */
    public record Row(
            String truck,
            String depot,
            String mark,
            String what,
            String by,
            String why,
            String until,
            boolean release) {}

    /** @param holds of the depot's trucks, as stored; those that are over are left out */
    static List<Row> of(DepotPlan plan, List<Hold> holds, Holds held) {
        List<Row> rows = new ArrayList<>();
        for (Hold hold : holds) {
            IsoWeek week = hold.week();
            if (week == null || week.compareTo(plan.plan().firstWeek()) >= 0) {
                rows.add(row(plan, hold, week));
            }
        }
        held.heldOff()
                .forEach((truck, off) -> rows.add(new Row(
                        truck,
                        plan.depot(),
                        "care",
                        "diagnosis of its safety fault held off",
                        off.by() + ", " + DisplayFormat.shortDate(off.since()),
                        off.reason(),
                        "until another safety fault is seen, or it is planned again",
                        false)));
        for (Map.Entry<String, IsoWeek> each : held.confirmed().entrySet()) {
            if (held.pins().containsKey(each.getKey())) {
                continue; // told with its pin
            }
            rows.add(new Row(
                    each.getKey(),
                    plan.depot(),
                    "told",
                    "confirmed for " + each.getValue(),
                    "",
                    "",
                    "until " + DisplayFormat.day(each.getValue().sunday()) + ", or the plan pays to move it",
                    false));
        }
        return rows;
    }

    private static Row row(DepotPlan plan, Hold hold, @org.jspecify.annotations.Nullable IsoWeek week) {
        String words = new Hold(hold.truck(), hold.kind(), week, hold.madeAt(), hold.madeBy(), "", hold.day()).words();
        return new Row(
                hold.truck(),
                plan.depot(),
                hold.kind() == Hold.Kind.PIN ? "pin" : "no",
                words,
                hold.madeBy() + ", "
                        + DisplayFormat.moment(hold.madeAt(), plan.site().timeZone()),
                hold.why(),
                week == null ? "until released" : "until " + DisplayFormat.day(week.sunday()),
                true);
    }
}
