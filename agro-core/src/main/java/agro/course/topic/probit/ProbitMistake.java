package agro.course.topic.probit;

import agro.course.Mistake;

/** Mistakes with probits and lethal doses. */
public enum ProbitMistake implements Mistake {
  /** The deviate was given without the 5 that makes it a probit. */
  FORGOT_FIVE,
  /** The probit of the survivors was taken. */
  PROBIT_OF_SURVIVORS,
  /** The logarithm was given in place of the dose. */
  ANTILOG_FORGOTTEN,
  /** The logarithm to ten was turned back with e. */
  NATURAL_ANTILOG,
  /** Natural logarithms were taken where the line has logarithms to ten. */
  NATURAL_LOG,
  /** The dose itself was put in where the line has its logarithm. */
  DOSE_NOT_LOGGED,
  /** The dose for 10 % in place of that for 90 %. */
  WRONG_TAIL,
  /** The deviate was not divided by the slope. */
  NOT_DIVIDED_BY_SLOPE,
  /** The share that lives was given. */
  SURVIVORS_GIVEN,
  /** Per cent was used where probits belong. */
  PERCENT_FOR_PROBIT,
  /** The slope is upside down. */
  SLOPE_UPSIDE_DOWN,
  /** The ratio is upside down. */
  RATIO_UPSIDE_DOWN,
  /** The difference of two doses was given. */
  DIFFERENCE_FOR_RATIO,
  /** The weighting coefficient was not multiplied by the number of animals. */
  WEIGHT_WITHOUT_NUMBER,
  /** The least working probit was given without its share of the range. */
  LEAST_GIVEN,
  /** The sums were not taken about their means. */
  SUMS_NOT_CENTRED,
  /** The sum was divided by the number of doses in place of the sum of weights. */
  NOT_WEIGHTED,
  /** The mean of the other variable was given. */
  OTHER_VARIABLE,
  /** The dead were weighted in place of the tested. */
  DEAD_FOR_TESTED;

  @Override
  public String bundle() {
    return "probit";
  }
}
