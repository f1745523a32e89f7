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
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Policy;
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
    private static final String ORDERS = "Brennick";
    private static final String VISITS = "Norrvik";

    @TempDir
    private Path folder;

    private Application application;
    private LetterJobs letters;

    @BeforeEach
    void planOfAllDepots() throws Exception {
        application = Application.open(StoreSettings.embedded(folder.resolve("data")));
        List<Path> files =
                FleetFiles.write(DemoFleet.make().snapshot(), Files.createDirectories(folder.resolve("files")));
        new Intake(application.store()).load(files, LoadSettings.of(Mode.GOOD_ROWS), LoadListener.SILENT);
        application.planning().planAndKeep("by hand", DUE, DemoFleet.TODAY, Policy.standard(), null);
        var pool = application.store().dataSource();
        for (Addressee addressee : List.of(Addressee.BUYER, Addressee.MECHANIC)) {
            new MailRecipients(pool).add(new MailRecipient(ORDERS, addressee, "reader@example.org"));
            new MailRecipients(pool).add(new MailRecipient(VISITS, addressee, "reader@example.org"));
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
        assertThat(run(JobKind.ORDER_LIST, letters.orderList(), ORDERS)).isEqualTo("mails 1");
        String cells = attached().replace("transfer from Aldermoor", "a transfer"); // who gives may be named
        assertThat(cells).contains(ORDERS).doesNotContain("Aldermoor").doesNotContain(VISITS);
    }

    @Test
    void theWorkListAnnouncesItsDepotsVisitsAlone() throws Exception {
        IsoWeek next = IsoWeek.of(DemoFleet.TODAY).plus(1);
        assertThat(run(JobKind.WORK_LIST, letters.workList(), VISITS)).startsWith("mails 1, visits confirmed ");
        assertThat(attached()).contains(VISITS).doesNotContain("Aldermoor").doesNotContain(ORDERS);
        List<String> due = application.plans().listVisits(VISITS).stream()
                .filter(visit -> visit.week().equals(next))
                .map(visit -> visit.truck())
                .toList();
        assertThat(application.holds().holds(null, next).confirmed()).containsOnlyKeys(due);
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
