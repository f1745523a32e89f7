package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import java.util.List;
import java.util.Set;

/** Which pages there are and who may go to them: the one list, for menus and for the rules of access. */
public final class Navigation {
    /**
     * A page in the menu.
     *
     * @param path its address; what lies below it belongs to it
     * @param name its name
     * @param roles who may go there
     */
    public record Place(String path, String name, Set<Role> roles) {
        public Place {
            roles = Set.copyOf(roles);
        }
    }

    private static final Set<Role> ALL = Set.of(Role.values());
    private static final Set<Role> OFFICE = Set.of(Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR);

    /** In the order of the menu. */
    public static final List<Place> PLACES = List.of(
            new Place("/week", "Week ahead", ALL),
            new Place("/plan", "Plan", OFFICE),
            new Place("/trucks", "Trucks", ALL),
            new Place("/order", "To order", OFFICE),
            new Place("/returns", "Cores and claims", OFFICE),
            new Place("/coolant", "Coolant", ALL),
            new Place("/bay", "Bay sheets", Set.of(Role.MANAGER, Role.MECHANIC, Role.ADMINISTRATOR)),
            new Place("/store", "Goods in and kits", ALL),
            new Place("/alerts", "Alerts", OFFICE),
            new Place("/life", "Life curves", OFFICE),
            new Place("/imports", "Imports", OFFICE),
            new Place("/jobs", "Jobs", Set.of(Role.MANAGER, Role.ADMINISTRATOR)),
            new Place("/settings", "Settings", Set.of(Role.MANAGER, Role.ADMINISTRATOR)));

    private Navigation() {}

    /** The menu of a person on a page. */
    static List<Frame.Entry> entries(Viewer viewer, String path, int openAlerts) {
        return PLACES.stream()
                .filter(place -> place.roles().stream().anyMatch(role -> viewer.is(role)))
                .map(place -> new Frame.Entry(
                        place.path(),
                        place.name(),
                        path.equals(place.path()) || path.startsWith(place.path() + "/"),
                        place.path().equals("/alerts") ? openAlerts : 0))
                .toList();
    }
}
