package dev.injectorplanner.app.planted.back;

import dev.injectorplanner.app.planted.there.CycleThere;
import org.jspecify.annotations.Nullable;

/** Breaks a rule on purpose: two packages know each other. */
public final class CycleBack {
    @Nullable
    CycleThere there;
}
