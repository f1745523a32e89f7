package dev.injectorplanner.app.web.jobs;

import java.time.Instant;
import java.util.List;

/**
 * The page of jobs.
 *
 * @param givenUp runs among the newest that failed and failed for good
 * @param most how many runs are shown at most
 * @param runs the newest, by due time
 * @param times jobs with their times
 * @param missing names of jobs that have no work here
 * @param made when the page was made: the due time of a run by its button, so that pressing twice is one run
 */
record JobsView(long givenUp, int most, List<Run> runs, List<Time> times, List<String> missing, Instant made) {
    JobsView {
        runs = List.copyOf(runs);
        times = List.copyOf(times);
        missing = List.copyOf(missing);
    }

    /**
     * A run.
     *
     * @param mark shape of its outcome
     * @param attempt which try; 0 where it was never started
     * @param took seconds of the last try, or empty
     * @param wrong what went wrong, or empty
     */
    record Run(
            String job,
            String depot,
            String due,
            String mark,
            String outcome,
            int attempt,
            String took,
            String did,
            String wrong) {}

    /**
     * A job of a depot, or of the whole fleet.
     *
     * @param option the job as a form names it
     * @param depot its depot, or empty
     * @param words its times as people say them
     * @param at the time of day, for the form
     * @param times its crontab line, and whose it is
     * @param next its next time, or that it runs by hand only
     */
    record Time(String option, String job, String depot, String words, String at, String times, String next) {}
}
