package agro.course.topic.injury;

import agro.course.Mistake;

/** Mistakes with injury levels, thresholds and insect-days. */
public enum InjuryMistake implements Mistake {
  /** Share prevented left out. */
  CONTROL_LEFT_OUT,
  /** Multiplied by the share prevented. */
  CONTROL_MULTIPLIED,
  /** Price of the large unit for the small one. */
  BULK_PRICE_FOR_UNIT,
  /** Upside down. */
  UPSIDE_DOWN,
  /** Multiplied by the price. */
  PRICE_MULTIPLIED,
  /** Share of the rest. */
  SHARE_OF_THE_REST,
  /** Divided by the change of cost. */
  COST_DIVIDED,
  /** Change in place of new level. */
  CHANGE_ALONE,
  /** Per cents added. */
  CHANGES_ADDED,
  /** Change of price left out. */
  PRICE_CHANGE_LEFT_OUT,
  /** Change of cost left out. */
  COST_CHANGE_LEFT_OUT,
  /** New level as base. */
  NEW_LEVEL_AS_BASE,
  /** Share in place of change. */
  SHARE_FOR_CHANGE,
  /** Growth in the wrong direction. */
  GROWTH_FORWARD,
  /** Straight line in place of growth. */
  GROWTH_IN_A_LINE,
  /** A doubling each day. */
  DOUBLING_EVERY_DAY,
  /** Logarithm to base 10. */
  COMMON_LOGARITHM,
  /** Days left out of the rate. */
  DAYS_LEFT_OUT_OF_RATE,
  /** Difference in place of logarithm. */
  DIFFERENCE_AS_RATE,
  /** Injury level for threshold. */
  LEVEL_FOR_THRESHOLD,
  /** Comparison read backwards. */
  BACKWARDS,
  /** Days left out. */
  DAYS_LEFT_OUT,
  /** Last interval left out. */
  LAST_INTERVAL_LEFT_OUT,
  /** First count for the whole interval. */
  FIRST_COUNT_OF_INTERVAL,
  /** Plain mean times all days. */
  MEAN_TIMES_DAYS,
  /** Divided by the number of counts. */
  DIVIDED_BY_COUNTS,
  /** One day too many. */
  ONE_DAY_TOO_MANY,
  /** Mean number for insect-days. */
  PER_DAY_FOR_ALL,
  /** Divided by the price. */
  PRICE_DIVIDED,
  /** Cost not taken off. */
  COST_NOT_TAKEN_OFF,
  /** Cost taken off too early. */
  COST_TAKEN_OFF_FIRST,
  /** Number of pests left out. */
  PESTS_LEFT_OUT,
  /** Cost not counted. */
  COST_NOT_COUNTED,
  /** Price of the small unit for the large one. */
  UNIT_PRICE_FOR_BULK,
  /** Spacing not converted. */
  SPACING_NOT_CONVERTED,
  /** Divided by the plants. */
  PLANTS_DIVIDED,
  /** Per plant taken per row. */
  PLANT_AS_ROW,
  /** Length of the stretches left out. */
  LENGTH_LEFT_OUT,
  /** Number of stretches left out. */
  STRETCHES_LEFT_OUT,
  /** Cost of bringing it out left out. */
  PASSAGE_LEFT_OUT,
  /** Rate not converted to the unit of the price. */
  MEASURE_NOT_CONVERTED,
  /** Per cent not divided by 100. */
  PERCENT_AS_NUMBER,
  /** Cost to the environment alone. */
  ENVIRONMENT_ALONE,
  /** Cost to the environment taken off. */
  ENVIRONMENT_SUBTRACTED,
  /** Divided by the ratio. */
  RATIO_DIVIDED,
  /** Share taken off. */
  REST_OF_RATIO;

  @Override
  public String bundle() {
    return "injury";
  }
}
