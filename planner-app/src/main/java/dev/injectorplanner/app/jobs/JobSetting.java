package dev.injectorplanner.app.jobs;

import dev.injectorplanner.app.jobs.time.LocalTimes;

/**
 * When a job runs for a depot.
 *
 * @param kind the job
 * @param depot the depot; empty for the whole fleet
 * @param times its times in the depot's zone
 * @param enabled false: not by itself, only by hand
 * @param bySite set by the site; false: a planner default
 */
public record JobSetting(JobKind kind, String depot, LocalTimes times, boolean enabled, boolean bySite) {}
