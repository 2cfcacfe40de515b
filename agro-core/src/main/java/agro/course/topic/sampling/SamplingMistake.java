package agro.course.topic.sampling;

import agro.course.Mistake;

/** Mistakes with counts, sample sizes and stop lines. */
public enum SamplingMistake implements Mistake {
  /** Nights out of order counted. */
  FAILED_NIGHTS_COUNTED,
  /** Nights left out. */
  NIGHTS_LEFT_OUT,
  /** Traps left out. */
  TRAPS_LEFT_OUT,
  /** Plants without animals left out. */
  ZEROS_LEFT_OUT,
  /** Mean with n − 1. */
  ONE_LESS_IN_MEAN,
  /** Total for mean. */
  TOTAL_FOR_MEAN,
  /** Variance with n in place of n − 1. */
  ALL_UNITS_IN_VARIANCE,
  /** Standard deviation for variance. */
  ROOT_TAKEN,
  /** Sum of squares not divided. */
  SQUARES_NOT_DIVIDED,
  /** Standard deviation for standard error. */
  DEVIATION_FOR_ERROR,
  /** Root of the standard error forgotten. */
  ERROR_WITHOUT_ROOT,
  /** Divided by n in place of its root. */
  ROOT_OF_UNITS_FORGOTTEN,
  /** 1.96 in place of t. */
  NORMAL_FOR_STUDENT,
  /** N degrees of freedom. */
  UNITS_AS_DEGREES_OF_FREEDOM,
  /** One-sided t. */
  ONE_SIDED_QUANTILE,
  /** Interval not looked at. */
  MEAN_ALONE_JUDGED,
  /** Below and above exchanged. */
  INTERVAL_READ_BACKWARDS,
  /** Columns for plants. */
  CLASSES_FOR_PLANTS,
  /** (Σx)² / n not taken off. */
  MEAN_NOT_TAKEN_OFF,
  /** Mean not taken off the variance. */
  MEAN_LEFT_IN_K,
  /** Mean not squared. */
  MEAN_NOT_SQUARED,
  /** Fraction upside down. */
  UPSIDE_DOWN,
  /** Variance over mean alone. */
  VARIANCE_RATIO_ALONE,
  /** One not taken off. */
  ANIMAL_ITSELF_COUNTED,
  /** Rounded down. */
  ROUNDED_DOWN,
  /** Rounded up. */
  ROUNDED_UP,
  /** D not squared. */
  PRECISION_NOT_SQUARED,
  /** Multiplied by the mean. */
  MEAN_MULTIPLIED,
  /** Clumping ignored. */
  CLUMPING_IGNORED,
  /** K in place of 1/k. */
  EXPONENT_NOT_INVERTED,
  /** Multiplied by b in place of the power. */
  EXPONENT_AS_FACTOR,
  /** Exponent left out. */
  EXPONENT_LEFT_OUT,
  /** Factor raised to the power too. */
  FACTOR_RAISED_TOO,
  /** Factor left out. */
  FACTOR_LEFT_OUT,
  /** Minutes for hours. */
  MINUTES_NOT_CONVERTED,
  /** Hour of 100 minutes. */
  HOUR_OF_HUNDRED_MINUTES,
  /** Logarithms left out. */
  LOGARITHMS_LEFT_OUT,
  /** Standard deviations for variances. */
  DEVIATIONS_FOR_VARIANCES,
  /** Share taken as mean. */
  SHARE_AS_MEAN,
  /** P in place of 1 − P. */
  LOGARITHM_OF_INFESTED_SHARE,
  /** Logarithm to base 10. */
  COMMON_LOGARITHM,
  /** Share without animals. */
  HEALTHY_PLANTS_COUNTED,
  /** Infested over healthy plants. */
  INFESTED_OVER_HEALTHY,
  /** Divided by the mean. */
  DIVIDED_BY_MEAN,
  /** Infested plants for animals. */
  INFESTED_PLANTS_FOR_ANIMALS,
  /** Per plant taken per square. */
  PLANT_AS_SQUARE,
  /** Length factor not squared. */
  LENGTH_FACTOR_NOT_SQUARED,
  /** Spacing in the row left out. */
  ONE_SPACING_ONLY,
  /** Acre for hectare. */
  ACRE_FOR_HECTARE,
  /** Hectare for another unit of land. */
  HECTARE_FOR_LAND_UNIT,
  /** Divided by the size of the field. */
  DIVIDED_BY_FIELD,
  /** Plants for animals. */
  PLANTS_FOR_ANIMALS,
  /** Means averaged without weights. */
  MEANS_AVERAGED,
  /** Counts thrown together. */
  COUNTS_POOLED,
  /** Shares exchanged. */
  WEIGHTS_EXCHANGED,
  /** Intercept left out. */
  INTERCEPT_LEFT_OUT,
  /** Lines exchanged. */
  LINES_EXCHANGED,
  /** Α and β exchanged. */
  CHANCES_EXCHANGED,
  /** Weight d left out. */
  WEIGHT_LEFT_OUT,
  /** Divided by the slope. */
  SLOPE_AS_WEIGHT,
  /** Middle of the means as slope. */
  MIDDLE_OF_MEANS,
  /** Decided between the lines. */
  MIDDLE_DECIDES,
  /** Line not noticed. */
  LINE_NOT_NOTICED;

  @Override
  public String bundle() {
    return "sampling";
  }
}
