/** What faults and tests say of a fitted injector now, and how much more often such injectors fail. */
@NullMarked
package dev.injectorplanner.core.condition;

import org.jspecify.annotations.NullMarked;
