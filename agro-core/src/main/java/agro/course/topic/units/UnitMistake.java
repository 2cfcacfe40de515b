package agro.course.topic.units;

import agro.course.Mistake;

/** Mistakes with units. */
public enum UnitMistake implements Mistake {
  /** The unit of land below the line was left as it was. */
  LAND_NOT_CONVERTED,
  /** The factor of the land was multiplied where it divides, or the other way round. */
  LAND_FACTOR_INVERTED,
  /** The unit of the product was left as it was. */
  AMOUNT_NOT_CONVERTED,
  /** The unit of the water below the line was left as it was. */
  WATER_NOT_CONVERTED,
  /** The factor of the water was multiplied where it divides, or the other way round. */
  WATER_FACTOR_INVERTED,
  /** An imperial measure was taken for the US measure of the same name. */
  IMPERIAL_FOR_US,
  /** The 32 of the Fahrenheit scale was left out in a temperature. */
  OFFSET_FORGOTTEN,
  /** The 32 was taken away after dividing, or added before multiplying. */
  OFFSET_OUT_OF_ORDER,
  /** The 32 was put into a difference of temperatures. */
  OFFSET_IN_DIFFERENCE,
  /** The 32 was put into a sum of degree-days. */
  OFFSET_IN_DEGREE_DAYS,
  /** Five ninths and nine fifths were mixed up. */
  DEGREE_FACTOR_INVERTED,
  /** The factor of degrees was left out. */
  DEGREE_FACTOR_FORGOTTEN,
  /** The threshold was not taken away from the mean temperature. */
  THRESHOLD_NOT_SUBTRACTED,
  /** The difference between station and field was left out. */
  CORRECTION_FORGOTTEN,
  /** The difference between station and field was added with the wrong sign. */
  CORRECTION_WRONG_SIGN,
  /** Per cent were read as per mille. */
  PER_MILLE_FOR_PERCENT,
  /** Per mille were read as per cent. */
  PERCENT_FOR_PER_MILLE,
  /** Per cent or per mille were multiplied without dividing. */
  PERCENT_AS_WHOLE_NUMBER,
  /** The tank was divided by the share. */
  DIVIDED_INSTEAD_OF_MULTIPLIED,
  /** The number of product was taken for the active ingredient. */
  ACTIVE_FOR_PRODUCT,
  /** The rate was divided by the content. */
  RATE_DIVIDED_BY_CONTENT,
  /** Grams were written as milligrams. */
  GRAMS_AS_MILLIGRAMS,
  /** The amount for one unit of water was given for the whole tank. */
  STRENGTH_AS_TANK,
  /** A teaspoon was taken for a tablespoon. */
  TEASPOON_FOR_TABLESPOON,
  /** The Australian tablespoon was taken for the metric one. */
  OTHER_TABLESPOON,
  /** The shares of a dose were taken the wrong way round. */
  RATIO_INVERTED,
  /** The departure was given where the whole share was asked for. */
  DEPARTURE_FOR_SHARE,
  /** Paces were divided by the distance. */
  PACE_INVERTED,
  /** Paces were taken for metres or feet. */
  PACE_NOT_CONVERTED,
  /** The half in the area of a triangle was left out. */
  TRIANGLE_NOT_HALVED,
  /** The half in the area of a trapezium was left out. */
  TRAPEZIUM_NOT_HALVED,
  /** One of the two parallel sides was left out. */
  ONE_SIDE_ONLY,
  /** The length of a pace was used once in an area. */
  PACE_NOT_SQUARED,
  /** Square metres or feet were multiplied by the size of the land unit. */
  AREA_FACTOR_INVERTED,
  /** The area was given in acres where hectares were asked for, or the other way round. */
  ACRE_AND_HECTARE_MIXED_UP,
  /** A speed in length per second was left as it was. */
  SPEED_NOT_CONVERTED,
  /** The factor of the speed was divided where it multiplies. */
  SPEED_FACTOR_INVERTED,
  /** Time was divided by distance. */
  SPEED_INVERTED,
  /** The length was multiplied by the speed. */
  TIME_MULTIPLIED,
  /** The speed was put in without changing it into length per second. */
  TIME_WITH_RAW_SPEED;

  @Override
  public String bundle() {
    return "units";
  }
}
