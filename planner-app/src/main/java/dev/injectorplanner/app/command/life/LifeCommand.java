package dev.injectorplanner.app.command.life;

import picocli.CommandLine.Command;

/** {@code life}: what recorded lives say. Needs no store. */
@Command(
        name = "life",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND",
        description = "What recorded lives say: fits, curves, effects, and the best age to replace at.",
        subcommands = {
            FitCommand.class,
            CurveCommand.class,
            RepeatsCommand.class,
            EffectsCommand.class,
            IntervalCommand.class
        })
public final class LifeCommand {}
