/** Plans that are kept: the one in force, those before it, and their visits. */
@NullMarked
package dev.injectorplanner.app.plans;

import org.jspecify.annotations.NullMarked;
