package dev.injectorplanner.app.command.life;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.life.WeibullLife;
import dev.injectorplanner.core.replace.AgeReplacement;
import dev.injectorplanner.core.replace.AgeReplacementPolicy;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code life interval}. */
@Command(
        name = "interval",
        mixinStandardHelpOptions = true,
        description = "The cheapest replacement age for a Weibull life and two costs.")
final class IntervalCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--shape", required = true, description = "shape of the life, above 0")
    private double shape;

    @Option(names = "--scale", required = true, description = "scale of the life, above 0, in km or hours")
    private double scale;

    @Option(names = "--planned", required = true, description = "cost of a planned replacement, above 0")
    private double planned;

    @Option(names = "--failure", required = true, description = "cost of a failure in service, above 0")
    private double failure;

    @Option(names = "--json", description = "print one JSON object and nothing else")
    private boolean json;

    @Override
    public Integer call() {
        AgeReplacementPolicy policy;
        try {
            policy = AgeReplacement.best(new WeibullLife(shape, scale), planned, failure);
        } catch (InvalidValueException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        spec.commandLine().getOut().println(json ? json(policy) : text(policy));
        return 0;
    }

    private static String json(AgeReplacementPolicy policy) {
        Double age = policy.age();
        return new JsonOut()
                .number("age", age == null ? Double.NaN : age.doubleValue())
                .number("costRate", policy.costRate())
                .number("costRateRunToFailure", policy.costRateRunToFailure())
                .finished();
    }

    private String text(AgeReplacementPolicy policy) {
        Double age = policy.age();
        String toFailure = LifeFigures.five(policy.costRateRunToFailure());
        if (age != null) {
            return "Replace at age " + LifeFigures.five(age) + " at the latest: it costs "
                    + LifeFigures.five(policy.costRate()) + " per km or hour, running to failure " + toFailure + ".";
        }
        String why = failure <= planned
                ? "a failure costs no more than a planned replacement"
                : shape <= 1
                        ? "with a shape of 1 or less an old unit is not more likely to fail than a new one"
                        : "the costs are so close that waiting is always cheaper";
        return "Never replace on age: " + why + ". Running to failure costs " + toFailure + " per km or hour.";
    }
}
