/** Life of injectors: curves and fits. */
@NullMarked
package dev.injectorplanner.core.life;

import org.jspecify.annotations.NullMarked;
