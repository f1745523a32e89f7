package dev.injectorplanner.app.web.frame;

import java.util.List;
import java.util.Set;

/**
 * The frame of a page.
 *
 * @param site the site's name, or empty
 * @param currency sign or code of the site's currency; empty where the site has not said
 * @param who who looks, in words
 * @param entries the pages this person may go to
 * @param changes addresses of those of them where this person may change something
 */
public record Frame(String site, String currency, String who, List<Entry> entries, Set<String> changes) {
    public Frame {
        entries = List.copyOf(entries);
        changes = Set.copyOf(changes);
    }

    /** In which currency amounts are, in words; empty where the site has not said. */
    public String money() {
        return currency.isEmpty() ? "" : "Amounts in " + currency;
    }

    /** The heading of a column of amounts: {@code Value, EUR}. */
    public String amount(String heading) {
        return currency.isEmpty() ? heading : heading + ", " + currency;
    }

    /** Whether this person may go to a place of the menu: a way to any other is not offered. */
    public boolean mayGo(String path) {
        return entries.stream().anyMatch(entry -> entry.path().equals(path));
    }

    /** Whether this person may change something at a place of the menu: a button to it is not offered to others. */
    public boolean mayChange(String path) {
        return changes.contains(path);
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
