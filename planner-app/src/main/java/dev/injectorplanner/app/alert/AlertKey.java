package dev.injectorplanner.app.alert;

import dev.injectorplanner.core.finding.DueFinding;
import org.jspecify.annotations.Nullable;

/**
 * What makes two findings the same: of these at most one alert is open.
 *
 * @param truck the truck, empty where it is about a job
 * @param cylinder the cylinder, 0 where it concerns the whole truck
 * @param rule the rule: a kind of finding, or {@value #JOB}
 * @param subject the interval task, the fault code that must not wait, or the job; empty where there is none
 */
record AlertKey(String truck, int cylinder, String rule, String subject) {
    static final String JOB = "JOB";

    static AlertKey of(DueFinding finding) {
        Integer cylinder = finding.cylinder();
        return new AlertKey(
                finding.truck(), cylinder == null ? 0 : cylinder, finding.kind().name(), orEmpty(subject(finding)));
    }

    /** What tells findings of one rule and place apart: the interval task, or the fault code that must not wait. */
    static @Nullable String subject(DueFinding finding) {
        return finding.task() != null ? finding.task() : finding.faultCode();
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
