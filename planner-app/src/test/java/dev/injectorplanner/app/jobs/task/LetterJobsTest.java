package dev.injectorplanner.app.jobs.task;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.FleetFiles;
import dev.injectorplanner.app.digest.Digests;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.jobs.JobContext;
import dev.injectorplanner.app.jobs.JobKind;
import dev.injectorplanner.app.jobs.JobTask;
import dev.injectorplanner.app.jobs.RunKey;
import dev.injectorplanner.app.mail.Addressee;
import dev.injectorplanner.app.mail.MailRecipient;
import dev.injectorplanner.app.mail.MailRecipients;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.parts.OrderLine;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.visit.Visit;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Letters of a plan that was made for all depots at once: each depot reads of itself alone. */
class LetterJobsTest {
    private static final Instant DUE = DemoFleet.TODAY.atTime(6, 0).toInstant(ZoneOffset.UTC);
    private static final IsoWeek NEXT = IsoWeek.of(DemoFleet.TODAY).plus(1);

    @TempDir
    private Path folder;

    private Application application;
    private LetterJobs letters;
    private String ordering = "";
    private String visited = "";
    private List<String> depots = List.of();

    @BeforeEach
    void planOfAllDepots() throws Exception {
        application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files =
                FleetFiles.write(DemoFleet.make().snapshot(), Files.createDirectories(folder.resolve("files")));
        new Intake(application.store()).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        Plan plan = application
                .planning()
                .planAndKeep("by hand", DUE, DemoFleet.TODAY, Policy.standard(), null)
                .plan();
        depots = application.store().snapshot().depots().stream()
                .map(Depot::depot)
                .toList();
        ordering = plan.parts().orders().stream()
                .filter(OrderLine::now)
                .map(OrderLine::depot)
                .findFirst()
                .orElseThrow();
        visited = plan.visits().stream()
                .filter(visit -> visit.week().equals(NEXT))
                .map(Visit::depot)
                .findFirst()
                .orElseThrow();
        var pool = application.store().dataSource();
        for (Addressee addressee : List.of(Addressee.BUYER, Addressee.MECHANIC)) {
            for (String depot : depots) {
                new MailRecipients(pool).add(new MailRecipient(depot, addressee, "reader@example.org"));
            }
        }
        letters = new LetterJobs(
                new CurrentPlans(application.planning(), application.plans()),
                new Digests(pool),
                application.confirmation());
    }

    @AfterEach
    void close() {
        application.close();
    }

    private String run(JobKind kind, JobTask task, String depot) throws Exception {
        return task.run(new JobContext(new RunKey(kind, depot, DUE), 1, DUE, ZoneOffset.UTC))
                .words();
    }

    @Test
    void theBuyersWorkbookNamesNoOtherDepot() throws Exception {
        assertThat(run(JobKind.ORDER_LIST, letters.orderList(), ordering)).isEqualTo("mails 1");
        String cells = attached().replaceAll("transfer from \\w+", "a transfer"); // who gives may be named
        assertThat(cells).contains(ordering).doesNotContain(othersThan(ordering));
    }

    @Test
    void theWorkListAnnouncesItsDepotsVisitsAlone() throws Exception {
        assertThat(run(JobKind.WORK_LIST, letters.workList(), visited)).startsWith("mails 1, visits confirmed ");
        assertThat(attached()).contains(visited).doesNotContain(othersThan(visited));
        List<String> due = application.plans().listVisits(visited).stream()
                .filter(visit -> visit.week().equals(NEXT))
                .map(visit -> visit.truck())
                .toList();
        assertThat(application.holds().holds(null, NEXT).confirmed()).containsOnlyKeys(due);
    }

    private List<String> othersThan(String depot) {
        return depots.stream().filter(each -> !each.equals(depot)).toList();
    }

    /** Every cell of the one workbook in the outbox, a space between. */
    private String attached() throws Exception {
        List<String> files = new StoreSql(application.store().dataSource())
                .list("select content from mail_attachment", row -> row.getString(1));
        assertThat(files).hasSize(1);
        StringBuilder cells = new StringBuilder();
        DataFormatter words = new DataFormatter();
        try (Workbook book = WorkbookFactory.create(
                new ByteArrayInputStream(Base64.getMimeDecoder().decode(files.get(0))))) {
            book.forEach(sheet -> sheet.forEach(row -> row.forEach(
                    cell -> cells.append(words.formatCellValue(cell)).append(' '))));
        }
        return cells.toString();
    }
}
