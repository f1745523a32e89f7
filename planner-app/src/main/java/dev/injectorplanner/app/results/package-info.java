/** Whether it paid: what was planned, done and spent by month, and forecasts held against what happened. */
@NullMarked
package dev.injectorplanner.app.results;

import org.jspecify.annotations.NullMarked;
