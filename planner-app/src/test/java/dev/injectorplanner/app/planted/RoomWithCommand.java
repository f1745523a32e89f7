package dev.injectorplanner.app.planted;

import dev.injectorplanner.app.command.PlannerCommand;

/** Breaks a rule on purpose. */
public final class RoomWithCommand {
    int run() {
        return PlannerCommand.run();
    }
}
