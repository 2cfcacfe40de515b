package agro.programme.interval;

import agro.source.Reference;
import agro.working.Caution;
import agro.working.Working;
import java.util.List;

/** Steps of an answer with the sources of the way of counting. */
final class QuestionWorking {

  private QuestionWorking() {}

  static Reference[] sources(LimitRule rule) {
    return switch (rule) {
      case RE_ENTRY ->
          new Reference[] {IntervalSources.CLOCK_FROM_THE_END, IntervalSources.LONGEST_OF_MIXTURE};
      case PRE_HARVEST -> new Reference[] {IntervalSources.DAYS_BEFORE_HARVEST};
      case NUMBER, AMOUNT, INTERVAL -> new Reference[] {IntervalSources.LABEL_REVIEW};
      default -> new Reference[0];
    };
  }

  static Working of(String question, List<RuleFinding> findings, String answer) {
    var working = Working.of(question);
    for (var each : findings) {
      working =
          working.step(
              each.record() + ", " + each.rule().words(),
              each.limit(),
              each.sentence(),
              each.permission().words(),
              sources(each.rule()));
    }
    return working.step("Answer", "", "", answer).withCautions(Caution.all());
  }
}
