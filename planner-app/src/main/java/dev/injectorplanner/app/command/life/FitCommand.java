package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.WeibullFit;
import dev.injectorplanner.core.life.WeibullIntervals;
import dev.injectorplanner.imports.lives.LivesCsv;
import dev.injectorplanner.imports.lives.LivesRefusedException;
import dev.injectorplanner.imports.lives.ReadLives;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** {@code life fit}. */
@Command(
        name = "fit",
        mixinStandardHelpOptions = true,
        description = {
            "Fits a Weibull life by maximum likelihood.",
            "Columns: entry (optional, age when first watched), exit (age), event (1 failed, 0 still working), count"
                    + " (optional). Ages in one unit, km or hours.",
            "Fisher intervals are the normal approximation on the logarithm, profile intervals the likelihood ratio."
        })
final class FitCommand extends FileCommand<LifeRecords> {
    private static final int FEW = 5;

    @Option(names = "--level", defaultValue = "0.95", description = "confidence level, between 0 and 1 (default: 0.95)")
    private double level;

    @Override
    void check() {
        if (!(level > 0 && level < 1)) {
            throw new ParameterException(
                    spec().commandLine(), "--level must be between 0 and 1, such as 0.95, not " + level + ".");
        }
    }

    @Override
    ReadLives<LifeRecords> read(Path from) throws LivesRefusedException {
        return LivesCsv.lives(from);
    }

    @Override
    String answer(LifeRecords records, boolean asJson) {
        WeibullFit fit = WeibullFit.of(records);
        WeibullIntervals intervals = fit.intervals(level);
        return asJson ? json(fit, intervals) : text(fit, intervals);
    }

    private static String json(WeibullFit fit, WeibullIntervals intervals) {
        JsonOut out = new JsonOut()
                .number("shape", fit.shape())
                .number("scale", fit.scale())
                .number("shapeStdErr", fit.shapeStdErr())
                .number("scaleStdErr", fit.scaleStdErr())
                .number("logLikelihood", fit.logLikelihood())
                .number("events", fit.events())
                .number("suspensions", fit.suspensions())
                .number("b10", fit.b10())
                .number("meanLife", fit.life().meanLife())
                .open("intervals");
        pair(out, "shape", intervals.shape());
        pair(out, "scale", intervals.scale());
        pair(out, "b10", intervals.b10());
        return out.close().finished();
    }

    private static void pair(JsonOut out, String name, WeibullIntervals.Pair pair) {
        out.open(name)
                .pair("fisher", pair.fisher().low(), pair.fisher().high())
                .pair("profile", pair.profile().low(), pair.profile().high())
                .close();
    }

    private String text(WeibullFit fit, WeibullIntervals intervals) {
        String percent = Require.plain(Math.rint(1e6 * intervals.level()) / 1e4) + " %";
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "Weibull life of %s: %,d units, %,d failed, %,d still working when last seen%n%n",
                fileName(),
                fit.events() + fit.suspensions(),
                fit.events(),
                fit.suspensions()));
        line(text, "", "estimate", "std. error", percent + " Fisher", percent + " profile");
        line(text, "shape", fit.shape(), fit.shapeStdErr(), intervals.shape());
        line(text, "scale", fit.scale(), fit.scaleStdErr(), intervals.scale());
        line(text, "B10", fit.b10(), fit.quantileStdErr(0.1), intervals.b10());
        line(text, "mean life", LifeFigures.five(fit.life().meanLife()), "", "", "");
        text.append(String.format(Locale.ROOT, "%nLog-likelihood %.6f.", fit.logLikelihood()));
        if (fit.events() < FEW) {
            text.append(String.format(
                    Locale.ROOT, "%nOnly %d failed: trust the intervals more than the estimates.", fit.events()));
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String what, double value, double stdErr, WeibullIntervals.Pair pair) {
        line(
                text,
                what,
                LifeFigures.five(value),
                LifeFigures.five(stdErr),
                LifeFigures.range(pair.fisher().low(), pair.fisher().high()),
                LifeFigures.range(pair.profile().low(), pair.profile().high()));
    }

    private static void line(
            StringBuilder text, String what, String value, String stdErr, String fisher, String profile) {
        String line = String.format("%-10s %12s %12s  %-24s %-24s", what, value, stdErr, fisher, profile);
        text.append(line.stripTrailing()).append(System.lineSeparator());
    }
}
