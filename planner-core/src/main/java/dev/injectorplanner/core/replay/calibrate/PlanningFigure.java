package dev.injectorplanner.core.replay.calibrate;

import dev.injectorplanner.core.plan.PlanningFigures;
import java.util.Optional;

/** A planning figure that is chosen by replay, and the steps by which the search moves it; those that matter most first. */
public enum PlanningFigure {
    RENEWAL_MARGIN("renewal margin", 3) {
        @Override
        public double of(PlanningFigures figures) {
            return figures.renewalMargin();
        }

        @Override
        public PlanningFigures with(PlanningFigures figures, double value) {
            return figures.withRenewalMargin(value);
        }

        @Override
        PlanningFigures moved(PlanningFigures from, boolean up) {
            double by = up ? RATIO : 1 / RATIO;
            return from.withRenewalMargin(bounded(from.renewalMargin() * by, 0.1, 10));
        }

        @Override
        Optional<PlanningFigures> leap(PlanningFigures from, Direction way) {
            double by = way == Direction.UP ? LEAP : 1 / LEAP;
            PlanningFigures next = from.withRenewalMargin(bounded(from.renewalMargin() * by, 0.1, 10));
            return next.equals(from) ? Optional.empty() : Optional.of(next);
        }
    },
    SIGN_WEIGHT("sign weight", 2) {
        @Override
        public double of(PlanningFigures figures) {
            return figures.signWeight();
        }

        @Override
        public PlanningFigures with(PlanningFigures figures, double value) {
            return figures.withSignWeight(value);
        }

        @Override
        PlanningFigures moved(PlanningFigures from, boolean up) {
            return from.withSignWeight(bounded(from.signWeight() + (up ? SIGNS : -SIGNS), 0, 2));
        }
    },
    ACCESS_SHARE("access share", 2) {
        @Override
        public double of(PlanningFigures figures) {
            return figures.accessShare();
        }

        @Override
        public PlanningFigures with(PlanningFigures figures, double value) {
            return figures.withAccessShare(value);
        }

        @Override
        PlanningFigures moved(PlanningFigures from, boolean up) {
            return from.withAccessShare(bounded(from.accessShare() + (up ? SHARE : -SHARE), 0, 1));
        }
    },
    TEST_WORTH("test worth", 1) {
        @Override
        public double of(PlanningFigures figures) {
            return figures.testWorth();
        }

        @Override
        public PlanningFigures with(PlanningFigures figures, double value) {
            return figures.withTestWorth(value);
        }

        @Override
        PlanningFigures moved(PlanningFigures from, boolean up) {
            return from.withTestWorth(up ? bounded(Math.max(1, 2 * from.testWorth()), 0, 5) : 0);
        }
    };

    /** Which way a figure is moved. */
    enum Direction {
        UP,
        DOWN
    }

    private static final double RATIO = 1.4;
    private static final double LEAP = 4;
    private static final double SIGNS = 0.35;
    private static final double SHARE = 0.25;
    private static final double HUNDREDTHS = 100;

    private final String words;
    private final int most;

    PlanningFigure(String words, int most) {
        this.words = words;
        this.most = most;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    /** The name of its setting, such as {@code renewal-margin}. */
    public String setting() {
        return words.replace(' ', '-');
    }

    /** Its value, 1 for 100 %. */
    public abstract double of(PlanningFigures figures);

    /** Figures with another value of it. */
    public abstract PlanningFigures with(PlanningFigures figures, double value);

    /** The most steps in one direction. */
    int most() {
        return most;
    }

    abstract PlanningFigures moved(PlanningFigures from, boolean up);

    /** Figures one step on; empty at the figure's end. */
    Optional<PlanningFigures> next(PlanningFigures from, Direction way) {
        PlanningFigures next = moved(from, way == Direction.UP);
        return next.equals(from) ? Optional.empty() : Optional.of(next);
    }

    /** Figures far away, for where a step changes next to nothing; empty where its steps reach from end to end. */
    Optional<PlanningFigures> leap(PlanningFigures from, Direction way) {
        return Optional.empty();
    }

    private static double bounded(double value, double least, double most) {
        return Math.rint(HUNDREDTHS * Math.min(most, Math.max(least, value))) / HUNDREDTHS;
    }
}
