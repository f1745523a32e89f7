package dev.injectorplanner.app.web.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The plan as it is shown.
 *
 * @param span its weeks in words
 * @param visits how many
 * @param booked labour hours booked
 * @param available labour hours available
 * @param overtime labour hours beyond those
 * @param cylinders injectors replaced
 * @param money what it saves or costs against doing nothing in these weeks, in words, or null where that sum holds depots not shown
 * @param quality money, weights and how near to the best possible, a sentence each
 * @param expects whether expected later work is known
 * @param months months above the weeks
 * @param weeks the weeks
 * @param rows a row a depot
 * @param shown the week whose visits are shown
 */
public record PlanView(
        String span,
        int visits,
        String booked,
        String available,
        String overtime,
        int cylinders,
        @Nullable String money,
        List<String> quality,
        boolean expects,
        List<Month> months,
        List<Week> weeks,
        List<Row> rows,
        Shown shown) {
    public record Month(String name, int weeks) {}

    public record Week(String week, String words, boolean chosen, boolean frozen) {}

    public record Row(String depot, String about, String overtime, List<Bar> bars) {}

    /**
     * Hours of a depot and week as a bar in a frame of 30 by 104.
     *
     * @param top upper edge of the hours available
     * @param height height of the hours available
     * @param bookedTop upper edge of the hours booked within those
     * @param bookedHeight their height
     * @param overTop upper edge of the overtime
     * @param overHeight its height, 0 for none
     * @param laterTop upper edge of the hours expected on top of the booked ones
     * @param laterHeight their height, 0 for none
     * @param figure the figure below
     * @param later the expected hours below it, or empty
     * @param words the same for those who hear it
     */
    public record Bar(
            String week,
            double top,
            double height,
            double bookedTop,
            double bookedHeight,
            double overTop,
            double overHeight,
            double laterTop,
            double laterHeight,
            String figure,
            String later,
            String words,
            boolean chosen) {}

    /** The visits of a week. */
    public record Shown(
            String week,
            String days,
            int visits,
            @Nullable String before,
            @Nullable String after,
            List<Depot> depots) {
        /** Its visits one after the other, each with its depot. */
        public List<Line> lines() {
            return depots.stream()
                    .flatMap(depot -> depot.visits().stream()
                            .map(visit -> new Line(
                                    depot, visit, visit == depot.visits().get(0))))
                    .toList();
        }

        /** Where the visit being changed stands among them, or below 0. */
        public int chosenAt() {
            return lines().stream().map(line -> line.visit().chosen()).toList().indexOf(true);
        }
    }

    /**
     * A visit in the list of its week.
     *
     * @param first whether it is its depot's first
     */
    public record Line(Depot depot, Visit visit, boolean first) {}

    public record Depot(String depot, String hours, boolean toAnnounce, List<Visit> visits) {}

    /**
     * A visit.
     *
     * @param waiting what the same visit costs more a week later, or why it cannot be
     */
    public record Visit(
            String truck,
            String work,
            String days,
            String hours,
            String mark,
            String state,
            boolean strong,
            String waiting,
            String why,
            boolean held,
            boolean chosen) {}
}
