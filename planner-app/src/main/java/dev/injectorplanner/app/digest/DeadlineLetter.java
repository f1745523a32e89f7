package dev.injectorplanner.app.digest;

import dev.injectorplanner.app.mail.Letter;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.reports.parts.ClaimColumns;
import dev.injectorplanner.reports.parts.CoreColumns;
import java.util.List;
import java.util.Optional;

/** Deposits that are lost soon and claims that nobody has made. */
final class DeadlineLetter {
    /** Cores with this many days left or fewer are told: planner default. */
    static final int DAYS_AHEAD = 14;

    private DeadlineLetter() {}

    static Optional<Letter> find(Planned planned, String depot, SiteForm form) {
        List<CoreOwed> cores = planned.plan().cores().stream()
                .filter(core -> core.depot().equals(depot) && core.daysLeft() >= 0 && core.daysLeft() <= DAYS_AHEAD)
                .toList();
        List<WarrantyClaim> claims = planned.plan().claims().stream()
                .filter(claim -> claim.depot().equals(depot))
                .toList();
        if (cores.isEmpty() && claims.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Letter(
                        depot + ": " + AlertLetter.count(cores.size(), "core") + " to send back, "
                                + AlertLetter.count(claims.size(), "claim") + " open",
                        form)
                .say(
                        cores.isEmpty()
                                ? "No deposit is lost within " + DAYS_AHEAD + " days."
                                : "The first deposit is lost after "
                                        + cores.get(0).lastDay() + ".")
                .table("Cores to send back", CoreColumns.MAIL, cores)
                .table("Claims to send", ClaimColumns.MAIL, claims));
    }
}
