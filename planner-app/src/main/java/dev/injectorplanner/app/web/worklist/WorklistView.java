package dev.injectorplanner.app.web.worklist;

import java.util.List;

/**
 * The worklist as its page shows it.
 *
 * @param heads its columns
 * @param rows trucks of this page
 * @param views lists that people ask for often, with how many trucks each holds
 * @param saved views that this person keeps
 * @param sorts what it can be sorted by
 * @param pages how many pages there are
 * @param page the one shown, from 1
 * @param from number of the first truck shown
 * @param to number of the last
 * @param found how many trucks the filters leave
 * @param all how many there are
 * @param limit the site's limit for the 12-week chance in words, or empty
 */
public record WorklistView(
        List<Head> heads,
        List<Row> rows,
        List<View> views,
        List<View> saved,
        List<Choice> sorts,
        int pages,
        int page,
        int from,
        int to,
        int found,
        int all,
        String limit,
        Tally tally) {

    /**
     * A column's head.
     *
     * @param sorted "ascending", "descending", or empty where the list is not sorted by it
     */
    public record Head(String name, String link, String sorted, boolean figure) {}

    /** A list to open, current where the page shows it. */
    public record View(String name, String link, int count, boolean current) {}

    /** A choice of a list box. */
    public record Choice(String value, String words, boolean chosen) {}

    /** Figures of the head. */
    public record Tally(int safety, int overLimit, int overdue, int noVisit, int inBay) {}

    /**
     * A truck.
     *
     * @param bar width of its chance on a bar of 64, where 40 % and more fill it
     * @param tick place of the site's limit on the bar, below 0 for none
     */
    public record Row(
            String truck,
            String chance,
            String cylinder,
            double bar,
            double tick,
            long faults,
            String since,
            String odometer,
            String hours,
            String weekly,
            String next,
            String work,
            String mark,
            String state,
            boolean strong,
            String depot,
            String group,
            String family) {}
}
