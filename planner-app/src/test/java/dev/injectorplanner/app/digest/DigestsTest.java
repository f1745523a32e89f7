package dev.injectorplanner.app.digest;

import static dev.injectorplanner.app.testkit.Database.NORTH;
import static dev.injectorplanner.app.testkit.PlanByHand.DAY;
import static dev.injectorplanner.app.testkit.PlanByHand.item;
import static dev.injectorplanner.app.testkit.PlanByHand.visit;
import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.mail.Addressee;
import dev.injectorplanner.app.mail.MailRecipient;
import dev.injectorplanner.app.mail.MailRecipients;
import dev.injectorplanner.app.mail.MailSending;
import dev.injectorplanner.app.mail.MailSettings;
import dev.injectorplanner.app.mail.Outbox;
import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.app.testkit.GivenUp;
import dev.injectorplanner.app.testkit.MovedClock;
import dev.injectorplanner.app.testkit.PlanByHand;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import jakarta.mail.BodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import javax.sql.DataSource;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** From what is known to what arrives in a mailbox. */
class DigestsTest {
    private static final Instant DUE = Instant.parse("2026-03-02T04:00:00Z");
    private static final DueItem OPEN = item("T-1", 1, "4 faults in 30 days", DAY.plusDays(3));
    private static final DueItem ANSWERED = item("T-2", 1, "5 faults in 30 days", DAY.plusDays(9));
    private static final IsoWeek WEEK = new IsoWeek(2026, 10);

    private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
    private DataSource source;
    private Alerts alerts;
    private Digests digests;
    private Outbox outbox;
    private MailRecipients recipients;

    @AfterEach
    void stop() {
        server.stop();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void new_alerts_are_one_mail_and_are_told_once(Database database) throws Exception {
        open(database);
        alerts.update(PlanByHand.of(DAY, List.of(OPEN, ANSWERED), List.of(visit("T-2", WEEK, ANSWERED))), DUE);
        assertThat(digests.daily(NORTH, DUE)).isEqualTo(1);
        assertThat(digests.daily(NORTH, DUE)).as("the same run again").isZero();
        assertThat(digests.daily(NORTH, DUE.plus(Duration.ofDays(1))))
                .as("nothing new")
                .isZero();
        MimeMessage mail = onlyMail();
        assertThat(mail.getSubject()).isEqualTo("North: 1 new alert without a visit, 1 covered by the plan");
        String text =
                (String) ((MimeMultipart) mail.getContent()).getBodyPart(0).getContent();
        assertThat(text)
                .contains("To decide: ", "T-1, cylinder 1, by 5 Mar 2026.")
                .contains("4 faults in 30 days", "3 faults in 30 days (site rule)")
                .contains("Covered by a planned visit", "2026-W10")
                .contains("engine maker's manual");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void an_alert_that_lost_its_visit_is_told_once_more_and_never_again(Database database) {
        open(database);
        Planned answered = PlanByHand.of(DAY, List.of(ANSWERED), List.of(visit("T-2", WEEK, ANSWERED)));
        Planned lost = PlanByHand.of(DAY, List.of(ANSWERED), List.of());
        int told = 0;
        for (int night = 0; night < 6; night++) {
            alerts.update(night % 2 == 0 ? answered : lost, DUE);
            told += digests.daily(NORTH, DUE.plus(Duration.ofDays(night)));
        }
        assertThat(told).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void nothing_to_say_and_nobody_to_tell_are_no_mail(Database database) {
        open(database);
        assertThat(digests.daily(NORTH, DUE)).isZero();
        alerts.update(PlanByHand.of(DAY, List.of(OPEN), List.of()), DUE);
        recipients.remove(new MailRecipient(NORTH, Addressee.MANAGER, "manager@example.org"));
        assertThat(digests.daily(NORTH, DUE)).isZero();
        assertThat(alerts.listUntold(NORTH)).as("kept for the first who is").hasSize(1);
        Planned idle = PlanByHand.of(DAY, List.of(), List.of());
        assertThat(digests.workList(idle, NORTH, WEEK, DUE)).isZero();
        assertThat(digests.deadlines(idle, "South", DUE)).isZero();
        assertThat(digests.orderList(idle, "South", DUE)).isZero();
        assertThat(digests.jobsFailed(DUE)).isZero();
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_mechanic_gets_the_work_list_as_a_workbook_that_opens(Database database) throws Exception {
        open(database);
        Planned planned = PlanByHand.of(DAY, List.of(OPEN), List.of(visit("T-1", WEEK, OPEN)));
        assertThat(digests.workList(planned, NORTH, WEEK, DUE)).isEqualTo(1);
        assertThat(digests.workList(planned, NORTH, WEEK, DUE)).isZero();
        MimeMessage mail = onlyMail();
        assertThat(mail.getSubject()).isEqualTo("Work list, North, week 2026-W10");
        BodyPart file = ((MimeMultipart) mail.getContent()).getBodyPart(1);
        assertThat(file.getFileName()).isEqualTo("work-list-North-2026-W10.xlsx");
        try (var book = WorkbookFactory.create(file.getInputStream())) {
            assertThat(book.getSheetAt(0).getSheetName()).isEqualTo("Work list");
        }
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_buyer_gets_the_order_list_and_the_deadlines(Database database) throws Exception {
        open(database);
        FleetSnapshot fleet = DemoFleet.make().snapshot();
        Planned planned = new Planned(
                fleet,
                new Planner(new ExactScheduler(SearchLimits.USUAL)).plan(fleet, Policy.standard(), DemoFleet.TODAY));
        assertThat(digests.orderList(planned, "Brennick", DUE)).isEqualTo(1);
        MimeMultipart content = (MimeMultipart) onlyMail().getContent();
        String text = (String) ((MimeMultipart) content.getBodyPart(0).getContent())
                .getBodyPart(0)
                .getContent();
        assertThat(text).contains("KV-8140", "Order now", "All arrive in time");
        try (var book = WorkbookFactory.create(content.getBodyPart(1).getInputStream())) {
            assertThat(book.getNumberOfSheets()).isGreaterThan(3);
        }
        assertThat(digests.deadlines(planned, "Aldermoor", DUE)).isEqualTo(1);
        assertThat(outbox.list(1).get(0).subject()).matches("Aldermoor: \\d+ cores? to send back, \\d+ claims? open");
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void the_administrator_hears_of_a_failed_job_once(Database database) throws Exception {
        open(database);
        GivenUp.tell(source, "nightly plan", NORTH, "the disk is full", DUE);
        assertThat(digests.jobsFailed(DUE)).isEqualTo(1);
        GivenUp.tell(source, "nightly plan", NORTH, "the disk is full", DUE);
        assertThat(digests.jobsFailed(DUE.plusSeconds(60))).isZero();
        assertThat(onlyMail().getSubject()).isEqualTo("1 job failed");
        assertThat(onlyMail().getAllRecipients()[0]).hasToString("admin@example.org");
    }

    private void open(Database database) {
        source = database.empty().dataSource();
        alerts = new Alerts(source);
        digests = new Digests(source);
        outbox = new Outbox(source);
        recipients = new MailRecipients(source);
        recipients.add(new MailRecipient(NORTH, Addressee.MANAGER, "manager@example.org"));
        recipients.add(new MailRecipient(NORTH, Addressee.MECHANIC, "mechanic@example.org"));
        recipients.add(new MailRecipient(null, Addressee.BUYER, "buyer@example.org"));
        recipients.add(new MailRecipient(null, Addressee.ADMINISTRATOR, "admin@example.org"));
    }

    private MimeMessage onlyMail() {
        if (!server.isRunning()) {
            server.start();
        }
        MailSettings settings =
                new MailSettings("127.0.0.1", server.getSmtp().getPort(), "planner@example.org", false, null, null);
        new MailSending(outbox, settings, new MovedClock(DUE)).sendDue();
        assertThat(server.getReceivedMessages()).hasSize(1);
        return server.getReceivedMessages()[0];
    }
}
