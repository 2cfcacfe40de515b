package agro.course;

/**
 * An answer that an exercise knows: the right one or a typical wrong one. It says in print what it
 * is, and how near another answer has to come to count as the same.
 */
public sealed interface ExpectedAnswer
    permits MeasuredAnswer,
        ThermalTimeAnswer,
        TemperatureAnswer,
        NumberAnswer,
        PercentAnswer,
        DayAnswer,
        ChoiceAnswer,
        CodesAnswer {

  /**
   * The answer itself, not rounded.
   *
   * @return the value
   */
  AnswerValue value();

  /**
   * Whether a value that has been read counts as this answer.
   *
   * @param other what was answered
   * @return whether it is of the same kind and within the tolerance
   */
  boolean accepts(AnswerValue other);

  /**
   * Whether one typed answer could count as both.
   *
   * @param other another answer of the same part
   * @return whether the two with their tolerances meet
   */
  boolean meets(ExpectedAnswer other);

  /**
   * The answer as a solution sheet prints it.
   *
   * @param words language
   * @return value with its unit
   */
  String print(CourseWords words);
}
