/** What a replay plays: site tables, and how trucks, injectors, tests and the shop truly behave, as named scenarios. */
@NullMarked
package dev.injectorplanner.core.replay.scenario;

import org.jspecify.annotations.NullMarked;
