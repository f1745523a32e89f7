/** What to order, cores and claims, coolant, and the workbooks of a plan. */
@NullMarked
package dev.injectorplanner.app.web.order;

import org.jspecify.annotations.NullMarked;
