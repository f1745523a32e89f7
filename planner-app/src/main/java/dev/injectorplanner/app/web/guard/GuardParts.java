package dev.injectorplanner.app.web.guard;

import dev.injectorplanner.app.store.Store;
import jakarta.servlet.Filter;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.boot.tomcat.ConfigurableTomcatWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;

/** What stands before the pages, as beans, outermost first. */
@Configuration(proxyBeanMethods = false)
public class GuardParts {
    /** Property with the addresses of trusted proxies, separated by commas. */
    public static final String PROXIES = "planner.proxies";

    @Bean
    StoreWatch storeWatch(Store store) {
        return new StoreWatch(store);
    }

    @Bean
    FilterRegistrationBean<TroubleFilter> troubleFilter(StoreWatch watch) {
        return at(0, new TroubleFilter(watch));
    }

    @Bean
    FilterRegistrationBean<HealthForAll> healthForAll() {
        return at(1, new HealthForAll());
    }

    @Bean
    FilterRegistrationBean<ReadersFilter> readersFilter() {
        return at(2, new ReadersFilter());
    }

    /** Before the framework's own, so that the trusted hops are known when it reads the forwarded headers. */
    @Bean
    @Order(Ordered.HIGHEST_PRECEDENCE)
    WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> trustedHops(Environment environment) {
        Set<String> proxies = Arrays.stream(environment.getProperty(PROXIES, "").split(",", -1))
                .map(String::strip)
                .filter(address -> !address.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
        return factory -> factory.addEngineValves(new TrustedHops(proxies));
    }

    /** After it: its limit counts callers, not the proxy. */
    @Bean
    @Order(Ordered.LOWEST_PRECEDENCE)
    WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory> slowSenders() {
        return factory -> factory.addEngineValves(new SlowSenders());
    }

    private static <F extends Filter> FilterRegistrationBean<F> at(int place, F filter) {
        FilterRegistrationBean<F> registered = new FilterRegistrationBean<>(filter);
        registered.setOrder(Ordered.HIGHEST_PRECEDENCE + place);
        return registered;
    }
}
