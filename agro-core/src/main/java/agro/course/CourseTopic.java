package agro.course;

import agro.report.InputProblem;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What an exercise is about. */
public enum CourseTopic {
  /** Converting units of the trade. */
  UNITS,
  /** Product and water for fields, tanks and pumps. */
  DOSE,
  /** Calibration of sprayers. */
  CALIBRATION,
  /** How many plants, stop lines, means and dispersion. */
  SAMPLING,
  /** Economic injury level and threshold. */
  INJURY_LEVEL,
  /** Degree-days of days and seasons. */
  DEGREE_DAYS,
  /** Rates of development, thresholds and stages. */
  DEVELOPMENT,
  /** Efficacy of treatments. */
  EFFICACY,
  /** Dose and response. */
  PROBIT,
  /** Rotation of modes of action and label intervals. */
  ROTATION;

  /**
   * The topic as files write it.
   *
   * @return lower case with hyphens, for example {@code "degree-days"}
   */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The topic with a code.
   *
   * @param code as {@link #code()} gives it; case does not matter
   * @return the topic
   * @throws InputProblem if there is no such topic
   */
  public static CourseTopic of(String code) {
    return Arrays.stream(values())
        .filter(topic -> topic.code().equalsIgnoreCase(code.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the topic \"" + code + "\"")
                    .expected(
                        "one of "
                            + Arrays.stream(values())
                                .map(CourseTopic::code)
                                .collect(Collectors.joining(", ")))
                    .because("exercises are set by topic")
                    .mend("write the name of a topic as it stands in this list"));
  }
}
