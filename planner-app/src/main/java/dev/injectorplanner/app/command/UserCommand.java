package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Account;
import dev.injectorplanner.app.people.NewPerson;
import dev.injectorplanner.app.people.People;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.security.Pbkdf2Hashing;
import dev.injectorplanner.reports.table.TextTable;
import java.io.PrintWriter;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** People who sign in to the pages. A password is typed or piped in, never an argument: arguments are seen by others. */
@Command(
        name = "user",
        mixinStandardHelpOptions = true,
        description = "Users: add, change, list, disable, enable, password. Passwords are prompted for, or read"
                + " from standard input.")
final class UserCommand {
    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions before;

    @Command(name = "add", mixinStandardHelpOptions = true, description = "Adds a user; asks for a first password.")
    int add(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "NAME") String name,
            @Option(
                            names = "--roles",
                            required = true,
                            split = ",",
                            paramLabel = "ROLE",
                            description = "manager, buyer, mechanic, administrator.")
                    List<String> roles,
            @Option(
                            names = "--depot",
                            paramLabel = "D",
                            description = "The one depot the user is limited to (default: all).")
                    @Nullable
                    String depot) {
        NewPerson person = new NewPerson(name, roles(roles), depot);
        String password = PasswordInput.ask(name);
        return with(
                store,
                people -> people.add(person, password, true, Person.here()),
                name + " is added. The password must be changed at the first sign-in.");
    }

    @Command(name = "change", mixinStandardHelpOptions = true, description = "Changes a user's roles and depot.")
    int change(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "NAME") String name,
            @Option(names = "--roles", required = true, split = ",", paramLabel = "ROLE") List<String> roles,
            @Option(
                            names = "--depot",
                            paramLabel = "D",
                            description = "The one depot the user is limited to (default: all).")
                    @Nullable
                    String depot) {
        NewPerson person = new NewPerson(name, roles(roles), depot);
        return with(store, people -> people.change(person, Person.here()), name + " is changed.");
    }

    @Command(name = "password", mixinStandardHelpOptions = true, description = "Sets a new password for a user.")
    int password(@Mixin StoreOptions store, @Parameters(paramLabel = "NAME") String name) {
        String password = PasswordInput.ask(name);
        return with(
                store,
                people -> people.setPassword(name, password, true, Person.here()),
                "The password of " + name + " is set. It must be changed at the next sign-in.");
    }

    @Command(name = "disable", mixinStandardHelpOptions = true, description = "Disables a user.")
    int disable(@Mixin StoreOptions store, @Parameters(paramLabel = "NAME") String name) {
        return with(store, people -> people.setDisabled(name, true, Person.here()), name + " is disabled.");
    }

    @Command(name = "enable", mixinStandardHelpOptions = true, description = "Enables a user again.")
    int enable(@Mixin StoreOptions store, @Parameters(paramLabel = "NAME") String name) {
        return with(store, people -> people.setDisabled(name, false, Person.here()), name + " may sign in again.");
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the users.")
    int list(
            @Mixin StoreOptions store,
            @Option(names = "--json", description = "Prints one JSON object.") boolean json) {
        List<Account> all;
        try (Application application = Application.open(store.settings())) {
            all = people(application).list();
        }
        PrintWriter out = spec.commandLine().getOut();
        TextTable table = new TextTable("Name", "May do", "Depot", "State", "Last sign-in");
        all.forEach(one -> table.row(
                one.name(),
                Role.words(one.roles()),
                one.depot() == null ? "all" : one.depot(),
                state(one),
                one.signedInAt() == null ? "none yet" : one.signedInAt()));
        if (json) {
            Json.print(out, Map.of("people", all.stream().map(UserCommand::json).toList()));
        } else if (table.isEmpty()) {
            out.println("No users yet. The first start of serve creates an administrator.");
        } else {
            table.print(out);
        }
        out.flush();
        return 0;
    }

    private static String state(Account one) {
        return one.disabled() ? "disabled" : one.mustChange() ? "password to be changed" : "may sign in";
    }

    private static Map<String, Object> json(Account one) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", one.name());
        json.put(
                "roles",
                one.roles().stream()
                        .sorted()
                        .map(role -> role.name().toLowerCase(Locale.ROOT))
                        .toList());
        json.put("depot", one.depot());
        json.put("disabled", one.disabled());
        json.put("mustChange", one.mustChange());
        json.put("failedAttempts", one.failedAttempts());
        json.put("signedInAt", one.signedInAt());
        return json;
    }

    private static Set<Role> roles(List<String> names) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        names.forEach(name -> roles.add(Role.of(name)));
        return roles;
    }

    private static People people(Application application) {
        return new People(application.store().dataSource(), new Pbkdf2Hashing());
    }

    private int with(StoreOptions store, Consumer<People> change, String done) {
        try (Application application = Application.open(store.settings())) {
            change.accept(people(application));
        }
        spec.commandLine().getOut().println(done);
        spec.commandLine().getOut().flush();
        return 0;
    }
}
