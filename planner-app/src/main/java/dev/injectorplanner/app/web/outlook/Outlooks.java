package dev.injectorplanner.app.web.outlook;

import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.PlanOfDepots;
import dev.injectorplanner.core.replay.outlook.Outlook;
import dev.injectorplanner.core.replay.outlook.OutlookMaker;
import dev.injectorplanner.core.replay.outlook.OutlookRequest;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Outlooks of the plans in force, shared by all pages and workbooks that show one. */
public final class Outlooks implements AutoCloseable {
    /** Months that agreements with suppliers look ahead. */
    public static final int YEAR = 12;

    private static final int KEPT = 12;
    private static final int RUNS = 200;
    private static final long SEED = 1;

    private final Planning planning;
    private final Office office;
    private final BackgroundWork<Question, Outlook> book = new BackgroundWork<>("outlook", KEPT);

    public Outlooks(Planning planning, Office office) {
        this.planning = planning;
        this.office = office;
    }

    /**
     * What an outlook is of. A new plan is another question, so that nothing here grows old.
     *
     * @param depots depots in it
     * @param plans numbers of their plans
     * @param months months ahead
     */
    record Question(List<String> depots, List<Long> plans, int months) {
        Question {
            depots = List.copyOf(depots);
            plans = List.copyOf(plans);
        }

        boolean isOf(List<String> others, int ahead) {
            return depots.equals(others) && months == ahead;
        }
    }

    BackgroundWork.Job<Outlook> ask(ChosenDepots chosen, int months) {
        List<DepotPlan> plans = office.asWritten(chosen.plans());
        String only = chosen.only();
        return book.ask(
                question(chosen, months),
                watch -> OutlookMaker.make(
                        planning.fleet(only),
                        PlanOfDepots.of(plans),
                        new OutlookRequest(months, RUNS, SEED, 1),
                        watch));
    }

    /** The year ahead where somebody has looked at it with the plans in force; it is not worked out for this. */
    public Optional<Outlook> findYear(ChosenDepots chosen) {
        return book.findDone(question(chosen, YEAR));
    }

    /**
     * The newest year of these depots that is known, which may be of an earlier plan: what is expected months ahead changes little
     * from one plan to the next. Where none was ever asked for, one is begun beside the pages.
     */
    public Optional<Outlook> findLatestYear(ChosenDepots chosen) {
        List<String> depots = chosen.plans().stream().map(DepotPlan::depot).toList();
        if (!book.wasAsked(each -> each.isOf(depots, YEAR))) {
            ask(chosen, YEAR);
        }
        return book.listDone(each -> each.isOf(depots, YEAR)).stream().max(Comparator.comparing(Outlook::today));
    }

    static Question question(ChosenDepots chosen, int months) {
        return new Question(
                chosen.plans().stream().map(DepotPlan::depot).toList(),
                chosen.plans().stream().map(plan -> plan.kept().id()).toList(),
                months);
    }

    @Override
    public void close() {
        book.close();
    }
}
