package agro.course.topic.units;

import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.UnitSizes;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.Quantity;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;

/** Measures of a class, and the imperial ones that share names with those of the United States. */
final class Factors {

  private Factors() {}

  /** The sizes as a sentence of the topic. */
  static String say(CourseWords words, UnitSizes sizes) {
    return words.say("factors", "factors", sizes.print());
  }

  /** A unit in terms of another, with the number that the exercise states for the two. */
  static <Q extends Quantity<Q>> String size(CourseWords words, Unit<Q> from, Unit<Q> to) {
    double ratio = from.toBase(1) / to.toBase(1);
    return ratio >= 1
        ? words.number(ratio) + " " + to.symbol()
        : "(1 " + to.symbol() + " ÷ " + words.number(1 / ratio) + ")";
  }

  /** Whether a class measures liquids in US measures. */
  static boolean american(CourseUnits units) {
    return units.measure() == VolumeUnit.US_FLUID_OUNCE;
  }

  /** How much larger or smaller the imperial unit of the same name is, or 1. */
  static double imperial(Unit<Volume> unit) {
    if (!(unit instanceof VolumeUnit volume)) {
      return 1;
    }
    Unit<Volume> other =
        switch (volume) {
          case US_FLUID_OUNCE -> VolumeUnit.IMPERIAL_FLUID_OUNCE;
          case US_PINT -> VolumeUnit.IMPERIAL_PINT;
          case US_QUART -> VolumeUnit.IMPERIAL_QUART;
          case US_GALLON -> VolumeUnit.IMPERIAL_GALLON;
          default -> volume;
        };
    return other.toBase(1) / unit.toBase(1);
  }

  /** Mass in which a class states active ingredient. */
  static Unit<Mass> active(CourseUnits units) {
    return american(units) ? MassUnit.POUND : MassUnit.KILOGRAM;
  }
}
