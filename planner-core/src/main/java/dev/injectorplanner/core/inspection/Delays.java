package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.life.WeibullLife;

/** The delays on offer. */
final class Delays {
    private Delays() {}

    record Exponential(double mean) implements Delay {
        @Override
        public double chanceWithin(double distance) {
            return distance <= 0 ? 0 : -Math.expm1(-distance / mean);
        }

        @Override
        public double chanceBetween(double from, double to) {
            return -Math.exp(-from / mean) * Math.expm1(-(to - from) / mean);
        }

        @Override
        public double longest() {
            return 40 * mean;
        }
    }

    record Uniform(double longest) implements Delay {
        @Override
        public double chanceWithin(double distance) {
            return distance <= 0 ? 0 : Math.min(1, distance / longest);
        }

        @Override
        public double chanceBetween(double from, double to) {
            return Math.max(0, Math.min(to, longest) - from) / longest;
        }

        @Override
        public double mean() {
            return 0.5 * longest;
        }
    }

    record Weibull(WeibullLife life) implements Delay {
        @Override
        public double chanceWithin(double distance) {
            return distance <= 0 ? 0 : distance == Double.POSITIVE_INFINITY ? 1 : life.failure(distance);
        }

        @Override
        public double chanceBetween(double from, double to) {
            return to == Double.POSITIVE_INFINITY
                    ? life.survival(from)
                    : life.survival(from) * life.conditionalFailure(from, to - from);
        }

        @Override
        public double mean() {
            return life.meanLife();
        }

        @Override
        public double longest() {
            return life.longestLife();
        }
    }

    record None() implements Delay {
        @Override
        public double chanceWithin(double distance) {
            return distance < 0 ? 0 : 1;
        }

        @Override
        public double chanceBetween(double from, double to) {
            return 0;
        }

        @Override
        public double mean() {
            return 0;
        }

        @Override
        public double longest() {
            return 0;
        }
    }

    record Endless() implements Delay {
        @Override
        public double chanceWithin(double distance) {
            return 0;
        }

        @Override
        public double chanceBetween(double from, double to) {
            return 0;
        }

        @Override
        public double mean() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double longest() {
            return Double.POSITIVE_INFINITY;
        }
    }
}
