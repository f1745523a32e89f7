/** Pictures of figures: axes with round ticks, one legend, values by pointer and focus, the same figures as a table. */
@NullMarked
package dev.injectorplanner.app.web.chart;

import org.jspecify.annotations.NullMarked;
