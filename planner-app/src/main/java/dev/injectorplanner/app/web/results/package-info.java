/** The page of results: did it pay, by month, what the site's rules cost, forecasts held against what happened. */
@NullMarked
package dev.injectorplanner.app.web.results;

import org.jspecify.annotations.NullMarked;
