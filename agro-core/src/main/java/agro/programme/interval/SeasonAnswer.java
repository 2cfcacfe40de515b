package agro.programme.interval;

import agro.report.InputProblem;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The answer to one question of the season.
 *
 * @param question the question
 * @param reply yes, no, or not recorded
 * @param sentence the answer in one line, after its reply
 * @param moment the moment that was asked for or decides, such as that of entry
 * @param day the day that was asked for or decides, such as the next one allowed
 * @param findings what each rule says
 * @param working the steps with sources and cautions
 */
public record SeasonAnswer(
    String question,
    Reply reply,
    String sentence,
    Optional<ZonedDateTime> moment,
    Optional<LocalDate> day,
    List<RuleFinding> findings,
    Working working)
    implements Presentable {

  /** Copies the findings. */
  public SeasonAnswer {
    Objects.requireNonNull(question, "question");
    Objects.requireNonNull(reply, "reply");
    Objects.requireNonNull(sentence, "sentence");
    Objects.requireNonNull(moment, "moment");
    Objects.requireNonNull(day, "day");
    findings = List.copyOf(findings);
    Objects.requireNonNull(working, "working");
  }

  static SeasonAnswer of(
      String question, Reply reply, String sentence, List<RuleFinding> findings) {
    return new SeasonAnswer(
        question,
        reply,
        sentence,
        Optional.empty(),
        Optional.empty(),
        findings,
        QuestionWorking.of(question, findings, reply.words() + ". " + sentence));
  }

  SeasonAnswer at(ZonedDateTime deciding) {
    return new SeasonAnswer(
        question, reply, sentence, Optional.of(deciding), day, findings, working);
  }

  SeasonAnswer on(LocalDate deciding) {
    return new SeasonAnswer(
        question, reply, sentence, moment, Optional.of(deciding), findings, working);
  }

  /**
   * The answer in one line.
   *
   * @return reply and sentence
   */
  public String line() {
    return reply.words() + ". " + sentence;
  }

  /**
   * Refuses to go on unless the answer is yes.
   *
   * @return this answer
   * @throws InputProblem naming label, rule and dates
   */
  public SeasonAnswer require() {
    if (reply == Reply.YES) {
      return this;
    }
    var worst =
        findings.stream()
            .filter(each -> each.permission() != Permission.ALLOWED)
            .max((a, b) -> a.permission().compareTo(b.permission()));
    throw InputProblem.of(
            question + " " + worst.map(each -> each.record() + ": " + each.limit()).orElse(""))
        .expected(sentence.replaceAll("\\.$", ""))
        .because("a limit of the label is no advice, and one that is not recorded may still exist")
        .mend(
            reply == Reply.NO
                ? "keep to the days and hours that are named"
                : "look at the label and add what it says to the table");
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled(question).paragraph(line());
    if (!findings.isEmpty()) {
      page.table(RuleFinding.table("What the rules say", findings));
    }
    return page.working(working).build();
  }

  @Override
  public String toString() {
    return question + " " + line();
  }
}
