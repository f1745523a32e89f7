package dev.injectorplanner.app.command.life;

import picocli.CommandLine.Command;

/** {@code life}: what recorded lives say. Needs no store. */
@Command(
        name = "life",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description = "Statistics of recorded lives: fits, curves, effects, and the best replacement age.",
        subcommands = {
            FitCommand.class,
            CurveCommand.class,
            RepeatsCommand.class,
            EffectsCommand.class,
            IntervalCommand.class
        })
public final class LifeCommand {}
