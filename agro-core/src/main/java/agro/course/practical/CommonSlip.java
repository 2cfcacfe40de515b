package agro.course.practical;

import agro.dose.ActiveStrength;
import agro.dose.ContentByMass;
import agro.dose.ContentByVolume;
import agro.units.AreaUnit;
import agro.units.LengthUnit;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.ToDoubleFunction;

/**
 * A slip that really occurs, with the dose that comes of it over the dose that was meant. Ratios of
 * units come from their exact sizes, the others from the situation.
 */
public enum CommonSlip {
  /** The dose for a hectare is put on an acre. */
  HECTARE_DOSE_ON_ACRE(SlipFamily.LAND, true, AreaUnit.HECTARE, AreaUnit.ACRE),
  /** The dose for an acre is put on a hectare. */
  ACRE_DOSE_ON_HECTARE(SlipFamily.LAND, true, AreaUnit.ACRE, AreaUnit.HECTARE),
  /** The dose for one local unit of land is put on another, often of the same name. */
  LAND_UNIT_FOR_OTHER(SlipFamily.LAND, true, at -> ratio(at.ground().meant(), at.ground().taken())),
  /** The same the other way round. */
  OTHER_FOR_LAND_UNIT(
      SlipFamily.LAND, false, at -> ratio(at.ground().taken(), at.ground().meant())),
  /** One side of the plot was measured in feet and counted as metres. */
  ONE_SIDE_IN_FEET(SlipFamily.LAND, true, LengthUnit.METRE, LengthUnit.FOOT),
  /** Both sides were measured in feet and counted as metres. */
  BOTH_SIDES_IN_FEET(SlipFamily.LAND, false, AreaUnit.SQUARE_METRE, AreaUnit.SQUARE_FOOT),

  /** Fluid ounces were measured where millilitres were meant. */
  FLUID_OUNCES_FOR_ML(SlipFamily.MEASURE, true, VolumeUnit.US_FLUID_OUNCE, VolumeUnit.MILLILITRE),
  /** Millilitres were measured where fluid ounces were meant. */
  ML_FOR_FLUID_OUNCES(SlipFamily.MEASURE, true, VolumeUnit.MILLILITRE, VolumeUnit.US_FLUID_OUNCE),
  /** Ounces were weighed where grams were meant. */
  OUNCES_FOR_GRAMS(SlipFamily.MEASURE, false, MassUnit.OUNCE, MassUnit.GRAM),
  /** Grams were weighed where ounces were meant. */
  GRAMS_FOR_OUNCES(SlipFamily.MEASURE, true, MassUnit.GRAM, MassUnit.OUNCE),
  /** Pounds were weighed where kilograms were meant. */
  POUNDS_FOR_KILOGRAMS(SlipFamily.MEASURE, true, MassUnit.POUND, MassUnit.KILOGRAM),
  /** Kilograms were weighed where pounds were meant. */
  KILOGRAMS_FOR_POUNDS(SlipFamily.MEASURE, false, MassUnit.KILOGRAM, MassUnit.POUND),
  /** A dose per US gallon went into an imperial gallon of water. */
  IMPERIAL_GALLON_OF_WATER(
      SlipFamily.MEASURE, true, VolumeUnit.US_GALLON, VolumeUnit.IMPERIAL_GALLON),
  /** A dose per imperial gallon went into a US gallon of water. */
  US_GALLON_OF_WATER(SlipFamily.MEASURE, true, VolumeUnit.IMPERIAL_GALLON, VolumeUnit.US_GALLON),
  /** Ounces were weighed where fluid ounces were meant. */
  DRY_OUNCE_FOR_FLUID(
      SlipFamily.MEASURE,
      false,
      at ->
          Mass.of(1, MassUnit.OUNCE)
              .dividedBy(at.product().density())
              .ratioTo(Volume.of(1, VolumeUnit.US_FLUID_OUNCE))),
  /** A tablespoon was used where a teaspoon was meant. */
  TABLESPOON_FOR_TEASPOON(
      SlipFamily.MEASURE, true, VolumeUnit.US_TABLESPOON, VolumeUnit.US_TEASPOON),
  /** A teaspoon was used where a tablespoon was meant. */
  TEASPOON_FOR_TABLESPOON(
      SlipFamily.MEASURE, false, VolumeUnit.US_TEASPOON, VolumeUnit.US_TABLESPOON),
  /** An Australian tablespoon was used where a US one was meant. */
  AUSTRALIAN_TABLESPOON(
      SlipFamily.MEASURE, true, VolumeUnit.AUSTRALIAN_TABLESPOON, VolumeUnit.US_TABLESPOON),
  /** A powder was measured in millilitres where grams were meant. */
  POWDER_BY_VOLUME(
      SlipFamily.MEASURE,
      true,
      at ->
          Volume.of(1, VolumeUnit.MILLILITRE)
              .times(at.product().bulkDensity())
              .ratioTo(Mass.of(1, MassUnit.GRAM))),

  /** A rate of active ingredient was measured out as product. */
  ACTIVE_TAKEN_AS_PRODUCT(SlipFamily.STRENGTH, true, at -> share(at.product().strength())),
  /** A rate of product was taken for active ingredient and divided by the strength. */
  PRODUCT_TAKEN_AS_ACTIVE(SlipFamily.STRENGTH, true, at -> 1 / share(at.product().strength())),
  /** Another formulation was used at the rate of the first. */
  OTHER_FORMULATION(
      SlipFamily.STRENGTH,
      true,
      at -> share(at.product().other()) / share(at.product().strength())),
  /** Per mille was mixed where per cent was meant. */
  PER_MILLE_FOR_PER_CENT(SlipFamily.STRENGTH, true, at -> partsOf(1000, 100)),
  /** Per cent was mixed where per mille was meant. */
  PER_CENT_FOR_PER_MILLE(SlipFamily.STRENGTH, false, at -> partsOf(100, 1000)),

  /** The dose for a litre went into a whole pump. */
  LITRE_DOSE_IN_PUMP(
      SlipFamily.TANK, true, at -> Volume.of(1, VolumeUnit.LITRE).ratioTo(at.tank().pump())),
  /** The dose for a whole pump went into each litre. */
  PUMP_DOSE_IN_LITRE(
      SlipFamily.TANK, false, at -> at.tank().pump().ratioTo(Volume.of(1, VolumeUnit.LITRE))),
  /** The last, smaller load got the product of a full one. */
  FULL_DOSE_IN_LAST_LOAD(
      SlipFamily.TANK, true, at -> at.tank().tank().ratioTo(at.tank().lastLoad())),
  /** A tank that was not empty was topped up with the product for a full one. */
  TOPPED_UP_WITH_FULL_DOSE(
      SlipFamily.TANK, true, at -> 1 + at.tank().rest().ratioTo(at.tank().tank())),
  /** A tank that was not empty was topped up with water alone. */
  TOPPED_UP_WITH_WATER(SlipFamily.TANK, true, at -> at.tank().rest().ratioTo(at.tank().tank())),
  /** A dose per litre for a high spray volume went into a sprayer of low volume. */
  LITRE_DOSE_AT_OTHER_VOLUME(
      SlipFamily.TANK, true, at -> at.ground().sprayerVolume().ratioTo(at.ground().labelVolume())),

  /** The walk was faster than at the calibration. */
  WALKED_FASTER(SlipFamily.SPRAYER, true, at -> 1 / (1 + at.ground().speedShare())),
  /** The walk was slower than at the calibration. */
  WALKED_SLOWER(SlipFamily.SPRAYER, true, at -> 1 / (1 - at.ground().speedShare())),
  /** The nozzle is worn. */
  WORN_NOZZLE(SlipFamily.SPRAYER, true, at -> 1 + at.ground().wearShare()),
  /** Swaths overlap. */
  SWATHS_OVERLAP(SlipFamily.SPRAYER, true, at -> 1 / (1 - at.ground().overlapShare())),
  /** The pressure was doubled. */
  PRESSURE_DOUBLED(SlipFamily.SPRAYER, false, at -> Math.sqrt(2)),
  /** A rate for the whole field was put into the bands alone. */
  FIELD_RATE_IN_BANDS(
      SlipFamily.SPRAYER, false, at -> at.ground().rowSpacing().ratioTo(at.ground().bandWidth())),

  /** A decimal comma was overlooked: 1,5 was read as 15. */
  COMMA_OVERLOOKED(SlipFamily.WRITING, true, at -> readAs("15", "1.5")),
  /** A decimal comma was read as a sign of thousands: 1,500 was read as 1500. */
  COMMA_AS_THOUSANDS(SlipFamily.WRITING, true, at -> readAs("1500", "1.500")),
  /** The decimal point went one place to the left. */
  POINT_TO_THE_LEFT(SlipFamily.WRITING, false, at -> readAs("0.15", "1.5"));

  private final SlipFamily family;
  private final boolean usual;
  private final SlipBasis basis;
  private final transient ToDoubleFunction<SlipSituation> ratio;

  CommonSlip(SlipFamily family, boolean usual, Unit<?> given, Unit<?> meant) {
    this.family = family;
    this.usual = usual;
    this.basis = SlipBasis.EXACT_UNITS;
    this.ratio = at -> ratio(given, meant);
  }

  CommonSlip(SlipFamily family, boolean usual, ToDoubleFunction<SlipSituation> ratio) {
    this.family = family;
    this.usual = usual;
    this.basis = SlipBasis.STATED_CASE;
    this.ratio = ratio;
  }

  private static double ratio(Unit<?> above, Unit<?> below) {
    return above.factor().times(below.factor().inverse()).convert(1);
  }

  /** One part of so many given where one part of so many was meant. */
  private static double partsOf(int given, int meant) {
    return (double) meant / given;
  }

  private static double share(ActiveStrength strength) {
    return strength instanceof ContentByVolume byVolume
        ? byVolume.content().gramsPerLitre() / 1000
        : ((ContentByMass) strength).content().gramsPerKilogram() / 1000;
  }

  private static double readAs(String read, String written) {
    return new BigDecimal(read)
        .divide(new BigDecimal(written), MathContext.DECIMAL64)
        .doubleValue();
  }

  /**
   * Where it happens.
   *
   * @return the family
   */
  public SlipFamily family() {
    return family;
  }

  /**
   * What its size follows from.
   *
   * @return exact units or a stated case
   */
  public SlipBasis basis() {
    return basis;
  }

  /**
   * Whether it is one of those that a class is shown.
   *
   * @return true for the twenty-odd most frequent ones
   */
  public boolean isUsual() {
    return usual;
  }

  /**
   * The dose that comes of it over the dose that was meant.
   *
   * @param situation product, pump, tank, land and sprayer
   * @return the ratio, above zero
   */
  public double ratio(SlipSituation situation) {
    return ratio.applyAsDouble(situation);
  }
}
