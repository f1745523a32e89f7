package dev.injectorplanner.app.web.chart;

/** How something is drawn, with the sample that a legend shows of it. All colours are the page's own, light, dark and on paper. */
public enum Ink {
    /** Booked, done, happened. */
    BAR("s-bar", 0, "", "M2 13V3H18V13Z"),
    /** Expected, proposed. */
    OUTLINE("l-ink", 1.3, "3 2", "M2 13V3H18V13"),
    /** Measured. */
    LINE("l-ink", 1.6, "", "M0 10H7V5H20"),
    /** As the planner takes it. */
    MODEL("l-accent", 2, "", "M0 4Q12 4 20 12"),
    /** Range of a figure. */
    RANGE("l-accent", 2.2, "", "M10 1V13"),
    /** Something held against a bar. */
    AGAINST("l-accent", 2.5, "", "M1 7H19"),
    /** A band around a line. */
    BAND("s-wash", 0, "", "M0 4L20 2V12L0 9Z"),
    /** A limit. */
    LIMIT("l-ink", 1, "4 3", "M0 7H20"),
    /** A thin line to set things on. */
    RULE("l-rule", 1, "", "M0 7H20"),
    /** A day on which something was done. */
    EVENT("l-edge", 1.2, "", "M10 0V14"),
    /** A value. */
    DOT("s-ink", 0, "", "M6.5 7a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0"),
    /** A fault. */
    FAULT("s-ink", 0, "", "M10 2l5.5 10h-11z"),
    /** An interval around a value. */
    INTERVAL("l-ink", 1.6, "", "M10 1V13"),
    /** Beyond today. */
    AHEAD("l-ink", 1.6, "2 3", "M0 7H20");

    private final String css;
    private final double width;
    private final String dash;
    private final String sample;

    Ink(String css, double width, String dash, String sample) {
        this.css = css;
        this.width = width;
        this.dash = dash;
        this.sample = sample;
    }

    /** Class of the page's styles. */
    public String css() {
        return css;
    }

    /** Width of its line, 0 where it is filled. */
    public double width() {
        return width;
    }

    /** Dashes of its line, empty for none. */
    public String dash() {
        return dash;
    }

    /** Its sample in a box of 20 by 14. */
    public String sample() {
        return sample;
    }
}
