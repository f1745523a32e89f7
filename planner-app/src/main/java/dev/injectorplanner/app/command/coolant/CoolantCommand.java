package dev.injectorplanner.app.command.coolant;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.coolant.CoolantMix;
import dev.injectorplanner.core.coolant.CoolantMixer;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.GlycolWater;
import dev.injectorplanner.core.units.Figures;
import java.io.StringWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** {@code coolant}. Exit codes: 0 mixed, 1 a mix that is refused, 2 wrong use. */
@Command(
        name = "coolant",
        mixinStandardHelpOptions = true,
        description = {
            "What to refill after draining coolant: concentrate and water, allowing for what stays in the block.",
            "Percent is ethylene glycol by volume. A target that topping up cannot reach is refused with the drain that"
                    + " would do it; so is one outside 40 to 60 %%, the range of heavy-duty concentrate.",
            "Glycol is poisonous: collect every litre. The engine maker's coolant and strength take precedence."
        })
public final class CoolantCommand implements Callable<Integer> {
    private static final int REFUSED = 1;

    @Spec
    private CommandSpec spec;

    @Option(names = "--capacity-l", required = true, description = "system capacity, litres")
    private double capacityLitres;

    @Option(names = "--drained-l", required = true, description = "drained, litres")
    private double drainedLitres;

    @Option(names = "--now-percent", required = true, description = "glycol now, percent by volume")
    private double nowPercent;

    @ArgGroup(multiplicity = "1")
    private Target target = new Target();

    static final class Target {
        @Option(names = "--target-percent", description = "glycol wanted, percent by volume")
        private @Nullable Double percent;

        @Option(
                names = "--protect-to-c",
                description = "temperature to protect to, degrees C; never below 40 %% by volume")
        private @Nullable Double protectToC;
    }

    @Option(names = "--reuse", description = "put the drained coolant back as far as the target allows")
    private boolean reuse;

    @Option(names = "--any-strength", description = "allow targets outside 40 to 60 %%, if the engine maker does")
    private boolean anyStrength;

    @Option(names = "--json", description = "print one JSON object and nothing else")
    private boolean json;

    @Override
    public Integer call() {
        try {
            CoolantMix mix = mix();
            spec.commandLine().getOut().println(json ? json(mix) : text(mix));
            return 0;
        } catch (InvalidValueException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return REFUSED;
        }
    }

    private CoolantMix mix() {
        CoolantMixer mixer = new CoolantMixer(capacityLitres, drainedLitres, nowPercent, anyStrength);
        Double percent = target.percent;
        Double protectToC = target.protectToC;
        double wanted =
                percent != null ? percent : mixer.targetToProtect(protectToC == null ? Double.NaN : protectToC, reuse);
        return reuse ? mixer.reuse(wanted, CoolantRules.standard().lostShare()) : mixer.renew(wanted);
    }

    private static String json(CoolantMix mix) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JsonFactory.builder().build().createGenerator(ObjectWriteContext.empty(), text)) {
            out.writeStartObject();
            out.writeNumberProperty("concentrateLitres", mix.concentrateLitres());
            out.writeNumberProperty("waterLitres", mix.waterLitres());
            out.writeNumberProperty("wasteLitres", mix.wasteLitres());
            out.writeNumberProperty("putBackLitres", mix.putBackLitres());
            out.writeNumberProperty("afterPercent", mix.afterPercent());
            Double freezing = mix.freezingPointC();
            if (freezing == null) {
                out.writeNullProperty("freezingPointC");
            } else {
                out.writeNumberProperty("freezingPointC", freezing);
            }
            out.writeEndObject();
        }
        return text.toString();
    }

    private static String text(CoolantMix mix) {
        String back = mix.putBackLitres() > 0 ? " Put back " + two(mix.putBackLitres()) + " l." : "";
        Double freezing = mix.freezingPointC();
        String protects = freezing == null
                ? "outside the range of the published freezing points"
                : "freezes at " + Figures.tenths(freezing) + " C (" + GlycolWater.curveUsed(mix.afterPercent())
                        + ", the warmer of two published curves)";
        return "Pour " + two(mix.concentrateLitres()) + " l of concentrate and " + two(mix.waterLitres())
                + " l of demineralised water." + back + " Collect " + two(mix.wasteLitres()) + " l of old coolant, "
                + Figures.tenths(mix.wasteKg()) + " kg." + System.lineSeparator()
                + "After: " + Figures.tenths(mix.afterPercent()) + " % glycol by volume, " + protects + ".";
    }

    private static String two(double litres) {
        return Require.plain(Math.rint(litres * 100) / 100);
    }
}
