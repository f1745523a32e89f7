package dev.injectorplanner.app;

import dev.injectorplanner.app.command.PlannerCommand;

/** The command line: the one way in. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(PlannerCommand.run(args));
    }
}
