package dev.injectorplanner.app.browser;

import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** One browser, one demo and one empty site for all classes, closed when the last test is done. */
final class BrowserExtension implements ExecutionCondition, ParameterResolver {
    private static final ExtensionContext.Namespace ROOM = ExtensionContext.Namespace.create(BrowserExtension.class);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        Optional<String> lack = Chromium.findLack(Chromium.place());
        if (lack.isEmpty()) {
            return ConditionEvaluationResult.enabled("found " + Chromium.place());
        }
        String why = context.getDisplayName() + ": " + lack.get();
        if ("true".equals(System.getenv("CI"))) {
            throw new IllegalStateException("CI must not skip " + why);
        }
        if (context.getTestMethod().isEmpty()) {
            System.err.println("SKIPPED " + why);
        }
        return ConditionEvaluationResult.disabled(why);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == Site.Demo.class || type == Site.Empty.class || type == Chromium.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        ExtensionContext.Store all = context.getRoot().getStore(ROOM);
        Chromium chromium = all.getOrComputeIfAbsent(Chromium.class, key -> Chromium.start(), Chromium.class);
        if (type == Site.Demo.class) {
            return all.getOrComputeIfAbsent(type, key -> Site.demo(chromium), Site.Demo.class);
        }
        return type == Site.Empty.class
                ? all.getOrComputeIfAbsent(type, key -> Site.empty(chromium), Site.Empty.class)
                : chromium;
    }
}
