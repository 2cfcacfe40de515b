package agro.course.topic.development;

import agro.course.Mistake;

/** Mistakes with rates of development. */
public enum DevelopmentMistake implements Mistake {
  /** Threshold forgotten. */
  THRESHOLD_FORGOTTEN,
  /** Threshold added. */
  THRESHOLD_ADDED,
  /** Threshold taken off the requirement. */
  THRESHOLD_OFF_REQUIREMENT,
  /** Quotient turned round. */
  QUOTIENT_TURNED,
  /** Rest instead of what is asked. */
  REST_FOR_DONE,
  /** Fraction instead of per cent. */
  FRACTION_FOR_PERCENT,
  /** Sign forgotten. */
  SIGN_FORGOTTEN,
  /** Line turned round. */
  LINE_TURNED,
  /** Slope instead of its reciprocal. */
  SLOPE_FOR_REQUIREMENT,
  /** Intercept instead of slope. */
  INTERCEPT_FOR_SLOPE,
  /** Rate instead of days. */
  RATE_FOR_DAYS,
  /** Days put on a straight line. */
  DAYS_ON_A_LINE,
  /** Sums instead of differences. */
  SUM_FOR_DIFFERENCE,
  /** Days of one temperature with the other. */
  PAIR_MIXED,
  /** Days averaged instead of rates. */
  DAYS_AVERAGED,
  /** Shares averaged instead of added. */
  RATES_AVERAGED,
  /** Share done instead of the rest. */
  DONE_FOR_REST,
  /** Whole duration instead of the rest. */
  WHOLE_FOR_REST,
  /** Part of a day dropped. */
  PART_DAY_DROPPED,
  /** Days before left out. */
  DAYS_BEFORE_LEFT_OUT,
  /** Cold month counted as negative. */
  NEGATIVE_MONTH_COUNTED,
  /** One day for each month. */
  ONE_DAY_A_MONTH,
  /** Warmth before the first flight counted. */
  FIRST_FLIGHT_LEFT_OUT,
  /** Time before egg-laying forgotten. */
  BEFORE_EGGS_FORGOTTEN,
  /** Whole generations kept. */
  WHOLE_KEPT,
  /** Line forced through zero. */
  FORCED_THROUGH_ORIGIN,
  /** Square root forgotten. */
  ROOT_FORGOTTEN,
  /** Error of the slope left out. */
  SLOPE_ERROR_LEFT_OUT,
  /** Coldest temperature left out. */
  SLOWEST_LEFT_OUT,
  /** Fastest temperature left out. */
  FASTEST_LEFT_OUT,
  /** All temperatures fitted. */
  ALL_POINTS_FITTED,
  /** Egg left out. */
  EGG_LEFT_OUT,
  /** Time before egg-laying twice. */
  BEFORE_EGGS_TWICE,
  /** Time before egg-laying subtracted. */
  BEFORE_EGGS_SUBTRACTED,
  /** One day late. */
  ONE_DAY_LATE,
  /** Divided by the other stages. */
  WHOLE_FOR_STAGE,
  /** Equal shares taken. */
  EQUAL_SHARES;

  @Override
  public String bundle() {
    return "development";
  }
}
