package dev.injectorplanner.app.web.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which list of a page was turned, and to which row; the address says it, so that a page can be kept, sent and reached without
 * a script. Every other list of the page starts at its first row.
 *
 * @param address of the page, with everything that it was asked for but this
 * @param list the name of the list that was turned, or empty
 * @param from the row asked for, counted from 0
 */
public record Turned(String address, String list, int from) {
    /** Rows of a list shown at once: a table of them stays below 4,000 px at a desk. */
    public static final int MOST = 25;

    private static final String LIST = "list";
    private static final String FROM = "from";

    /** What belongs to this, or is said once after something was done and not again on the next page. */
    private static final Set<String> LEFT_OUT = Set.of("said", "number", LIST, FROM);

    /**
     * As an address asks for it; a row that is not a number is the first.
     *
     * @param path of the page
     * @param asked what it was asked for
     */
    public static Turned of(String path, Map<String, String[]> asked) {
        List<String> kept = new ArrayList<>();
        asked.forEach((name, values) -> {
            if (!LEFT_OUT.contains(name) && values.length > 0 && !values[0].isEmpty()) {
                kept.add(Address.escaped(name) + "=" + Address.escaped(values[0]));
            }
        });
        String address = path + (kept.isEmpty() ? "" : "?" + String.join("&", kept));
        return new Turned(address, first(asked, LIST), row(first(asked, FROM)));
    }

    private static String first(Map<String, String[]> asked, String name) {
        String[] values = asked.get(name);
        return values == null || values.length == 0 ? "" : values[0];
    }

    private static int row(String text) {
        try {
            return Math.max(0, Integer.parseInt(text.strip()));
        } catch (NumberFormatException e) {
            return 0;
        }
    }

    /**
     * What is shown of a list.
     *
     * @param name of the list in the address
     * @param anchor of its section
     */
    public <R> ListPage<R> page(String name, String anchor, List<R> all) {
        return page(name, anchor, all, MOST);
    }

    /** The same of things that are larger than a row, fewer at once. */
    public <R> ListPage<R> page(String name, String anchor, List<R> all, int most) {
        return from(name, anchor, all, most, list.equals(name) ? from : 0);
    }

    /**
     * The same, with a row that has to be seen unless the reader turned the list.
     *
     * @param seen that row, or below 0
     */
    public <R> ListPage<R> pageWith(String name, String anchor, List<R> all, int seen) {
        return from(name, anchor, all, MOST, list.equals(name) ? from : seen);
    }

    private <R> ListPage<R> from(String name, String anchor, List<R> all, int most, int row) {
        int start = Math.max(0, Math.min(row, all.size() - 1)) / most * most;
        int end = Math.min(all.size(), start + most);
        return new ListPage<>(
                all.subList(start, end),
                start,
                all.size(),
                start == 0 ? "" : at(name, anchor, start - most),
                end == all.size() ? "" : at(name, anchor, end));
    }

    private String at(String name, String anchor, int row) {
        return address + (address.contains("?") ? "&" : "?") + LIST + "=" + Address.escaped(name) + "&" + FROM + "="
                + row + "#" + anchor;
    }

    /**
     * A list in parts, all on the page: for the lines of one form, which are sent together. The first part is open and the
     * others are folded, so they are never turned away from what was ticked.
     */
    public <R> List<ListPage<R>> parts(List<R> all) {
        List<ListPage<R>> parts = new ArrayList<>();
        for (int start = 0; start < all.size(); start += MOST) {
            parts.add(
                    new ListPage<>(all.subList(start, Math.min(all.size(), start + MOST)), start, all.size(), "", ""));
        }
        return parts;
    }
}
