package agro.course.topic.dose;

import agro.course.Mistake;

/** Mistakes with doses. */
public enum DosingMistake implements Mistake {
  /** The rate was divided by the area. */
  RATE_DIVIDED_BY_AREA,
  /** A figure per hectare was used per acre. */
  HECTARE_FOR_ACRE,
  /** A figure per acre was used per hectare. */
  ACRE_FOR_HECTARE,
  /** The amount for one unit of land was taken for the whole field. */
  RATE_TAKEN_AS_TOTAL,
  /** The spray volume was divided by the tank: tanks per land, not land per tank. */
  TANK_DIVISION_INVERTED,
  /** The product for the whole field went into one tank. */
  TANK_FILLED_FOR_FIELD,
  /** The product for one unit of land went into each tank. */
  RATE_PER_TANK,
  /** The last load got as much product as a full one. */
  LAST_LOAD_AS_FULL,
  /** The last load got what a full one has more. */
  LAST_LOAD_AS_WHAT_IS_MISSING,
  /** The last load that is not full was counted as a full one. */
  PART_LOAD_COUNTED_AS_FULL,
  /** The last filling that is not full was left out. */
  LAST_FILLING_FORGOTTEN,
  /** The pumps were turned the wrong way round: land per pump. */
  PUMPS_INVERTED,
  /** The dose for one litre or gallon of spray was taken per pump. */
  PER_LITRE_TAKEN_PER_PUMP,
  /** The dose was multiplied by the pumps instead of divided. */
  MULTIPLIED_BY_PUMPS,
  /** The spray volume was divided by the dose per litre. */
  SPRAY_DIVIDED_BY_STRENGTH,
  /** The dose for one litre or gallon was taken per unit of land. */
  PER_LITRE_TAKEN_PER_LAND,
  /** The spray volume of the label was used for the own sprayer. */
  LABEL_VOLUME_FOR_OWN,
  /** The spray volume of the own sprayer was used for the label. */
  OWN_VOLUME_FOR_LABEL,
  /** The ratio was turned round. */
  RATIO_INVERTED,
  /** The departure was given where the share was asked for. */
  DEPARTURE_FOR_SHARE,
  /** The strength of the label was kept at another spray volume. */
  STRENGTH_KEPT,
  /** The strength was changed in the wrong direction. */
  STRENGTH_CHANGED_WRONG_WAY,
  /** Active ingredient was multiplied by the content where it divides. */
  CONTENT_MULTIPLIED,
  /** Product was divided by the content where it multiplies. */
  CONTENT_DIVIDED,
  /** Active ingredient and product were taken for the same amount. */
  ACTIVE_FOR_PRODUCT,
  /** Litres were written as millilitres, or gallons as fluid ounces. */
  LARGE_UNIT_AS_SMALL,
  /** The other product's content was used. */
  CONTENT_OF_OTHER_PRODUCT,
  /** The stronger product was given in the larger amount. */
  PROPORTION_REVERSED,
  /** Row spacing was divided by band width. */
  SHARE_INVERTED,
  /** The untreated share was given. */
  UNTREATED_SHARE,
  /** The whole field was dosed as if it were treated. */
  WHOLE_FIELD_TREATED,
  /** The treated share was taken twice. */
  SHARE_TAKEN_TWICE,
  /** The area was multiplied by the spacing. */
  MULTIPLIED_BY_SPACING,
  /** Only the spacing between the rows was used. */
  ONE_SPACING_ONLY,
  /** Millilitres were written as litres, or fluid ounces as gallons. */
  SMALL_UNIT_AS_LARGE,
  /** The dose for one litre or gallon was given to each plant. */
  PER_LITRE_TAKEN_PER_PLANT,
  /** The rate per hundred was used per one. */
  HUNDRED_FORGOTTEN,
  /** The lot was divided by the rate, or the rate by the lot. */
  DIVIDED_BY_LOT,
  /** The seed of the whole lot was spread over one unit of land. */
  LOT_FOR_LAND,
  /** The water of the manure was taken for its dry matter. */
  WATER_FOR_DRY_MATTER,
  /** The difference of moistures was multiplied by the mass. */
  MOISTURES_SUBTRACTED,
  /** The moisture on wet mass was used as if it were on dry matter. */
  WET_BASIS_AS_DRY,
  /** The water that is there already was not taken away. */
  WATER_THERE_FORGOTTEN,
  /** The amount for the whole heap was given for each unit of land. */
  HEAP_FOR_LAND,
  /** Stock and solution were turned round. */
  DILUTION_INVERTED,
  /** The water to add was given as stock. */
  DILUENT_AS_STOCK,
  /** The factor was multiplied by the number of steps. */
  FACTOR_TIMES_STEPS,
  /** One part in so many was taken as one part and so many. */
  PARTS_ADDED,
  /** The price of a pack was taken for the price of the treatment. */
  PACK_PRICE_AS_COST,
  /** The costs of both were added where the difference counts. */
  COSTS_ADDED,
  /** The cheaper pack was taken for the cheaper treatment. */
  CHEAPER_PACK_CHOSEN,
  /** Something was divided by the dose where it multiplies. */
  DIVIDED_BY_DOSE,
  /** The strip of the row was divided by the spacing. */
  DIVIDED_BY_SPACING,
  /** The length of the row was taken for its area. */
  SPACING_FORGOTTEN;

  @Override
  public String bundle() {
    return "dose";
  }
}
