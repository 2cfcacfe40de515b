package agro.course;

/** What a student needs on the table where there is no computer. */
public enum ExamAid {
  /** Sines of 0 to 90 degrees. */
  SINE_TABLE,
  /** Degree-days of a sine day, reduced to one column, so that nobody needs an arcsine. */
  DEGREE_DAY_TABLE,
  /** Probits of per cent. */
  PROBIT_TABLE,
  /** Weighting coefficients and working probits. */
  WORKING_PROBIT_TABLE,
  /** The normal distribution. */
  NORMAL_TABLE,
  /** Student's t. */
  STUDENT_TABLE,
  /** Paper with a logarithmic and a probability axis. */
  LOG_PROBABILITY_PAPER,
  /** Paper for running totals. */
  STOP_LINE_PAPER
}
