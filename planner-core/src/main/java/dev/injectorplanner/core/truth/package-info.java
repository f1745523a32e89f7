/**
 * What truly happens to made-up trucks, shared by made-up fleets and by the replay: seeded draws, km and hours, meters. No
 * formula of the engine is used here, so that the engine can be judged by it.
 */
@NullMarked
package dev.injectorplanner.core.truth;

import org.jspecify.annotations.NullMarked;
