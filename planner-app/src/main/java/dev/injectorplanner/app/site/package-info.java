/** What a site sets for itself: figures of the plan, units, its name; and its own rows of small tables, changed one by one. */
@NullMarked
package dev.injectorplanner.app.site;

import org.jspecify.annotations.NullMarked;
