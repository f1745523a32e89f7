/** Usage: km and engine hours a week of a truck, and the age of its injectors. */
@NullMarked
package dev.injectorplanner.core.usage;

import org.jspecify.annotations.NullMarked;
