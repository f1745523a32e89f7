/** What a fleet's own records tell of the lives of its injectors, and the life models learned from them. */
@NullMarked
package dev.injectorplanner.core.history;

import org.jspecify.annotations.NullMarked;
