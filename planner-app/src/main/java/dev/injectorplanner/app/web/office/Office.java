package dev.injectorplanner.app.web.office;

import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The depots a person sees, with their plans in force. */
public final class Office {
    private final Store store;
    private final PlansInForce plans;
    private final Fleets fleets;
    private final SiteSettings settings;
    private final CloseOuts closeOuts;
    private final PageAnswers<String, List<String>> depots;
    private final PageAnswers<Kept, Map<String, LocalDate>> done;

    private record Kept(String depot, Instant at) {}

    public Office(Store store, PlansInForce plans, Fleets fleets) {
        this.store = store;
        this.plans = plans;
        this.fleets = fleets;
        this.settings = new SiteSettings(store.dataSource());
        this.closeOuts = new CloseOuts(store);
        this.depots = new PageAnswers<>(store.dataSource());
        this.done = new PageAnswers<>(store.dataSource());
    }

    /**
     * The depots of a page.
     *
     * @param asked the depot of the page's address, or empty for all that the person sees
     * @throws InvalidValueException where there is no such depot, or the person does not see it
     */
    public ChosenDepots choose(Viewer viewer, String asked) {
        List<String> seen = depots(viewer.depot());
        String depot = asked.isEmpty() ? null : asked;
        if (depot != null && !seen.contains(depot)) {
            throw new InvalidValueException(
                    "depot", asked, "is not a depot you can see", "choose one of " + String.join(", ", seen));
        }
        List<DepotPlan> found = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (String each : depot == null ? seen : List.of(depot)) {
            find(each).ifPresentOrElse(found::add, () -> without.add(each));
        }
        return new ChosenDepots(seen, viewer.depot(), depot, found, without);
    }

    /** The depot's plan in force with its fleet; empty where none was kept. */
    public Optional<DepotPlan> find(String depot) {
        SiteUnits units = settings.units();
        return plans.find(depot, units)
                .flatMap(kept -> fleets.find(depot)
                        .map(fleet -> new DepotPlan(
                                depot, kept, fleet, units, done.of(new Kept(depot, kept.keptAt()), this::readDone))));
    }

    private Map<String, LocalDate> readDone(Kept kept) {
        Map<String, LocalDate> days = new HashMap<>();
        closeOuts.since(kept.depot(), kept.at()).forEach((truck, closeOut) -> days.put(truck, closeOut.doneOn()));
        return days;
    }

    /** The same plans as the engine wrote them: in km, litres and degrees C. */
    public List<DepotPlan> asWritten(List<DepotPlan> shown) {
        return shown.stream()
                .map(plan -> new DepotPlan(
                        plan.depot(),
                        plans.find(plan.depot()).orElse(plan.kept()),
                        plan.fleet(),
                        SiteUnits.METRIC,
                        plan.done()))
                .toList();
    }

    /** How the site wants its papers. */
    public SiteForm form() {
        return settings.form();
    }

    /** The units in which people of the site read. */
    public SiteUnits units() {
        return settings.units();
    }

    /** The depot of a truck; empty where there is no such truck, or it belongs to a depot that the person does not see. */
    public Optional<String> findDepotOf(Viewer viewer, String truck) {
        return store.inTransaction(session -> session
                        .createSelectionQuery("select t.depot from TruckRow t where t.truck = :truck", String.class)
                        .setParameter("truck", truck)
                        .getResultList()
                        .stream()
                        .findFirst())
                .filter(viewer::sees);
    }

    /** Everything shown is read again. */
    public void changed() {
        fleets.changed();
    }

    /** Every depot of the store. */
    List<String> depots() {
        return depots(null);
    }

    private List<String> depots(@Nullable String only) {
        return depots
                .of(
                        "",
                        key -> store.inTransaction(session -> session.createSelectionQuery(
                                        "select d.depot from DepotRow d order by d.depot", String.class)
                                .getResultList()))
                .stream()
                .filter(depot -> only == null || only.equals(depot))
                .toList();
    }
}
