package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.MeanCumulativeFunction;
import dev.injectorplanner.core.life.RepeatHistory;
import dev.injectorplanner.imports.lives.LivesCsv;
import dev.injectorplanner.imports.lives.LivesRefusedException;
import dev.injectorplanner.imports.lives.ReadLives;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;

/** {@code life repeats}. */
@Command(
        name = "repeats",
        mixinStandardHelpOptions = true,
        description = {
            "Mean number of failures per position up to each age, with robust standard errors.",
            "Columns: unit, age, what (event for a failure, end for when the unit was last seen)."
        })
final class RepeatsCommand extends FileCommand<List<RepeatHistory>> {

    @Override
    ReadLives<List<RepeatHistory>> read(Path from) throws LivesRefusedException {
        return LivesCsv.repeats(from);
    }

    @Override
    String answer(List<RepeatHistory> histories, boolean asJson) {
        MeanCumulativeFunction function = MeanCumulativeFunction.of(histories);
        return asJson ? json(function) : text(function);
    }

    private static String json(MeanCumulativeFunction function) {
        JsonOut out = new JsonOut();
        out.list(
                "points",
                function.points(),
                point -> out.number("age", point.age())
                        .number("atRisk", point.atRisk())
                        .number("events", point.events())
                        .number("mean", point.mean())
                        .number("stdErr", point.stdErr()));
        return out.finished();
    }

    private static String text(MeanCumulativeFunction function) {
        StringBuilder text = new StringBuilder(
                String.format("%14s %9s %8s %10s %11s", "age", "at risk", "failures", "mean", "std. error"));
        for (MeanCumulativeFunction.Point point : function.points()) {
            text.append(String.format(
                    "%n%14s %9d %8d %10s %11s",
                    Require.plain(point.age()),
                    point.atRisk(),
                    point.events(),
                    LifeFigures.five(point.mean()),
                    LifeFigures.five(point.stdErr())));
        }
        return text.toString();
    }
}
