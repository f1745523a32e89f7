/** Life curves of the fleet's injectors. */
@NullMarked
package dev.injectorplanner.app.web.life;

import org.jspecify.annotations.NullMarked;
