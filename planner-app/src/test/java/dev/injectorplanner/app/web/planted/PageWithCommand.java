package dev.injectorplanner.app.web.planted;

import dev.injectorplanner.app.command.PlannerCommand;

/** Breaks a rule on purpose. */
public final class PageWithCommand {
    int run() {
        return PlannerCommand.run();
    }
}
