package agro.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** The four parts of a refusal, each compared word by word. */
final class Refusal {

  private final InputProblem problem;

  private Refusal(InputProblem problem) {
    this.problem = problem;
  }

  static Refusal of(ThrowingCallable reading) {
    var problem = catchThrowableOfType(InputProblem.class, reading);
    assertThat(problem).as("a refusal").isNotNull();
    return new Refusal(problem);
  }

  Refusal at(SourceLocation place) {
    assertThat(problem.location()).isEqualTo(place);
    return this;
  }

  Refusal read(String words) {
    assertThat(problem.read()).isEqualTo(words);
    return this;
  }

  Refusal expected(String words) {
    assertThat(problem.expected()).isEqualTo(words);
    return this;
  }

  Refusal because(String words) {
    assertThat(problem.why()).isEqualTo(words);
    return this;
  }

  void mend(String words) {
    assertThat(problem.cure()).isEqualTo(words);
    assertThat(problem)
        .hasMessageContainingAll(
            problem.location().toString(),
            problem.read(),
            problem.expected(),
            problem.why(),
            words);
  }
}
