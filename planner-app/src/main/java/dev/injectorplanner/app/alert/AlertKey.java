package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.due.DueItem;
import org.jspecify.annotations.Nullable;

/**
 * What makes two due items the same: of these at most one alert is open.
 *
 * @param truck the truck, empty where it is about a job
 * @param cylinder the cylinder, 0 where it concerns the whole truck
 * @param rule the rule: a kind of due item, or {@value #JOB}
 * @param subject the scheduled service, the safety fault code, or the job; empty where there is none
 */
record AlertKey(String truck, int cylinder, String rule, String subject) {
    static final String JOB = "JOB";

    /** About a part whose injectors fail sooner than those before them. */
    static final String FAILS_SOONER = "FAILS_SOONER";

    static AlertKey of(DueItem item) {
        Integer cylinder = item.cylinder();
        return new AlertKey(
                item.truck(), cylinder == null ? 0 : cylinder, item.kind().name(), orEmpty(subject(item)));
    }

    /** What tells due items of one rule and place apart: the scheduled service, or the safety fault code. */
    static @Nullable String subject(DueItem item) {
        return item.task() != null ? item.task() : item.faultCode();
    }

    static AlertKey of(Alert alert) {
        Integer cylinder = alert.cylinder();
        return new AlertKey(
                orEmpty(alert.truck()), cylinder == null ? 0 : cylinder, alert.rule(), orEmpty(alert.subject()));
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
