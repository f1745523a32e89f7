package dev.injectorplanner.app.web.worklist;

import java.util.Locale;

/** How a truck stands, the most pressing first: the order of the list where it is sorted by state. */
public enum Standing {
    SAFETY("safety", "decide", "safety: bring in now", true),
    NO_VISIT("due, no visit", "decide", "due, no visit", true),
    WAITS("waits for parts", "wait", "waits for parts", true),
    IN_BAY("in the bay", "bay", "in the bay", false),
    PINNED("pinned", "pin", "pinned", false),
    CONFIRMED("confirmed", "told", "confirmed", false),
    PLANNED("planned", "plan", "planned", false),
    BLOCKED("blocked", "no", "blocked", false),
    DONE("done", "done", "done", false),
    NOTHING("nothing due", "leave", "nothing due", false),
    NOT_PLANNED("no plan", "care", "its depot has no plan", false);

    private final String name;
    private final String mark;
    private final String words;
    private final boolean strong;

    Standing(String name, String mark, String words, boolean strong) {
        this.name = name;
        this.mark = mark;
        this.words = words;
        this.strong = strong;
    }

    /** Its name in the filter. */
    public String label() {
        return name;
    }

    /** The name of its shape. */
    public String mark() {
        return mark;
    }

    public String words() {
        return words;
    }

    /** Whether somebody must act. */
    public boolean strong() {
        return strong;
    }

    /** In an address: {@code no-visit}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
