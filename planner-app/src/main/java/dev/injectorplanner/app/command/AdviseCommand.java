package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.Advisor.Advice;
import dev.injectorplanner.core.plan.Advisor.Option;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What to do along while a truck is open. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description = "While it's open: that one, the bank, or all? For a truck that is already in the bay.")
final class AdviseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @picocli.CommandLine.Option(names = "--truck", paramLabel = "T", required = true, description = "The truck.")
    private String truck;

    @picocli.CommandLine.Option(names = "--failed", paramLabel = "CYL", split = ",", description = "Failed cylinders.")
    private List<Integer> failed = List.of();

    @picocli.CommandLine.Option(
            names = "--opened",
            paramLabel = "STEP",
            split = ",",
            description = "Access steps already opened by another repair.")
    private List<String> opened = List.of();

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @picocli.CommandLine.Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        if (failed.isEmpty() && opened.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "Neither --failed nor --opened is given. Fix: name the failed cylinders or the opened steps.");
        }
        options.check();
        LocalDate today = options.today();
        Advice advice;
        SiteForm form;
        try (Application application = Application.open(store.settings())) {
            form = application.settings().form().inTerminal();
            advice = Advisor.advise(
                    application.planning().fleet(options.depot()),
                    options.policy(application.planning().policy()),
                    today,
                    truck,
                    failed,
                    opened);
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            Json.print(out, json(today, advice));
        } else {
            print(out, today, advice, form);
        }
        out.flush();
        return 0;
    }

    private static Map<String, Object> json(LocalDate today, Advice advice) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("today", today.toString());
        json.put("truck", advice.truck());
        json.put("options", advice.options());
        json.put("best", advice.best());
        json.put("why", advice.why());
        return json;
    }

    private static void print(PrintWriter out, LocalDate today, Advice advice, SiteForm form) {
        out.println("Truck " + advice.truck() + " on " + form.dates().of(today));
        out.println(form.sentence(advice.why()));
        out.println();
        TextTable table = new TextTable(
                "Set",
                "Cylinders",
                form.money(">Extra cost"),
                form.money(">Opening"),
                form.money(">Standing"),
                form.money(">Saved by doing it now"),
                ">Hours in total",
                ">Coolant " + form.units().volumeUnit(),
                ">Chance one left in fails in 12 weeks");
        for (Option option : advice.options()) {
            table.row(
                    option.name(),
                    option.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                    whole(option.cost()),
                    whole(option.sharedCost()),
                    whole(option.downtime()),
                    whole(option.gains()),
                    String.format(Locale.ROOT, "%.1f", option.hours()),
                    String.format(Locale.ROOT, "%.1f", form.units().ofLitres(option.coolantLitres())),
                    String.format(Locale.ROOT, "%.0f %%", 100 * option.chanceLeft()));
        }
        table.print(out);
    }

    private static String whole(double amount) {
        return String.format(Locale.ROOT, "%,.0f", amount);
    }
}
