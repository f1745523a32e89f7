/** What a fleet's own records show of the lives of its injectors, and the life models learned from them. */
@NullMarked
package dev.injectorplanner.core.history;

import org.jspecify.annotations.NullMarked;
