package agro.course;

import java.util.List;
import java.util.Objects;

/**
 * A number without a unit of measurement: a count, a mean per plant, a sum of money, an index.
 *
 * @param number the number, not rounded
 * @param decimals decimals in print
 * @param tolerance in the same terms
 * @param of words that may stand behind the number, the first of them printed; possibly none
 */
public record NumberAnswer(double number, int decimals, AnswerTolerance tolerance, List<String> of)
    implements ExpectedAnswer {

  /** Copies the words. */
  public NumberAnswer {
    Objects.requireNonNull(tolerance, "tolerance");
    of = List.copyOf(of);
  }

  /**
   * A whole number that has to be met exactly, such as a number of plants or of tanks.
   *
   * @param number the number
   * @param of words that may stand behind it
   * @return the answer
   */
  public static NumberAnswer whole(long number, String... of) {
    return new NumberAnswer(number, 0, AnswerTolerance.exact(), List.of(of));
  }

  /**
   * A number to so many decimals.
   *
   * @param number the number, not rounded
   * @param decimals decimals that are asked for
   * @param of words that may stand behind it
   * @return the answer, with one unit of the last decimal as tolerance, since steps are rounded
   */
  public static NumberAnswer rounded(double number, int decimals, String... of) {
    return new NumberAnswer(
        number,
        decimals,
        new AnswerTolerance(
            2 * AnswerTolerance.decimals(decimals).amount(), AnswerTolerance.Reason.DECIMALS),
        List.of(of));
  }

  /**
   * A number that was computed over several steps.
   *
   * @param number the number, not rounded
   * @param decimals decimals that are asked for
   * @param of words that may stand behind it
   * @return the answer, with half a per cent or one unit of the last decimal as tolerance,
   *     whichever is more
   */
  public static NumberAnswer computed(double number, int decimals, String... of) {
    var share = AnswerTolerance.usual(number);
    var last = rounded(number, decimals, of);
    return last.tolerance.amount() >= share.amount()
        ? last
        : new NumberAnswer(number, decimals, share, List.of(of));
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfNumber(number);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfNumber typed && tolerance.accepts(typed.number(), number);
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof NumberAnswer typed
        && tolerance.meets(number, typed.tolerance, typed.number);
  }

  @Override
  public String print(CourseWords words) {
    var printed = words.number(number, decimals);
    return of.isEmpty() ? printed : printed + " " + of.get(0);
  }
}
