/** Stock is shared: which piece goes to which visit, from where, and what that costs beside the other visits. */
@NullMarked
package dev.injectorplanner.core.allocation;

import org.jspecify.annotations.NullMarked;
