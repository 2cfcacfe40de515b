package agro.course.topic.degreeday;

import agro.course.Mistake;

/** Mistakes with degree-days. */
public enum DegreeDayMistake implements Mistake {
  /** Threshold forgotten. */
  THRESHOLD_FORGOTTEN,
  /** Maximum instead of mean. */
  MAXIMUM_FOR_MEAN,
  /** Half range instead of mean. */
  HALF_RANGE_FOR_MEAN,
  /** Cold day counted as negative. */
  NEGATIVE_DAY_COUNTED,
  /** Minimum raised to the threshold. */
  MINIMUM_RAISED,
  /** Triangle not halved. */
  TRIANGLE_NOT_HALVED,
  /** One day only. */
  ONE_DAY_ONLY,
  /** Difference turned round. */
  DIFFERENCE_TURNED,
  /** Sign of z turned. */
  SIGN_TURNED,
  /** Range instead of half range. */
  RANGE_FOR_HALF_RANGE,
  /** Mean instead of sine. */
  MEAN_FOR_SINE,
  /** Angle in degrees instead of radians. */
  ARCSINE_IN_DEGREES,
  /** Not multiplied by the half range. */
  HALF_RANGE_FORGOTTEN,
  /** Peak instead of area. */
  PEAK_FOR_AREA,
  /** Upper threshold ignored. */
  CUTOFF_IGNORED,
  /** Area above the upper threshold added. */
  CUTOFF_ADDED,
  /** Another cutoff rule used. */
  CUTOFF_RULE_CONFUSED,
  /** Threshold taken off once only. */
  THRESHOLD_ONCE,
  /** Earlier sum not carried on. */
  SUM_NOT_CARRIED,
  /** New degree-days subtracted. */
  SUM_SUBTRACTED,
  /** Sum added instead of subtracted. */
  SUM_ADDED,
  /** The new week left out. */
  WEEK_LEFT_OUT,
  /** Biofix day counted. */
  BIOFIX_DAY_COUNTED,
  /** Biofix day left out. */
  BIOFIX_DAY_LEFT_OUT,
  /** One day late. */
  ONE_DAY_LATE,
  /** Whole requirement instead of the rest. */
  REQUIREMENT_FOR_REST,
  /** Part of a day dropped. */
  PART_DAY_DROPPED,
  /** Counted from the biofix. */
  COUNTED_FROM_BIOFIX,
  /** 32 in a sum of degree-days. */
  OFFSET_IN_DIFFERENCE,
  /** Factor 1.8 turned round. */
  FACTOR_TURNED,
  /** Factor 1.8 used twice. */
  FACTOR_TWICE,
  /** 32 left out of a temperature. */
  OFFSET_FORGOTTEN,
  /** 32 used at the wrong step. */
  OFFSET_AT_WRONG_STEP,
  /** Celsius and Fahrenheit mixed. */
  MIXED_UNITS,
  /** Difference to the station turned. */
  STATION_OFFSET_TURNED,
  /** Difference to the station forgotten. */
  STATION_OFFSET_FORGOTTEN,
  /** Difference to the station used twice. */
  STATION_OFFSET_TWICE,
  /** Day of the second visit counted. */
  VISIT_DAY_COUNTED,
  /** Day of the first visit left out. */
  VISIT_DAY_LEFT_OUT,
  /** Days before the first visit counted. */
  ALL_DAYS_COUNTED,
  /** Catch for each calendar day. */
  CATCH_FOR_EACH_DAY,
  /** Quotient turned round. */
  QUOTIENT_TURNED,
  /** Catch for one degree-day. */
  HUNDRED_FORGOTTEN;

  @Override
  public String bundle() {
    return "degreeday";
  }
}
