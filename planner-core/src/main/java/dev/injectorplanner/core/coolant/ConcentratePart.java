package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import java.util.List;
import java.util.Optional;

/** Which part of the fleet is the coolant concentrate that a plan orders. */
public final class ConcentratePart {
    private ConcentratePart() {}

    /** The part that the site names, else the only one of kind coolant, else none. */
    public static Optional<Part> of(FleetIndex index, CoolantRules rules) {
        String named = rules.concentratePart();
        if (named != null) {
            return index.findPart(named);
        }
        List<Part> coolants = index.fleet().parts().stream()
                .filter(part -> part.kind() == PartKind.COOLANT)
                .toList();
        return coolants.size() == 1 ? Optional.of(coolants.get(0)) : Optional.empty();
    }

    /** Where containers of concentrate come from, in words. */
    public static String words(FleetIndex index, CoolantRules rules) {
        Optional<Part> part = of(index, rules);
        if (part.isPresent()) {
            return "ordered as " + part.get().part() + ", one piece a container";
        }
        return rules.concentratePart() != null
                ? "not ordered: the parts table has no " + rules.concentratePart()
                : "not ordered: name its part in the settings, or load one part of kind coolant";
    }
}
