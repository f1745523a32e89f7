/**
 * Hidden defects: an injector begins to fail some time before it does, and meanwhile faults and tests may show it. What the
 * records say of that, how likely an injector has a defect now, and what comes of leaving it.
 */
@NullMarked
package dev.injectorplanner.core.defect;

import org.jspecify.annotations.NullMarked;
