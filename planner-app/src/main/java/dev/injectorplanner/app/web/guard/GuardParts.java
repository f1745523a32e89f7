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
    FilterRegistrationBean<PageTurns> pageTurns() {
        return at(3, new PageTurns());
    }

    @Bean
    FilterRegistrationBean<ReadersFilter> readersFilter() {
        return at(2, new ReadersFilter());
    }

    @Bean
    ServerValves serverValves(Environment environment) {
        return new ServerValves(
                Arrays.stream(environment.getProperty(PROXIES, "").split(",", -1))
                        .map(String::strip)
                        .filter(address -> !address.isEmpty())
                        .collect(Collectors.toUnmodifiableSet()));
    }

    /**
     * Before the framework's own, which reads what the trusted hops left of the forwarded headers. The order is the
     * object's own, since that of a bean's method is not looked at.
     */
    record ServerValves(Set<String> proxies)
            implements WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory>, Ordered {
        @Override
        public void customize(ConfigurableTomcatWebServerFactory factory) {
            factory.addEngineValves(new TrustedHops(proxies));
        }

        @Override
        public int getOrder() {
            return HIGHEST_PRECEDENCE;
        }

        /** After the framework's own: the limit counts callers, not the proxy. */
        record Last() implements WebServerFactoryCustomizer<ConfigurableTomcatWebServerFactory>, Ordered {
            @Override
            public void customize(ConfigurableTomcatWebServerFactory factory) {
                factory.addEngineValves(new SlowSenders());
            }

            @Override
            public int getOrder() {
                return LOWEST_PRECEDENCE;
            }
        }
    }

    @Bean
    ServerValves.Last lastValves() {
        return new ServerValves.Last();
    }

    private static <F extends Filter> FilterRegistrationBean<F> at(int place, F filter) {
        FilterRegistrationBean<F> registered = new FilterRegistrationBean<>(filter);
        registered.setOrder(Ordered.HIGHEST_PRECEDENCE + place);
        return registered;
    }
}
