package dev.injectorplanner.core.planted;

import java.util.Random;

/** Breaks a rule on purpose: draws without a seed. */
public final class CoreWithLuck {
    int draw() {
        return new Random().nextInt();
    }
}
