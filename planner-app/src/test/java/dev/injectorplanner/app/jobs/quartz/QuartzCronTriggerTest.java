package dev.injectorplanner.app.jobs.quartz;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Date;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.quartz.CronExpression;

class QuartzCronTriggerTest {
    @Test
    void look() throws Exception {
        for (String[] c : new String[][] {
            {"0 30 2 * * ?", "America/Chicago", "2026-03-07T06:00:00Z"},
            {"0 30 2 * * ?", "Europe/Berlin", "2026-03-27T23:00:00Z"},
            {"0 0 2 * * ?", "Europe/Berlin", "2026-03-27T23:00:00Z"},
            {"0 30 1 * * ?", "America/Chicago", "2026-10-31T17:00:00Z"},
            {"0 30 2 * * ?", "Europe/Berlin", "2026-10-24T10:00:00Z"},
            {"0 0/15 * * * ?", "America/Chicago", "2026-11-01T05:30:00Z"},
            {"0 0/15 * * * ?", "Europe/Berlin", "2026-10-25T00:00:00Z"},
        }) {
            CronExpression t = new CronExpression(c[0]);
            t.setTimeZone(TimeZone.getTimeZone(ZoneId.of(c[1])));
            Date d = Date.from(Instant.parse(c[2]));
            StringBuilder sb = new StringBuilder();
            for (int i = 0; i < 8; i++) {
                d = t.getNextValidTimeAfter(d);
                sb.append(' ').append(d.toInstant());
            }
            System.err.println("LOOK " + String.join(" ", c) + " ->" + sb);
        }
    }
}
