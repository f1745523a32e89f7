package dev.injectorplanner.app.web.week;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The week ahead as it is shown.
 *
 * @param week the ISO week, {@code 2026-W10}
 * @param days its days in words
 * @param made for which day and when the plan was made
 * @param waiting visits that wait for parts
 * @param visits visits in the week
 * @param cylinders injectors they replace
 * @param booked labour hours booked
 * @param available labour hours available
 * @param overtime labour hours beyond those
 * @param before the week before, or null in the plan's first
 * @param after the week after, or null in its last
 * @param weeks weeks of the plan
 * @param safety trucks with an open safety fault, a sentence each
 * @param boxes the same with their diagnosis visits
 * @param questions what to decide, the costliest first
 * @param folded those beyond the first ones
 * @param done what was decided lately
 * @param columns days of the board
 * @param board a row a depot
 * @param notLaid visits of the week without a day
 * @param parts what visits wait for
 * @param changes what changed since the plan before
 * @param changesSince what that plan is, in words
 */
public record WeekView(
        String week,
        String days,
        String made,
        int waiting,
        int visits,
        int cylinders,
        String booked,
        String available,
        String overtime,
        @Nullable String before,
        @Nullable String after,
        int weeks,
        List<String> safety,
        List<SafetyBoxes.Box> boxes,
        List<DeskQuestion> questions,
        Folded folded,
        List<Done> done,
        List<Column> columns,
        List<Row> board,
        List<NotLaid> notLaid,
        List<Waiting> parts,
        List<Change> changes,
        String changesSince) {
    /**
     * Questions that are folded away.
     *
     * @param count how many
     * @param proposals what their proposals cost together
     * @param leaving what leaving them costs together
     */
    public record Folded(int count, String proposals, String leaving) {}

    /**
     * Something decided that can be undone, or could.
     *
     * @param words what was done
     * @param at when
     * @param stuck why it can be undone no more, or empty
     */
    public record Done(String key, String words, String at, String by, String stuck) {}

    public record Column(String day, boolean today) {}

    /**
     * A depot's week.
     *
     * @param about bays, in words
     * @param booked hours booked
     * @param available hours available
     * @param free what is left, in words
     * @param quarters quarter hours of a day on its lanes
     * @param span the hours of a lane, in words
     */
    public record Row(
            String depot,
            String about,
            double booked,
            double available,
            String hours,
            String free,
            List<Cell> cells,
            List<Lane> lanes,
            int quarters,
            String span) {
        /** A line at each full hour of a lane, for a drawing that is 10 high. */
        public String ticks() {
            StringBuilder ticks = new StringBuilder();
            for (int quarter = 4; quarter < quarters; quarter += 4) {
                ticks.append('M').append(quarter).append(" 0V10");
            }
            return ticks.toString();
        }
    }

    /** A depot's day; {@code open} is false where nobody works. */
    public record Cell(String date, String day, boolean open, double booked, double available, String hours) {}

    /** A bay's week. */
    public record Lane(int bay, List<Place> places) {}

    /** A bay's day: what stands in it, drawn by its hours, and the visits in their order. */
    public record Place(String date, String day, boolean open, List<Bar> bars, List<Stay> visits) {}

    /** A truck in a bay, in quarter hours from the start of the lane. */
    public record Bar(int from, int length) {}

    /** A truck in a bay on a day; {@code movesFrom} is the day it starts, where it may be moved from it. */
    public record Stay(
            String truck, String work, String hours, String mark, String state, boolean strong, String movesFrom) {}

    /** A visit without a day. */
    public record NotLaid(String truck, String depot, String work, String hours, String reason) {}

    /** A part that a visit waits for. */
    public record Waiting(String truck, String depot, String starts, String part, String arrives, String otherwise) {}

    /** A visit that is not as it was. */
    public record Change(String truck, String depot, String mark, String what, String why, String hours) {}
}
