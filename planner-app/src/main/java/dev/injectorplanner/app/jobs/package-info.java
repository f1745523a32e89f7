/** The frame that every job runs in: keys, runs, retries, take-over, settings. Knows neither Quartz nor a web framework. */
@NullMarked
package dev.injectorplanner.app.jobs;

import org.jspecify.annotations.NullMarked;
