package agro.dose.sprayer;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.ExactFactor;
import agro.units.FlowRate;
import agro.units.FlowRateUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Numbers;
import agro.units.Pressure;
import agro.units.PressureUnit;
import agro.units.Quantity;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerAreaUnit;
import agro.units.VolumeUnit;
import java.util.Objects;

/**
 * The units in which a calibration is printed. The relation between flow, speed, swath and volume
 * per area is always the same; only its constant depends on the units, and it is exact: 600 for
 * L/min, km/h and m; 5940 for US gal/min, mph and inches.
 *
 * @param flow unit of flows
 * @param speed unit of speeds
 * @param width unit of swaths and of courses
 * @param volume unit of volumes per area
 * @param caught unit of volumes that are caught or filled in
 * @param pressure unit of pressures
 */
public record SprayUnits(
    Unit<FlowRate> flow,
    Unit<Speed> speed,
    Unit<Length> width,
    Unit<VolumePerArea> volume,
    Unit<Volume> caught,
    Unit<Pressure> pressure) {

  /** L/min, km/h, m, L/ha: the constant is 600. */
  public static final SprayUnits METRIC =
      new SprayUnits(
          FlowRateUnit.LITRE_PER_MINUTE,
          SpeedUnit.KILOMETRE_PER_HOUR,
          LengthUnit.METRE,
          VolumePerAreaUnit.LITRE_PER_HECTARE,
          VolumeUnit.LITRE,
          PressureUnit.BAR);

  /** L/min, km/h, m and L per acre, as on many small farms of South Asia. */
  public static final SprayUnits METRIC_PER_ACRE =
      new SprayUnits(
          FlowRateUnit.LITRE_PER_MINUTE,
          SpeedUnit.KILOMETRE_PER_HOUR,
          LengthUnit.METRE,
          VolumePerAreaUnit.LITRE_PER_ACRE,
          VolumeUnit.LITRE,
          PressureUnit.BAR);

  /** US gal/min, mph, inches, US gal/ac: the constant is 5940. */
  public static final SprayUnits US =
      new SprayUnits(
          FlowRateUnit.US_GALLON_PER_MINUTE,
          SpeedUnit.MILE_PER_HOUR,
          LengthUnit.INCH,
          VolumePerAreaUnit.US_GALLON_PER_ACRE,
          VolumeUnit.US_FLUID_OUNCE,
          PressureUnit.POUND_PER_SQUARE_INCH);

  /** US gal/min, mph, feet, US gal/ac: the constant is 495. */
  public static final SprayUnits US_FEET =
      new SprayUnits(
          FlowRateUnit.US_GALLON_PER_MINUTE,
          SpeedUnit.MILE_PER_HOUR,
          LengthUnit.FOOT,
          VolumePerAreaUnit.US_GALLON_PER_ACRE,
          VolumeUnit.US_FLUID_OUNCE,
          PressureUnit.POUND_PER_SQUARE_INCH);

  /** US fl oz/min, mph, inches, US gal/ac: the constant is 46.40625. */
  public static final SprayUnits US_OUNCES =
      new SprayUnits(
          FlowRateUnit.US_FLUID_OUNCE_PER_MINUTE,
          SpeedUnit.MILE_PER_HOUR,
          LengthUnit.INCH,
          VolumePerAreaUnit.US_GALLON_PER_ACRE,
          VolumeUnit.US_FLUID_OUNCE,
          PressureUnit.POUND_PER_SQUARE_INCH);

  /** Imperial gal/min, mph, inches, imperial gal/ac: the constant is 5940 as well. */
  public static final SprayUnits IMPERIAL =
      new SprayUnits(
          FlowRateUnit.IMPERIAL_GALLON_PER_MINUTE,
          SpeedUnit.MILE_PER_HOUR,
          LengthUnit.INCH,
          VolumePerAreaUnit.IMPERIAL_GALLON_PER_ACRE,
          VolumeUnit.IMPERIAL_FLUID_OUNCE,
          PressureUnit.POUND_PER_SQUARE_INCH);

  /** Base units of volume per area in one L/min per m/s and m: 10 000 m²/ha over 60 s/min. */
  private static final ExactFactor IN_BASE_UNITS = ExactFactor.of(500, 3);

  /** Digits in steps, enough to follow the arithmetic by hand. */
  private static final int DIGITS = 5;

  /** Digits of what a page states. */
  private static final int STATED_DIGITS = 4;

  /** Refuses nulls. */
  public SprayUnits {
    Objects.requireNonNull(flow, "flow");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(caught, "caught");
    Objects.requireNonNull(pressure, "pressure");
  }

  /**
   * The constant of "volume per area = constant × flow ÷ (speed × swath)" in these units.
   *
   * @return an exact ratio, for example 600
   */
  public ExactFactor constant() {
    return IN_BASE_UNITS
        .times(flow.factor())
        .times(speed.factor().inverse())
        .times(width.factor().inverse())
        .times(volume.factor().inverse());
  }

  /**
   * The same units with another unit of volume per area, for example one per bigha.
   *
   * @param unit the unit
   * @return new units
   */
  public SprayUnits withVolume(Unit<VolumePerArea> unit) {
    return new SprayUnits(flow, speed, width, unit, caught, pressure);
  }

  /**
   * The same units with another unit of width and course.
   *
   * @param unit the unit
   * @return new units
   */
  public SprayUnits withWidth(Unit<Length> unit) {
    return new SprayUnits(flow, speed, unit, volume, caught, pressure);
  }

  /** The unit of a plot: square feet where lengths are in inches, feet or yards. */
  Unit<Area> smallArea() {
    boolean feet = width == LengthUnit.INCH || width == LengthUnit.FOOT || width == LengthUnit.YARD;
    return feet ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE;
  }

  /** The unit of a course: feet where widths are in inches. */
  Unit<Length> course() {
    return width == LengthUnit.INCH ? LengthUnit.FOOT : width;
  }

  /** A quantity in one of these units, with the digits of a step. */
  static <Q extends Quantity<Q>> String print(Q quantity, Unit<Q> unit) {
    return Numbers.significant(quantity.in(unit), DIGITS) + " " + unit.symbol();
  }

  String flow(FlowRate rate) {
    return print(rate, flow);
  }

  String speed(Speed value) {
    return print(value, speed);
  }

  String width(Length length) {
    return print(length, width);
  }

  String volume(VolumePerArea rate) {
    return print(rate, volume);
  }

  String caught(Volume amount) {
    return print(amount, caught);
  }

  /** A volume per area as a page states it. */
  String stated(VolumePerArea rate) {
    return stated(rate, volume);
  }

  /** A flow as a page states it. */
  String stated(FlowRate rate) {
    return stated(rate, flow);
  }

  private static <Q extends Quantity<Q>> String stated(Q quantity, Unit<Q> unit) {
    return Numbers.significant(quantity.in(unit), STATED_DIGITS) + " " + unit.symbol();
  }

  String pressure(Pressure value) {
    return print(value, pressure);
  }
}
