package dev.injectorplanner.app.people;

/** Names of people and programs as rows of the fleet keep them. */
public final class Who {
    private static final int LONGEST = 60;

    private Who() {}

    /** A name of any length, cut with a mark to what a column takes. */
    public static String shortened(String who) {
        return who.length() <= LONGEST ? who : who.substring(0, LONGEST - 1) + "…";
    }
}
