package dev.injectorplanner.app.web.frame;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Which pages there are and who may go to them: the one list, for menus and for the rules of access. */
public final class Navigation {
    /**
     * A page in the menu.
     *
     * @param path its address; what lies below it belongs to it
     * @param name its name
     * @param roles who may go there
     * @param changers who of them may change something there
     */
    public record Place(String path, String name, Set<Role> roles, Set<Role> changers) {
        public Place {
            roles = Set.copyOf(roles);
            changers = Set.copyOf(changers);
        }

        /** A place where all who go there may change what it shows. */
        public Place(String path, String name, Set<Role> roles) {
            this(path, name, roles, roles);
        }
    }

    /**
     * A part of a place that fewer people may go to.
     *
     * @param path its address; what lies below it belongs to it
     * @param roles who may go there
     * @param changers who of them may change something there
     */
    public record Inner(String path, Set<Role> roles, Set<Role> changers) {
        public Inner {
            roles = Set.copyOf(roles);
            changers = Set.copyOf(changers);
        }

        /** A part where all who go there may change what it shows. */
        public Inner(String path, Set<Role> roles) {
            this(path, roles, roles);
        }
    }

    /** What somebody must decide. */
    static final String ALERTS = "/alerts";

    private static final Set<Role> ALL = Set.of(Role.values());
    private static final Set<Role> SHOP = Set.of(Role.MANAGER, Role.BUYER, Role.STOREMAN, Role.ADMINISTRATOR);
    private static final Set<Role> OFFICE = Set.of(Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR);

    private static final Set<Role> KEEPERS = Set.of(Role.MANAGER, Role.ADMINISTRATOR);

    /** In the order of the menu. */
    public static final List<Place> PLACES = List.of(
            new Place("/week", "Week ahead", ALL, Set.of(Role.MANAGER)),
            new Place("/plan", "Plan", OFFICE, Set.of(Role.MANAGER)),
            new Place("/trucks", "Trucks", ALL, Set.of(Role.MANAGER)),
            new Place("/order", "Parts to order", OFFICE, Set.of(Role.MANAGER, Role.BUYER)),
            new Place("/orders", "Orders", SHOP, Set.of(Role.MANAGER, Role.BUYER, Role.STOREMAN)),
            new Place("/stock", "Stock", SHOP, Set.of(Role.MANAGER, Role.BUYER, Role.STOREMAN)),
            new Place("/returns", "Cores and claims", SHOP, Set.of(Role.MANAGER, Role.BUYER, Role.STOREMAN)),
            new Place("/coolant", "Coolant", ALL, Set.of(Role.MANAGER, Role.BUYER)),
            new Place(
                    "/bay",
                    "Bay sheets",
                    Set.of(Role.MANAGER, Role.MECHANIC, Role.ADMINISTRATOR),
                    Set.of(Role.MANAGER, Role.MECHANIC)),
            new Place("/start", "Start a job", Set.of(Role.MANAGER, Role.MECHANIC)),
            new Place(
                    "/store",
                    "Receiving and kits",
                    ALL,
                    Set.of(Role.MANAGER, Role.BUYER, Role.STOREMAN, Role.MECHANIC)),
            new Place(ALERTS, "Alerts", OFFICE, Set.of(Role.MANAGER, Role.BUYER)),
            new Place("/life", "Life curves", OFFICE, Set.of(Role.MANAGER)),
            new Place("/outlook", "Outlook", OFFICE, Set.of(Role.MANAGER, Role.BUYER)),
            new Place("/results", "Results", OFFICE, Set.of(Role.MANAGER)),
            new Place("/imports", "Imports", OFFICE),
            new Place("/jobs", "Jobs", Set.of(Role.MANAGER, Role.ADMINISTRATOR)),
            new Place("/settings", "Settings", Set.of(Role.MANAGER, Role.ADMINISTRATOR)));

    /** Within places, and what pages offer to take away. */
    public static final List<Inner> INNER = List.of(
            new Inner("/sheets", ALL),
            new Inner("/find", ALL),
            new Inner("/replay", KEEPERS, Set.of(Role.MANAGER)),
            new Inner("/trucks/views", ALL),
            new Inner("/safety", ALL, Set.of(Role.MANAGER, Role.MECHANIC)),
            new Inner("/settings/figures", KEEPERS, Set.of(Role.MANAGER)),
            new Inner("/settings/rules", KEEPERS, Set.of(Role.MANAGER)),
            new Inner("/settings/depots", KEEPERS, Set.of(Role.MANAGER)),
            new Inner("/settings/families", KEEPERS),
            new Inner("/settings/access", KEEPERS),
            new Inner("/settings/site", KEEPERS, Set.of(Role.ADMINISTRATOR)),
            new Inner("/settings/people", Set.of(Role.ADMINISTRATOR)),
            new Inner("/settings/tokens", Set.of(Role.ADMINISTRATOR)),
            new Inner("/settings/audit", Set.of(Role.ADMINISTRATOR)),
            new Inner("/settings/audit.csv", Set.of(Role.ADMINISTRATOR)));

    /** What concerns every depot: nothing for who sees one. */
    private static final Set<String> OF_ALL_DEPOTS = Set.of("/imports");

    private Navigation() {}

    /** Whether a person may go to a place. */
    public static boolean mayGo(Viewer viewer, String path) {
        return PLACES.stream().anyMatch(place -> place.path().equals(path) && isFor(place, viewer));
    }

    private static boolean isFor(Place place, Viewer viewer) {
        return place.roles().stream().anyMatch(role -> viewer.is(role))
                && (viewer.depot() == null || !OF_ALL_DEPOTS.contains(place.path()));
    }

    /** Addresses of the places where a person may change something. */
    static Set<String> changes(Viewer viewer) {
        return PLACES.stream()
                .filter(place -> isFor(place, viewer))
                .filter(place -> place.changers().stream().anyMatch(role -> viewer.is(role)))
                .map(Place::path)
                .collect(Collectors.toSet());
    }

    /** The menu of a person on a page. */
    static List<Frame.Entry> entries(Viewer viewer, String path, int openAlerts) {
        return PLACES.stream()
                .filter(place -> isFor(place, viewer))
                .map(place -> new Frame.Entry(
                        place.path(),
                        place.name(),
                        path.equals(place.path()) || path.startsWith(place.path() + "/"),
                        place.path().equals(ALERTS) ? openAlerts : 0))
                .toList();
    }
}
