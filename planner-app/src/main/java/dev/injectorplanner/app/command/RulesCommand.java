package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the site's own rules cost. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description = {
            "Prices the site's own rules: expected money of the plan with each of them and without it.",
            "Safety rules are not priced. Ctrl-C ends it at the next rule and prints what was finished."
        })
final class RulesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PlanOptions options;

    @Mixin
    private StoreOptions store;

    @Option(names = "--json", description = "Prints one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        options.check();
        PrintWriter out = spec.commandLine().getOut();
        try (ReplayProgress progress = new ReplayProgress(json)) {
            List<RulePrice> prices;
            int weeks;
            SiteForm form;
            try (Application application = Application.open(store.settings())) {
                Policy policy = options.policy(application.planning().policy());
                weeks = policy.weeks();
                form = application.settings().form();
                prices = application.planning().priceRules(options.today(), policy, options.depot(), progress);
            }
            progress.finish();
            if (json) {
                Json.print(
                        out,
                        Map.of(
                                "weeks",
                                weeks,
                                "rules",
                                prices.stream().map(RulesCommand::json).toList()));
            } else {
                print(out, prices, weeks, form);
            }
        }
        return 0;
    }

    private static Map<String, Object> json(RulePrice price) {
        Map<String, Object> row = new LinkedHashMap<>();
        Rule rule = price.rule();
        row.put("family", rule.family() == null ? "all" : rule.family());
        row.put("rule", rule.rule().name().toLowerCase(Locale.ROOT));
        row.put("limit", rule.limit());
        row.put("price", price.price());
        row.put("moneyWith", price.moneyWith());
        row.put("moneyWithout", price.moneyWithout());
        row.put("visitsWith", price.visitsWith());
        row.put("visitsWithout", price.visitsWithout());
        row.put("injectorsWith", price.injectorsWith());
        row.put("injectorsWithout", price.injectorsWithout());
        return row;
    }

    private static void print(PrintWriter out, List<RulePrice> prices, int weeks, SiteForm form) {
        if (prices.isEmpty()) {
            out.println(
                    "The site has set no rule of its own that can be priced: the planner weighs age, faults and tests by cost.");
            out.flush();
            return;
        }
        out.printf(
                "What the site's own rules cost in the plan's %d weeks, in expected money; below zero a rule saves%n%n",
                weeks);
        TextTable table = new TextTable(
                "Rule", "Family", ">Limit", form.money(">Costs"), ">Visits", ">without", ">Injectors", ">without");
        for (RulePrice price : prices) {
            Rule rule = price.rule();
            table.row(
                    rule.rule().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    rule.family() == null ? "all" : rule.family(),
                    String.format(Locale.ROOT, "%,.0f", rule.limit()),
                    String.format(Locale.ROOT, "%,d", Math.round(price.price())),
                    price.visitsWith(),
                    price.visitsWithout(),
                    price.injectorsWith(),
                    price.injectorsWithout());
        }
        table.print(out);
        out.flush();
    }
}
