package dev.injectorplanner.app.store;

import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.FailureAnswer.Answer;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;

@Entity
@Table(name = "failure_answer")
class FailureAnswerRow implements Row<FailureAnswer> {
    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "failure_answer_seq")
    @SequenceGenerator(name = "failure_answer_seq", sequenceName = "failure_answer_seq", allocationSize = 1000)
    private long id;

    @Column(nullable = false, length = 60)
    private String part;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, length = 20)
    private Answer answer;

    @Column(nullable = false)
    private LocalDate answeredOn;

    @Column(name = "answered_by", nullable = false, length = 60)
    private String by;

    protected FailureAnswerRow() {}

    @Override
    public void take(FailureAnswer row) {
        this.part = row.part();
        this.answer = row.answer();
        this.answeredOn = row.answeredOn();
        this.by = row.by();
    }

    @Override
    public FailureAnswer row() {
        return new FailureAnswer(part, answer, answeredOn, by);
    }
}
