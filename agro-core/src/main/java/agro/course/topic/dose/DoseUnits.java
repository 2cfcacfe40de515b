package agro.course.topic.dose;

import agro.course.CourseContext;
import agro.course.CourseWords;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.SolutionDraft;
import agro.course.UnitSizes;
import agro.dose.ProductAmount;
import agro.dose.ProductPerArea;
import agro.dose.WrittenAmount;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Mass;
import agro.units.MassPerVolume;
import agro.units.MassPerVolumeUnit;
import agro.units.MassUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerVolume;
import agro.units.VolumeUnit;

/**
 * The units of a class as the exercises on doses put them together.
 *
 * @param context for whom
 */
record DoseUnits(CourseContext context) {

  CourseWords words() {
    return context.words().in(DoseUnits.class, "dose");
  }

  SolutionDraft part(String type) {
    return SolutionDraft.titled(words(), words().say(type + ".title"));
  }

  Unit<Area> land() {
    return context.units().land();
  }

  Unit<Volume> water() {
    return context.units().water();
  }

  Unit<Volume> measure() {
    return context.units().measure();
  }

  /** Sizes of units as a sentence of the topic. */
  String given(UnitSizes sizes) {
    return words().say("given", "given", sizes.print());
  }

  /** Product per land. */
  Unit<VolumePerArea> rate() {
    return VolumePerArea.unit(measure(), land());
  }

  /** Spray per land. */
  Unit<VolumePerArea> spray() {
    return VolumePerArea.unit(water(), land());
  }

  /** Product per spray. */
  Unit<VolumePerVolume> strength() {
    return VolumePerVolume.unit(measure(), water());
  }

  boolean american() {
    return measure() == VolumeUnit.US_FLUID_OUNCE;
  }

  /** Content of liquid products. */
  Unit<MassPerVolume> content() {
    return american() ? MassPerVolumeUnit.POUND_PER_US_GALLON : MassPerVolumeUnit.GRAM_PER_LITRE;
  }

  /** Mass in which active ingredient is stated. */
  Unit<Mass> active() {
    return american() ? MassUnit.POUND : MassUnit.GRAM;
  }

  /** Short lengths such as spacings. */
  Unit<Length> spacing() {
    return context.units().course() == LengthUnit.FOOT ? LengthUnit.INCH : LengthUnit.CENTIMETRE;
  }

  /** A rate as the adviser's classes take it. */
  ProductPerArea product(VolumePerArea rate) {
    return new ProductPerArea(
        ProductAmount.liquid(rate.in(rate()), measure()), WrittenAmount.one(land()));
  }

  /** The volume of an amount that is one. */
  static Volume volume(ProductAmount amount) {
    return ((ProductAmount.Liquid) amount).range().low();
  }

  /** The mass of an amount that is one. */
  static Mass mass(ProductAmount amount) {
    return ((ProductAmount.Solid) amount).range().low();
  }

  MeasuredAnswer<Volume> poured(Volume volume) {
    return MeasuredAnswer.poured(volume, measure());
  }

  MeasuredAnswer<Area> area(double number) {
    return MeasuredAnswer.of(Area.of(number, land()), land());
  }

  /** Land of the class in the other one of hectare and acre, or in hectares for a local unit. */
  double otherLand() {
    var other = land() == AreaUnit.HECTARE ? AreaUnit.ACRE : AreaUnit.HECTARE;
    return land().toBase(1) / other.toBase(1);
  }

  /**
   * Adds the slip of mixing up hectare and acre, where the class works in one of the two.
   *
   * @param part part to add to
   * @param figurePerLand whether a figure per land of the class met an area in the other unit;
   *     otherwise a figure per land of the other unit met an area of the class
   * @param answer what comes out
   */
  SolutionDraft mixedUpLand(SolutionDraft part, boolean figurePerLand, ExpectedAnswer answer) {
    if (land() != AreaUnit.HECTARE && land() != AreaUnit.ACRE) {
      return part;
    }
    boolean hectare = (land() == AreaUnit.HECTARE) == figurePerLand;
    return part.slip(
        hectare ? DosingMistake.HECTARE_FOR_ACRE : DosingMistake.ACRE_FOR_HECTARE, answer);
  }
}
