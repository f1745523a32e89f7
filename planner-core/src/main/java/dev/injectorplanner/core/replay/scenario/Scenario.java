package dev.injectorplanner.core.replay.scenario;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * A truth to play.
 *
 * @param name what it is called by
 * @param words what it is, for people
 * @param trucks trucks of each fleet unless asked otherwise
 * @param site the site's tables
 * @param families how each family wears
 * @param signs what defects show
 * @param shop how the shop and its trucks behave
 */
public record Scenario(
        String name,
        String words,
        int trucks,
        SiteTables site,
        List<FamilyTruth> families,
        SignTruth signs,
        ShopTruth shop) {
    public Scenario {
        name = Require.name("scenario", name);
        words = Require.text("words", words);
        Require.within("trucks", trucks, 1, 100_000);
        families = List.copyOf(families);
        if (families.isEmpty()) {
            throw new InvalidValueException("families", name, "has no family", "name at least one");
        }
        for (FamilyTruth truth : families) {
            if (site.families().stream().noneMatch(each -> each.family().equals(truth.family()))) {
                throw new InvalidValueException(
                        "family", truth.family(), "is not in the site's tables", "add it, or correct the name");
            }
        }
    }

    /** The same with another number of trucks; a depot's hours follow it where the scenario sets them. */
    public Scenario withTrucks(int other) {
        return new Scenario(name, words, other, site, families, signs, shop);
    }

    /** The same with fuller or emptier shelves, see {@link ShopTruth#shelfSets}. */
    public Scenario withShelfSets(double sets) {
        return new Scenario(name, words, trucks, site, families, signs, shop.withShelfSets(sets));
    }
}
