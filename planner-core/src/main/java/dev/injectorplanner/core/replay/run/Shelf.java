package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.replay.world.World;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Injectors of one part at one depot: what lies there, what is on its way, and the level the shop keeps. */
final class Shelf {
    private static final int LEAD = 1;

    final String depot;
    final Part part;
    private final int place;
    private final int level;
    private int onHand;
    private final List<Coming> coming = new ArrayList<>();
    private int orders;

    private record Coming(String order, int quantity, int dueDay, int comesDay) {}

    /** @param level pieces on the shelf and on their way that the shop orders up to */
    Shelf(String depot, Part part, int place, int level) {
        this.depot = depot;
        this.part = part;
        this.place = place;
        this.level = level;
        this.onHand = level;
    }

    Shelf copy() {
        Shelf copy = new Shelf(depot, part, place, level);
        copy.onHand = onHand;
        copy.coming.addAll(coming);
        copy.orders = orders;
        return copy;
    }

    int onHand() {
        return onHand;
    }

    void arrive(int day) {
        for (Coming line : List.copyOf(coming)) {
            if (line.comesDay <= day) {
                onHand += line.quantity;
                coming.remove(line);
            }
        }
    }

    /** Takes pieces; those that are not there come by express and are not of this shelf. */
    int take(int pieces) {
        int taken = Math.min(pieces, onHand);
        onHand -= taken;
        return pieces - taken;
    }

    /** Orders up to the level, and to what is missing beside it. */
    void restore(World world, int day, int missing) {
        int outstanding = coming.stream().mapToInt(Coming::quantity).sum();
        int lacking = Math.max(level, missing) - onHand - outstanding;
        if (lacking > 0) {
            order(world, day, lacking);
        }
    }

    void order(World world, int day, int pieces) {
        int lead = world.shopDraws(LEAD, day, place).whole(part.leadDays(), part.leadDaysMax());
        String number = "PO-" + place + "-" + day + "-" + orders++;
        coming.add(new Coming(number, pieces, day + part.leadDays(), day + lead));
    }

    /** Open order lines, by order. */
    List<PurchaseLine> lines() {
        return coming.stream()
                .map(line -> new PurchaseLine(
                        line.order, part.part(), depot, line.quantity, LocalDate.ofEpochDay(line.dueDay), null))
                .toList();
    }
}
