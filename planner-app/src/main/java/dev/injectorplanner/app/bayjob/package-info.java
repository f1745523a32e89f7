/** Jobs begun at the truck: nobody planned them, a mechanic started them. */
@NullMarked
package dev.injectorplanner.app.bayjob;

import org.jspecify.annotations.NullMarked;
