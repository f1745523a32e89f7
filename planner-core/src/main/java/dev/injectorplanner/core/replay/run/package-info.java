/** One fleet played week by week under one policy: visits, failures, tests, parts, records and what each costs. */
@NullMarked
package dev.injectorplanner.core.replay.run;

import org.jspecify.annotations.NullMarked;
