package agro.course;

import java.util.Objects;

/**
 * A share in per cent. Negative ones stay negative: a treatment can do harm.
 *
 * @param percent per cent, not rounded
 * @param decimals decimals in print
 * @param tolerance in per cent
 */
public record PercentAnswer(double percent, int decimals, AnswerTolerance tolerance)
    implements ExpectedAnswer {

  /** Refuses what is missing. */
  public PercentAnswer {
    Objects.requireNonNull(tolerance, "tolerance");
  }

  /**
   * Per cent to so many decimals.
   *
   * @param percent per cent, not rounded
   * @param decimals decimals that are asked for
   * @return the answer, with one unit of the last decimal as tolerance, since steps are rounded
   */
  public static PercentAnswer rounded(double percent, int decimals) {
    return new PercentAnswer(
        percent,
        decimals,
        new AnswerTolerance(
            2 * AnswerTolerance.decimals(decimals).amount(), AnswerTolerance.Reason.DECIMALS));
  }

  @Override
  public AnswerValue value() {
    return new AnswerValue.OfNumber(percent);
  }

  @Override
  public boolean accepts(AnswerValue other) {
    return other instanceof AnswerValue.OfNumber typed
        && tolerance.accepts(typed.number(), percent);
  }

  @Override
  public boolean meets(ExpectedAnswer other) {
    return other instanceof PercentAnswer typed
        && tolerance.meets(percent, typed.tolerance, typed.percent);
  }

  @Override
  public String print(CourseWords words) {
    return words.number(percent, decimals) + " %";
  }
}
