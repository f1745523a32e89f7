/** Where to look for the cause of a leak, a fuel pressure or an injector circuit fault, and in which order. */
@NullMarked
package dev.injectorplanner.core.diagnosis;

import org.jspecify.annotations.NullMarked;
