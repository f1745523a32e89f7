package dev.injectorplanner.app.testkit;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The real application runs on a free port, with a tiny fleet in a fresh store, while this test class runs. Tests may take
 * a {@code URI} (its address) or a {@code RunningApp}; {@link Visitor} signs in.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(PlannerExtension.class)
public @interface PlannerRuns {
    Database on() default Database.EMBEDDED;

    enum Database {
        EMBEDDED,
        POSTGRES
    }
}
