package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.plan.Plan;

/**
 * What the pages' copies of fleets and plans weigh, and how much they may. The weights follow from the
 * number of rows; the bytes of a row were measured on copies of a depot of 250 trucks and of the plan of 1,000, with their indexes
 * (DEVELOPERS.md, Measured).
 */
final class MemoryShare {
    /** Each of the two kinds of copies may take a fifth of the memory that the process may have. */
    private static final int ONE_OF = 5;

    private static final int READING_BYTES = 80;
    private static final int ROW_BYTES = 230;
    private static final int TEXTS_BYTES = 1_600;

    private MemoryShare() {}

    static long kilobytes() {
        return Math.max(1, Runtime.getRuntime().maxMemory() / ONE_OF >> 10);
    }

    static int kilobytesOf(FleetSnapshot fleet) {
        long bytes = (long) fleet.readings().size() * READING_BYTES
                + (long) (fleet.faults().size()
                                + fleet.cylinderTests().size()
                                + fleet.injectors().size()
                                + fleet.trucks().size())
                        * ROW_BYTES;
        return kilobytes(bytes);
    }

    static int kilobytesOf(Plan plan) {
        long bytes = (long) (plan.visits().size()
                                + plan.dueItems().size()
                                + plan.reasons().size())
                        * TEXTS_BYTES
                + (long) (plan.risks().size() + plan.injectors().size()) * ROW_BYTES;
        return kilobytes(bytes);
    }

    private static int kilobytes(long bytes) {
        return (int) Math.min(Integer.MAX_VALUE, 1 + (bytes >> 10));
    }
}
