package dev.injectorplanner.app.web.frame;

import java.util.List;

/**
 * The frame of a page.
 *
 * @param site the site's name, or empty
 * @param money in which currency amounts are, in words; empty where the site has not said
 * @param who who looks, in words
 * @param entries the pages this person may go to
 */
public record Frame(String site, String money, String who, List<Entry> entries) {
    public Frame {
        entries = List.copyOf(entries);
    }

    /**
     * A page to go to.
     *
     * @param path its address
     * @param name its name
     * @param current whether it is the one shown
     * @param tally how many things wait there; 0 for none
     */
    public record Entry(String path, String name, boolean current, int tally) {}
}
