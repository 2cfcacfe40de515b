package agro.course.topic.calibration;

import agro.course.Mistake;

/** Mistakes with calibrations. */
public enum CalibrationMistake implements Mistake {
  /** A speed per second was written as a speed per hour. */
  PER_SECOND_AS_PER_HOUR,
  /** The time was divided by the length. */
  TIME_OVER_LENGTH,
  /** Minutes and seconds were written as a decimal number of minutes. */
  SECONDS_AS_DECIMALS,
  /** The catch of some seconds was taken for that of a minute. */
  CATCH_TIME_AS_MINUTE,
  /** The catch was divided by the seconds and called a flow per minute. */
  PER_SECOND_AS_PER_MINUTE,
  /** The flow of one nozzle was spread over the width of all. */
  ONE_NOZZLE_FOR_ALL,
  /** The flow of all nozzles was put on the width of one. */
  SPACING_FOR_WIDTH,
  /** The speed went into the equation per second. */
  SPEED_PER_SECOND_IN_EQUATION,
  /** The volume was not divided by the width. */
  WIDTH_FORGOTTEN,
  /** The flow of the boom was given as that of a nozzle. */
  FLOW_OF_BOOM,
  /** The flow was divided by the nozzles although it was that of one already. */
  DIVIDED_BY_NOZZLES_TWICE,
  /** What was left in the tank was taken for what was used. */
  LEFT_FOR_USED,
  /** The unit of land was taken ten times too small. */
  LAND_TEN_TIMES_TOO_SMALL,
  /** The sides of a plot were added instead of multiplied. */
  SIDES_ADDED,
  /** The number of tanks for a unit of land was given as an area. */
  TANKS_FOR_AREA,
  /** What was used on the plot was taken for a full tank. */
  PLOT_FOR_TANK,
  /** The tank was multiplied by the volume per area. */
  TANK_TIMES_VOLUME,
  /** The dose for a unit of land went into every tank. */
  LAND_DOSE_IN_EVERY_TANK,
  /** The dose per area was taken for a dose per hundred units of water. */
  DOSE_PER_HUNDRED_OF_WATER,
  /** The width of the whole boom was taken for that of a nozzle. */
  BOOM_FOR_SPACING,
  /** Inches were taken for feet. */
  INCHES_AS_FEET,
  /** The longer course was not allowed for. */
  LONGER_COURSE_FORGOTTEN,
  /** The catch of one nozzle was multiplied by all nozzles. */
  CATCH_TIMES_NOZZLES,
  /** The flow was changed in proportion to the pressure. */
  LINEAR_PRESSURE,
  /** A square was taken where a root belongs. */
  SQUARE_FOR_ROOT,
  /** A root was taken where a square belongs. */
  ROOT_FOR_SQUARE,
  /** A ratio was turned upside down. */
  RATIO_UPSIDE_DOWN,
  /** The nominal flow was compared, whatever the pressure. */
  PRESSURE_IGNORED,
  /** The sum of the catches was taken for their mean. */
  SUM_FOR_MEAN,
  /** Nozzles were held against five per cent. */
  FIVE_PER_CENT_LIMIT,
  /** Only nozzles that give too much were named. */
  ONLY_TOO_MUCH,
  /** Only nozzles that give too little were named. */
  ONLY_TOO_LITTLE,
  /** The squares were divided by the number of nozzles. */
  DIVIDED_BY_N,
  /** The range was taken for the standard deviation. */
  RANGE_FOR_DEVIATION,
  /** Wear was judged by the mean of the boom. */
  MEAN_FOR_NEW,
  /** Clogged nozzles were called worn. */
  CLOGGED_AS_WORN,
  /** The dose was left as intended. */
  DOSE_AS_INTENDED,
  /** The departure was divided by the dose given. */
  PER_CENT_OF_GIVEN,
  /** The dose given was stated in per cent of the intended one. */
  SHARE_FOR_DEPARTURE,
  /** The sign of the departure was turned round. */
  SIGN_TURNED,
  /** The specific gravity was used without its root. */
  ROOT_FORGOTTEN,
  /** The volume was divided by the root. */
  DIVIDED_BY_ROOT,
  /** The density was not allowed for. */
  DENSITY_IGNORED,
  /** A part of a tank was dropped. */
  ROUNDED_DOWN,
  /** The tanks for one unit of land were given for the field. */
  AREA_FORGOTTEN,
  /** The tank was multiplied by the flow. */
  TANK_TIMES_FLOW,
  /** The flow was divided by the tank. */
  FLOW_OVER_TANK,
  /** The time for filling was left out. */
  FILLING_FORGOTTEN,
  /** The last part of a tank was counted as a full one. */
  LAST_TANK_AS_FULL,
  /** Filling was counted once. */
  ONE_FILLING;

  @Override
  public String bundle() {
    return "calibration";
  }
}
