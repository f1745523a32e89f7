package dev.injectorplanner.app.command;

/** Who types: the name this person has on this computer. */
final class Person {
    private static final int LONGEST = 60;

    private Person() {}

    static String here() {
        String name = System.getProperty("user.name", "").strip();
        return name.isEmpty() ? "command line" : name.substring(0, Math.min(LONGEST, name.length()));
    }
}
