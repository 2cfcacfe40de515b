package agro.course.topic.injury;

import agro.course.CourseContext;
import agro.course.CourseWords;
import agro.course.ExerciseDraw;
import agro.course.NumberAnswer;
import agro.course.UnitSizes;
import agro.sampling.injury.MoneyPerArea;
import agro.sampling.injury.MoneyPerMass;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Mass;
import agro.units.MassPerArea;
import agro.units.MassUnit;
import agro.units.Unit;

/**
 * Money, harvests and land in the units of a class.
 *
 * @param land unit of fields
 * @param harvest unit of harvests
 * @param bulk unit in which harvests are priced, such as tonnes where they are weighed in kilograms
 * @param sign sign or code of the currency
 */
record CourseMoney(Unit<Area> land, Unit<Mass> harvest, Unit<Mass> bulk, String sign) {

  /** A class may use a sign that is no code of a currency, so amounts are reckoned in none. */
  private static final String NO_CURRENCY = "XXX";

  private static final double ENOUGH_FOR_CENTS = 2_000;

  static CourseMoney of(CourseContext context) {
    var units = context.units();
    return new CourseMoney(
        units.land(),
        units.yield(),
        units.yield() == MassUnit.POUND ? MassUnit.SHORT_TON : MassUnit.TONNE,
        context.setting().currency());
  }

  Unit<MassPerArea> massPerLand() {
    return MassPerArea.unit(harvest, land);
  }

  /** Harvest units in a bulk unit, such as 1000 kg in a tonne. */
  double harvestInBulk() {
    return Mass.of(1, bulk).in(harvest);
  }

  /** Whether prices are for another unit than that of harvests. */
  boolean pricedInBulk() {
    return harvestInBulk() != 1;
  }

  /** A price as an exercise gives it, with the size of its unit where harvests have another. */
  String givenPrice(double price, CourseWords words) {
    return price(price, words) + sizes(UnitSizes.in(words).and(bulk, harvest));
  }

  /** Sizes of units in parentheses, or nothing. */
  static String sizes(UnitSizes sizes) {
    return sizes.print().isEmpty() ? "" : " (" + sizes.print() + ")";
  }

  MoneyPerArea perLand(double amount) {
    return MoneyPerArea.of(amount, NO_CURRENCY, land);
  }

  MoneyPerMass perBulk(double amount) {
    return MoneyPerMass.of(amount, NO_CURRENCY, bulk);
  }

  /** Money for a unit of land from a range for a hectare. */
  double drawPerLand(ExerciseDraw draw, double lowPerHectare, double highPerHectare) {
    double hectares = Area.of(1, land).in(AreaUnit.HECTARE);
    return draw.sensible(lowPerHectare * hectares, highPerHectare * hectares, 2);
  }

  /** A price for a bulk unit from a range for a tonne. */
  double drawPrice(ExerciseDraw draw, double lowPerTonne, double highPerTonne) {
    double tonnes = Mass.of(1, bulk).in(MassUnit.TONNE);
    return draw.sensible(lowPerTonne * tonnes, highPerTonne * tonnes, 2);
  }

  /** A harvest or a loss for a unit of land, with few digits in the units of the class. */
  MassPerArea drawMass(ExerciseDraw draw, double lowKilograms, double highKilograms) {
    return draw.sensible(
        new MassPerArea(lowKilograms), new MassPerArea(highKilograms), massPerLand(), 2);
  }

  /** Decimals of money for a unit of land: cents for an acre, more for land of a few steps. */
  int decimals() {
    double squareMetres = Area.of(1, land).squareMetres();
    int decimals = 2;
    for (double least = ENOUGH_FOR_CENTS; squareMetres < least && decimals < 5; least /= 10) {
      decimals++;
    }
    return decimals;
  }

  String decimals(CourseWords words) {
    return words.say("decimals." + decimals());
  }

  /** A question for money for a unit of land. */
  String ask(String key, CourseWords words) {
    return words.say(key, "unit", perLandWord(), "decimals", decimals(words));
  }

  /** An answer in money for a unit of land. */
  NumberAnswer answer(double amount) {
    return NumberAnswer.computed(amount, decimals(), perLandWord());
  }

  String perLandWord() {
    return sign + "/" + land.symbol();
  }

  String exactPerLand(double amount, CourseWords words) {
    return words.exact(amount) + " " + perLandWord();
  }

  String perLand(double amount, CourseWords words) {
    return words.number(amount) + " " + perLandWord();
  }

  String price(double amount, CourseWords words) {
    return words.exact(amount) + " " + sign + "/" + words.symbol(bulk);
  }

  String exact(MassPerArea mass, CourseWords words) {
    return words.exact(mass, massPerLand());
  }

  String show(MassPerArea mass, CourseWords words) {
    return words.show(mass, massPerLand());
  }
}
