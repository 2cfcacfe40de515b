package agro.course;

import java.util.List;
import java.util.Objects;

/**
 * One of several statements that the question lists.
 *
 * @param choices all statements in the order in which the question lists them
 * @param code code of the one that this answer is
 */
public record ChoiceAnswer(List<AnswerChoice> choices, String code) implements ExpectedAnswer {

  /**
   * A statement to choose from.
   *
   * @param code short code, the same in every language, for example {@code "treat"}
   * @param text the statement in the language of the exercise
   */
  public record AnswerChoice(String code, String text) {
    /** Refuses what is missing. */
    public AnswerChoice {
      Objects.requireNonNull(code, "code");
      Objects.requireNonNull(text, "text");
    }
  }

  /** Copies the list and refuses a code that no choice has. */
  public ChoiceAnswer {
    choices = List.copyOf(choices);
    if (choices.stream().filter(choice -> choice.code().equals(code)).count() != 1) {
      throw new IllegalArgumentException(code + " is not one of " + choices);
    }
  }

  /**
   * Another of the same statements.
   *
   * @param other its code
   * @return the answer
   */
  public ChoiceAnswer withCode(String other) {
    return new ChoiceAnswer(choices, other);
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfChoice(code);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfChoice typed && typed.code().equals(code);
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof ChoiceAnswer typed && typed.code.equals(code);
  }

  @Override
  public String print(CourseWords words) {
    return choices.stream()
        .filter(choice -> choice.code().equals(code))
        .map(AnswerChoice::text)
        .findFirst()
        .orElseThrow();
  }
}
