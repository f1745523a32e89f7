package dev.injectorplanner.app.web;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.jobs.quartz.QuartzJobs;
import dev.injectorplanner.app.wiring.JobParts;
import java.net.URI;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.springframework.context.ConfigurableApplicationContext;

/** The pages and jobs while they run. Closing stops the pages, then the jobs, then the store; once. */
public final class RunningApp implements AutoCloseable {
    private final ConfigurableApplicationContext context;
    private final QuartzJobs quartz;
    private final JobParts jobs;
    private final Application application;
    private final AtomicBoolean closing = new AtomicBoolean();
    private final CountDownLatch closed = new CountDownLatch(1);

    RunningApp(ConfigurableApplicationContext context, QuartzJobs quartz, JobParts jobs, Application application) {
        this.context = context;
        this.quartz = quartz;
        this.jobs = jobs;
        this.application = application;
    }

    /** Where the pages are, without a slash at the end. */
    public URI address() {
        String host = context.getEnvironment().getRequiredProperty("server.address");
        return URI.create("http://" + (host.contains(":") ? "[" + host + "]" : host) + ":"
                + context.getEnvironment().getRequiredProperty("local.server.port"));
    }

    public Application application() {
        return application;
    }

    ConfigurableApplicationContext context() {
        return context;
    }

    /** Whether it was told to stop. */
    public boolean isClosing() {
        return closing.get();
    }

    /** Waits until it was closed. */
    public void await() throws InterruptedException {
        closed.await();
    }

    @Override
    public void close() {
        if (closing.compareAndSet(false, true)) {
            context.close();
            quartz.close();
            jobs.close();
            application.close();
            closed.countDown();
        }
    }
}
