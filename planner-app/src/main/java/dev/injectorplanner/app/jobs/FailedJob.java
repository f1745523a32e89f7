package dev.injectorplanner.app.jobs;

/**
 * A run that failed for good; someone has to look.
 *
 * @param key which run
 * @param attempts how often it was tried
 * @param error what went wrong the last time
 */
public record FailedJob(RunKey key, int attempts, String error) {}
