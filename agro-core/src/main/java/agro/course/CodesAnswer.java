package agro.course;

import java.util.Comparator;
import java.util.Set;
import java.util.TreeSet;

/**
 * Several codes, such as the numbers of groups of modes of action, in any order.
 *
 * @param codes the codes, possibly none
 */
public record CodesAnswer(Set<String> codes) implements ExpectedAnswer {

  /** Copies the set. */
  public CodesAnswer {
    codes = Set.copyOf(codes);
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfCodes(codes);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfCodes typed && typed.codes().equals(codes);
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof CodesAnswer typed && typed.codes.equals(codes);
  }

  @Override
  public String print(CourseWords words) {
    if (codes.isEmpty()) {
      return words.say("answer.none");
    }
    // Shorter codes first, so that 5 stands before 11.
    var sorted = new TreeSet<>(Comparator.comparing(String::length).thenComparing(code -> code));
    sorted.addAll(codes);
    return String.join(", ", sorted);
  }
}
