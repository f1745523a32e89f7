package dev.injectorplanner.core.inspection;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import java.util.List;

/**
 * An injector in service as its tests have left it. One fitted after its truck's last test has no tests, and its rate
 * starts where it was fitted: {@link DefectRate#startingAt}.
 *
 * @param defects rate at which defects arise in it, by its age
 * @param testAges its ages at the tests that found nothing, ascending; empty if it has not been tested since it was new
 */
public record TestedInjector(DefectRate defects, List<Double> testAges) {
    public TestedInjector {
        testAges = List.copyOf(testAges);
        double last = 0;
        for (double age : testAges) {
            Require.notNegative("age at test", age);
            if (age < last) {
                throw new InvalidValueException(
                        "age at test", age, "comes after a test at age " + last, "give the tests in ascending order");
            }
            last = age;
        }
    }

    /** Age at the last test; 0 if there was none. */
    public double lastTestAge() {
        return testAges.isEmpty() ? 0 : testAges.get(testAges.size() - 1);
    }
}
