package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.KaplanMeier;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.imports.lives.LivesCsv;
import dev.injectorplanner.imports.lives.LivesRefusedException;
import dev.injectorplanner.imports.lives.ReadLives;
import java.nio.file.Path;
import picocli.CommandLine.Command;

/** {@code life curve}. */
@Command(
        name = "curve",
        mixinStandardHelpOptions = true,
        description = {
            "Survival curve: Kaplan-Meier with Greenwood standard errors.",
            "Columns: entry (optional), exit, event (1 failed, 0 still working), count (optional)."
        })
final class CurveCommand extends FileCommand<LifeRecords> {

    @Override
    ReadLives<LifeRecords> read(Path from) throws LivesRefusedException {
        return LivesCsv.lives(from);
    }

    @Override
    String answer(LifeRecords records, boolean asJson) {
        KaplanMeier curve = KaplanMeier.of(records);
        return asJson ? json(curve) : text(curve);
    }

    private static String json(KaplanMeier curve) {
        JsonOut out = new JsonOut();
        out.list(
                "points",
                curve.points(),
                point -> out.number("age", point.age())
                        .number("atRisk", point.atRisk())
                        .number("events", point.events())
                        .number("survival", point.survival())
                        .number("stdErr", point.stdErr()));
        return out.finished();
    }

    private static String text(KaplanMeier curve) {
        StringBuilder text = new StringBuilder(
                String.format("%14s %9s %8s %10s %11s", "age", "at risk", "failed", "survival", "std. error"));
        for (KaplanMeier.Point point : curve.points()) {
            if (point.events() > 0) {
                text.append(String.format(
                        "%n%14s %9d %8d %10s %11s",
                        Require.plain(point.age()),
                        point.atRisk(),
                        point.events(),
                        LifeFigures.five(point.survival()),
                        LifeFigures.five(point.stdErr())));
            }
        }
        return text.toString();
    }
}
