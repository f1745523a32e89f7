package dev.injectorplanner.app.planted.there;

import dev.injectorplanner.app.planted.back.CycleBack;
import org.jspecify.annotations.Nullable;

/** Breaks a rule on purpose: two packages know each other. */
public final class CycleThere {
    @Nullable
    CycleBack back;
}
