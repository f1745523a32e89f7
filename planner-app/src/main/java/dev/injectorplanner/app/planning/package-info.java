/** Planning: from the store to a plan. */
@NullMarked
package dev.injectorplanner.app.planning;

import org.jspecify.annotations.NullMarked;
