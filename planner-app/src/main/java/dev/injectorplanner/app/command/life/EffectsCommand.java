package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.life.EffectRecords;
import dev.injectorplanner.core.life.EffectsFit;
import dev.injectorplanner.core.life.ProportionalHazards;
import dev.injectorplanner.imports.lives.LivesCsv;
import dev.injectorplanner.imports.lives.LivesRefusedException;
import dev.injectorplanner.imports.lives.ReadLives;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Command;

/** {@code life effects}. */
@Command(
        name = "effects",
        mixinStandardHelpOptions = true,
        description = {
            "How covariates raise or lower the failure rate: proportional hazards, Efron ties.",
            "Columns: start (optional), stop, event (1 failed, 0 not), id (optional), every other column a covariate."
        })
final class EffectsCommand extends FileCommand<EffectRecords> {

    @Override
    ReadLives<EffectRecords> read(Path from) throws LivesRefusedException {
        return LivesCsv.effects(from);
    }

    @Override
    String answer(EffectRecords records, boolean asJson) {
        EffectsFit fit = ProportionalHazards.fit(records);
        return asJson ? json(fit) : text(fit);
    }

    private static String json(EffectsFit fit) {
        JsonOut out = new JsonOut();
        out.list("coefficients", fit.effects(), effect -> {
            out.text("name", effect.name()).number("value", effect.value()).number("stdErr", effect.stdErr());
            Double robust = effect.robustStdErr();
            if (robust != null) {
                out.number("robustStdErr", robust.doubleValue());
            }
        });
        out.number("logLikelihood", fit.logLikelihood())
                .number("logLikelihoodNull", fit.logLikelihoodNull())
                .number("concordance", fit.concordance())
                .list(
                        "baseline",
                        fit.baseline(),
                        point -> out.number("time", point.time()).number("cumulativeHazard", point.cumulativeHazard()));
        return out.finished();
    }

    private static String text(EffectsFit fit) {
        StringBuilder text = new StringBuilder(String.format(
                "%-24s %12s %12s %12s %12s", "covariate", "coefficient", "hazard ratio", "std. error", "robust"));
        for (EffectsFit.Effect effect : fit.effects()) {
            Double robust = effect.robustStdErr();
            text.append(String.format(
                    "%n%-24s %12s %12s %12s %12s",
                    effect.name(),
                    LifeFigures.five(effect.value()),
                    LifeFigures.five(Math.exp(effect.value())),
                    LifeFigures.five(effect.stdErr()),
                    robust == null ? "-" : LifeFigures.five(robust)));
        }
        text.append(String.format(
                Locale.ROOT,
                "%n%nLog-likelihood %.6f, without covariates %.6f. Concordance %s.",
                fit.logLikelihood(),
                fit.logLikelihoodNull(),
                LifeFigures.five(fit.concordance())));
        EffectsFit.BaselinePoint last = fit.baseline().get(fit.baseline().size() - 1);
        text.append(String.format(
                "%nCumulative hazard at covariates 0 up to %s: %s (all steps with --json).",
                Require.plain(last.time()), LifeFigures.five(last.cumulativeHazard())));
        return text.toString();
    }
}
