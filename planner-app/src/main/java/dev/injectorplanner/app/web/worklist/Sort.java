package dev.injectorplanner.app.web.worklist;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What the worklist can be sorted by, each in the order that people ask for first; what is not known comes last either way. */
enum Sort {
    TRUCK("truck", false, WorkTruck::truck, NaturalOrder.INSTANCE),
    CHANCE(
            "chance of failing",
            true,
            truck -> truck.risk() == null ? null : truck.risk().chance()),
    FAULTS("open faults", true, WorkTruck::faults),
    SINCE("distance since fitting", true, truck -> truck.meters().sinceKm()),
    ODOMETER("odometer", true, truck -> truck.meters().odometerKm()),
    HOURS("engine hours", true, truck -> truck.meters().hours()),
    WEEKLY("distance a week", true, truck -> truck.meters().kmPerWeek()),
    VISIT(
            "next visit",
            false,
            truck -> truck.next() == null ? null : truck.next().first()),
    STATE("state", false, WorkTruck::standing),
    DEPOT("depot", false, WorkTruck::depot, NaturalOrder.INSTANCE),
    FAMILY("engine family", false, WorkTruck::family, NaturalOrder.INSTANCE);

    private static final Comparator<WorkTruck> BY_NAME = Comparator.comparing(WorkTruck::truck, NaturalOrder.INSTANCE);

    private final String words;
    private final boolean downward;
    private final Comparator<WorkTruck> usual;
    private final Comparator<WorkTruck> other;

    <T extends Comparable<? super T>> Sort(String words, boolean downward, Function<WorkTruck, @Nullable T> key) {
        this(words, downward, key, Comparator.naturalOrder());
    }

    <T> Sort(String words, boolean downward, Function<WorkTruck, @Nullable T> key, Comparator<? super T> values) {
        this.words = words;
        this.downward = downward;
        Comparator<WorkTruck> up = Comparator.comparing(key, Comparator.nullsLast(values));
        Comparator<WorkTruck> down = Comparator.comparing(key, Comparator.nullsLast(values.reversed()));
        this.usual = downward ? down : up;
        this.other = downward ? up : down;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    String words() {
        return words;
    }

    /** Whether its usual order begins with the highest. */
    boolean downward() {
        return downward;
    }

    /** @param reversed whether the other way round than usual */
    Comparator<WorkTruck> order(boolean reversed) {
        return (reversed ? other : usual).thenComparing(BY_NAME);
    }
}
