package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.defect.DefectBook;
import dev.injectorplanner.core.defect.DefectDefaults;
import dev.injectorplanner.core.defect.DefectModel;
import dev.injectorplanner.core.history.Clock;

/**
 * How defects of one injector part behave before they fail.
 *
 * @param part part number
 * @param meanDelayKm mean km from a defect to its failure, above 0
 * @param delaySource {@link #RECORDS}, {@link #SITE} or {@link #DEFAULT}
 * @param sensitivity chance that a test finds a defect that is there, 0..1
 * @param sensitivitySource as above
 * @param silentShare share of failures that no fault of the cylinder announced, 0..1
 * @param silentSource as above
 * @param kmPerHour mean km a engine hour of trucks with this part, above 0
 */
public record DefectEstimate(
        String part,
        double meanDelayKm,
        String delaySource,
        double sensitivity,
        String sensitivitySource,
        double silentShare,
        String silentSource,
        double kmPerHour) {
    /** Source: the fleet's records. */
    public static final String RECORDS = "fitted to the fleet's records";

    /** Source: a figure that holds until the records tell. */
    public static final String DEFAULT = "planner default";

    /** Source: the site's own figure, until the records tell. */
    public static final String SITE = "site";

    /** Failures from which the records are named as the source; before, they are mixed with what is given. */
    public static final int ENOUGH = 10;

    public DefectEstimate {
        Require.positive("mean delay", meanDelayKm);
        Require.within("sensitivity", sensitivity, 0, 1);
        Require.within("silent share", silentShare, 0, 1);
        Require.positive("km a hour", kmPerHour);
    }

    /** As a part's defect model says, against what was given before the records. */
    static DefectEstimate of(String part, DefectBook.Entry entry, DefectDefaults given) {
        DefectModel model = entry.model();
        boolean nothing = model.failures() == 0;
        boolean told = model.failures() >= ENOUGH;
        DefectDefaults usual = DefectDefaults.STANDARD;
        return new DefectEstimate(
                part,
                nothing ? given.meanDelayKm() : entry.meanDelayKm(),
                source(told, given.meanDelayKm() == usual.meanDelayKm()),
                nothing ? given.sensitivity() : model.sensitivity(),
                source(told, given.sensitivity() == usual.sensitivity()),
                nothing ? given.silentShare() : model.silentShare(entry.perWeek()),
                source(told, given.silentShare() == usual.silentShare()),
                entry.kmPerHour());
    }

    private static String source(boolean told, boolean usual) {
        return told ? RECORDS : usual ? DEFAULT : SITE;
    }

    /** Mean delay in the unit of a clock. */
    public double meanDelay(Clock clock) {
        return clock == Clock.DISTANCE ? meanDelayKm : meanDelayKm / kmPerHour;
    }
}
