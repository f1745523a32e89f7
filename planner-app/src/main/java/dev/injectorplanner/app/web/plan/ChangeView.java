package dev.injectorplanner.app.web.plan;

import java.util.List;

/**
 * A change of one visit, opened below its row.
 *
 * @param truck the truck
 * @param depot its depot
 * @param week the week of its visit, or empty where it has none
 * @param work what the visit does
 * @param act what is chosen: pin, move, refuse or never
 * @param weeks weeks to move to, each with the hours booked there
 * @param to the week chosen
 * @param why the reason given
 * @param held whether the truck is held already
 * @param tried what it would do; empty where nothing has been tried
 * @param day the day asked for, or that of the visit
 */
public record ChangeView(
        String truck,
        String depot,
        String week,
        String work,
        String act,
        List<Choice> weeks,
        String to,
        String why,
        boolean held,
        List<Tried> tried,
        Day day) {
    public record Choice(String week, String words) {}

    /** A day, a bay and a start as a form has them; each may be empty. */
    public record Day(String on, String bay, String start) {}

    /**
     * What a change would do.
     *
     * @param title what was tried
     * @param save the words of the button that does it
     * @param facts figures: what, before, after, difference
     * @param others other visits that change
     * @param broken wishes that could then not be met
     * @param sum the answer in a sentence
     */
    public record Tried(
            String title, String save, List<Fact> facts, List<Other> others, List<String> broken, String sum) {}

    public record Fact(String what, String before, String after, String difference) {}

    public record Other(String truck, String depot, String mark, String what, String hours) {}
}
