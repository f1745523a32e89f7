package dev.injectorplanner.app.web.guard;

import java.util.HashMap;
import java.util.Map;

/** How many requests may be sending a body at a time, so that some threads are always left for those who only ask. */
final class BodySlots {
    private final int most;
    private final int mostOfAnAddress;
    private final Map<String, Integer> byAddress = new HashMap<>();
    private int taken;

    /**
     * @param most all together, below the number of the server's threads
     * @param mostOfAnAddress of one sender
     */
    BodySlots(int most, int mostOfAnAddress) {
        this.most = most;
        this.mostOfAnAddress = mostOfAnAddress;
    }

    /** Takes a slot; false where there is none for this sender. */
    synchronized boolean take(String address) {
        int own = byAddress.getOrDefault(address, 0);
        if (taken >= most || own >= mostOfAnAddress) {
            return false;
        }
        taken++;
        byAddress.put(address, own + 1);
        return true;
    }

    synchronized void giveBack(String address) {
        taken--;
        byAddress.computeIfPresent(address, (each, own) -> own == 1 ? null : own - 1);
    }
}
