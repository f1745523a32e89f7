package dev.injectorplanner.reports.parts;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import java.util.HashMap;
import java.util.Map;

/** What parts are, by number. */
final class Descriptions {
    private final Map<String, String> byPart = new HashMap<>();

    Descriptions(FleetSnapshot fleet) {
        fleet.parts().forEach(part -> byPart.put(part.part(), part.description()));
    }

    String of(String part) {
        return byPart.getOrDefault(part, "not in the table of parts");
    }
}
