package dev.injectorplanner.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import dev.injectorplanner.app.planted.AppWithFramework;
import dev.injectorplanner.app.planted.AppWithQuartz;
import dev.injectorplanner.app.planted.RoomWithCommand;
import dev.injectorplanner.app.planted.back.CycleBack;
import dev.injectorplanner.app.planted.there.CycleThere;
import dev.injectorplanner.app.web.planted.PageWithCommand;
import dev.injectorplanner.core.planted.CoreWithClock;
import dev.injectorplanner.core.planted.CoreWithFile;
import dev.injectorplanner.core.planted.CoreWithLibrary;
import dev.injectorplanner.core.planted.CoreWithLuck;
import dev.injectorplanner.core.planted.CoreWithSetting;
import dev.injectorplanner.imports.planted.ImportsWithDatabase;
import dev.injectorplanner.reports.planted.ReportsWithImports;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Who may know whom. Each rule is shown to bite by a planted violation. */
class ArchitectureTest {
    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.injectorplanner");

    private static final String CORE = "dev.injectorplanner.core..";
    private static final String IMPORTS = "dev.injectorplanner.imports..";
    private static final String REPORTS = "dev.injectorplanner.reports..";

    private static final String APP_ROOT = "dev.injectorplanner.app";
    private static final String ASSEMBLY = "dev.injectorplanner.app.assembly..";
    private static final String COMMANDS = "dev.injectorplanner.app.command..";
    private static final String WEB = "dev.injectorplanner.app.web..";
    private static final String SECURITY = "dev.injectorplanner.app.security..";
    private static final String WIRING = "dev.injectorplanner.app.wiring..";

    private static final Set<String> CLOCKS =
            Set.of("now", "systemUTC", "systemDefaultZone", "currentTimeMillis", "nanoTime");

    private static final Set<String> SETTINGS = Set.of(
            "System.getProperty",
            "System.getenv",
            "System.getProperties",
            "Integer.getInteger",
            "Long.getLong",
            "Boolean.getBoolean");

    private static final ArchRule CORE_KNOWS_NO_FRAMEWORK = classes()
            .that()
            .resideInAPackage(CORE)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    CORE,
                    "java..",
                    "org.jspecify..",
                    "org.hipparchus..",
                    "com.google.ortools..",
                    "com.google.re2j..",
                    "io.soabase.recordbuilder.core..") // marks generated code; nothing of it runs
            .because("the engine is records in, records out");

    private static final ArchRule CORE_READS_AND_WRITES_NOTHING = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.sql..", "java.util.logging..")
            .because("files and databases are the application's");

    private static final ArchRule CORE_HAS_NO_CLOCK = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .callMethodWhere(call(
                    "reads the clock",
                    call -> CLOCKS.contains(call.getName())
                            && call.getTargetOwner().getPackageName().matches("java\\.(time|lang)(\\..*)?")))
            .because("the planning date is part of the request");

    private static final ArchRule CORE_READS_NO_SETTINGS = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .callMethodWhere(call(
                    "reads a system property or the environment",
                    call -> SETTINGS.contains(call.getTargetOwner().getSimpleName() + "." + call.getName())))
            .because("everything a plan depends on is part of the request");

    private static final ArchRule CORE_HAS_NO_LUCK = noClasses()
            .that()
            .resideInAPackage(CORE)
            .should()
            .callMethodWhere(call(
                    "draws without a seed",
                    call -> call.getName().equals("random")
                            && call.getTargetOwner().getName().equals("java.lang.Math")))
            .orShould()
            .callConstructor(java.util.Random.class)
            .orShould()
            .callConstructor(java.util.SplittableRandom.class)
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
            .because("the same request gives the same plan");

    private static final ArchRule IMPORTS_KNOW_NO_DATABASE = noClasses()
            .that()
            .resideInAPackage(IMPORTS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    REPORTS, "dev.injectorplanner.app..", "java.sql..", "org.hibernate..", "jakarta.persistence..")
            .because("a file becomes rows without a store");

    private static final ArchRule REPORTS_KNOW_THE_ENGINE_ONLY = noClasses()
            .that()
            .resideInAPackage(REPORTS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    IMPORTS, "dev.injectorplanner.app..", "java.sql..", "org.hibernate..", "jakarta.persistence..")
            .because("a plan becomes a sheet without a store");

    private static final ArchRule SPRING_STAYS_OUTSIDE = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "dev.injectorplanner.app.web..",
                    "dev.injectorplanner.app.security..",
                    "dev.injectorplanner.app.jobs..",
                    "dev.injectorplanner.app.wiring..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.springframework..")
            .because("commands answer without a web framework");

    private static final ArchRule QUARTZ_STAYS_IN_ITS_ROOM = noClasses()
            .that()
            .resideOutsideOfPackage("dev.injectorplanner.app.jobs.quartz..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.quartz..")
            .because("the frame of jobs runs without it");

    private static final ArchRule NO_CYCLES = slices().matching("dev.injectorplanner.(**)")
            .should()
            .beFreeOfCycles()
            .because("a package that can be read alone can be changed alone");

    private static final ArchRule ROOMS_DO_NOT_KNOW_WHO_USES_THEM = noClasses()
            .that()
            .resideOutsideOfPackages(
                    APP_ROOT, ASSEMBLY, COMMANDS, "dev.injectorplanner.app.demo..", WEB, SECURITY, WIRING)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(APP_ROOT, ASSEMBLY, COMMANDS, WEB, SECURITY, WIRING)
            .because("store, intake, planning, stock and jobs serve commands and pages alike");

    private static final ArchRule PAGES_KNOW_NO_COMMANDS = noClasses()
            .that()
            .resideInAnyPackage(ASSEMBLY, WEB, SECURITY, WIRING)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(APP_ROOT, COMMANDS)
            .because("the command line starts the pages, not the other way round");

    static Stream<Arguments> rules() {
        return Stream.of(
                Arguments.of(CORE_KNOWS_NO_FRAMEWORK, CoreWithLibrary.class),
                Arguments.of(CORE_READS_AND_WRITES_NOTHING, CoreWithFile.class),
                Arguments.of(CORE_HAS_NO_CLOCK, CoreWithClock.class),
                Arguments.of(CORE_READS_NO_SETTINGS, CoreWithSetting.class),
                Arguments.of(CORE_HAS_NO_LUCK, CoreWithLuck.class),
                Arguments.of(IMPORTS_KNOW_NO_DATABASE, ImportsWithDatabase.class),
                Arguments.of(REPORTS_KNOW_THE_ENGINE_ONLY, ReportsWithImports.class),
                Arguments.of(SPRING_STAYS_OUTSIDE, AppWithFramework.class),
                Arguments.of(QUARTZ_STAYS_IN_ITS_ROOM, AppWithQuartz.class),
                Arguments.of(NO_CYCLES, CycleThere.class),
                Arguments.of(ROOMS_DO_NOT_KNOW_WHO_USES_THEM, RoomWithCommand.class),
                Arguments.of(PAGES_KNOW_NO_COMMANDS, PageWithCommand.class));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void the_code_keeps_the_rule(ArchRule rule) {
        rule.check(MAIN);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void the_rule_bites(ArchRule rule, Class<?> planted) {
        JavaClasses classes = new ClassFileImporter().importClasses(planted, CycleBack.class);
        assertThatThrownBy(() -> rule.check(classes))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(planted.getSimpleName());
    }

    @Test
    void all_modules_are_looked_at() {
        assertThat(MAIN.stream()
                        .map(type -> type.getPackageName().split("\\.")[2])
                        .distinct())
                .contains("core", "imports", "reports", "app");
    }

    private static DescribedPredicate<JavaMethodCall> call(
            String description, java.util.function.Predicate<JavaMethodCall> test) {
        return DescribedPredicate.describe(description, test);
    }
}
