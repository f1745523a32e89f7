/** Forecasts as they were made, kept to be held against what happened. */
@NullMarked
package dev.injectorplanner.app.forecast;

import org.jspecify.annotations.NullMarked;
