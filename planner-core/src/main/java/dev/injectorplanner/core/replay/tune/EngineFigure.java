package dev.injectorplanner.core.replay.tune;

import dev.injectorplanner.core.plan.EngineFigures;
import java.util.Optional;

/** A figure of the engine that is chosen by replay, and the steps by which the search moves it; those that matter most first. */
public enum EngineFigure {
    RENEWAL_MARGIN("renewal margin", 3) {
        @Override
        public double of(EngineFigures figures) {
            return figures.renewalMargin();
        }

        @Override
        EngineFigures moved(EngineFigures from, boolean up) {
            double by = up ? RATIO : 1 / RATIO;
            return from.withRenewalMargin(bounded(from.renewalMargin() * by, 0.1, 10));
        }
    },
    SIGN_WEIGHT("sign weight", 2) {
        @Override
        public double of(EngineFigures figures) {
            return figures.signWeight();
        }

        @Override
        EngineFigures moved(EngineFigures from, boolean up) {
            return from.withSignWeight(bounded(from.signWeight() + (up ? SIGNS : -SIGNS), 0, 2));
        }
    },
    ACCESS_SHARE("access share", 2) {
        @Override
        public double of(EngineFigures figures) {
            return figures.accessShare();
        }

        @Override
        EngineFigures moved(EngineFigures from, boolean up) {
            return from.withAccessShare(bounded(from.accessShare() + (up ? SHARE : -SHARE), 0, 1));
        }
    },
    TEST_WORTH("test worth", 1) {
        @Override
        public double of(EngineFigures figures) {
            return figures.testWorth();
        }

        @Override
        EngineFigures moved(EngineFigures from, boolean up) {
            return from.withTestWorth(up ? bounded(Math.max(1, 2 * from.testWorth()), 0, 5) : 0);
        }
    };

    /** Which way a figure is moved. */
    enum Direction {
        UP,
        DOWN
    }

    private static final double RATIO = 1.4;
    private static final double SIGNS = 0.35;
    private static final double SHARE = 0.25;
    private static final double HUNDREDTHS = 100;

    private final String words;
    private final int most;

    EngineFigure(String words, int most) {
        this.words = words;
        this.most = most;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    /** The name of the setting that holds it, such as {@code renewal-margin}. */
    public String setting() {
        return words.replace(' ', '-');
    }

    /** Its value, 1 for 100 %. */
    public abstract double of(EngineFigures figures);

    /** The most steps in one direction. */
    int most() {
        return most;
    }

    abstract EngineFigures moved(EngineFigures from, boolean up);

    /** Figures one step on; empty at the figure's end. */
    Optional<EngineFigures> next(EngineFigures from, Direction way) {
        EngineFigures next = moved(from, way == Direction.UP);
        return next.equals(from) ? Optional.empty() : Optional.of(next);
    }

    private static double bounded(double value, double least, double most) {
        return Math.rint(HUNDREDTHS * Math.min(most, Math.max(least, value))) / HUNDREDTHS;
    }
}
