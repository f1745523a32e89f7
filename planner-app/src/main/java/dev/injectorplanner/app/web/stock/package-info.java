/** Stock: on hand, allocated, on order, free; by week, by movement, counted. */
@NullMarked
package dev.injectorplanner.app.web.stock;

import org.jspecify.annotations.NullMarked;
