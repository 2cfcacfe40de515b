package agro.course;

import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Mass;
import agro.units.MassUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.TemperatureUnit;
import agro.units.ThermalTimeUnit;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumeUnit;
import java.util.Objects;

/**
 * The units in which a class works.
 *
 * @param land unit of fields, for example hectare, acre or a measured local unit
 * @param water unit of tanks and spray volumes
 * @param measure unit of liquids in measuring vessels
 * @param powder unit of weighed products
 * @param yield unit of harvests
 * @param course unit of measured lengths in the field
 * @param speed unit of walking and driving speeds
 * @param temperature unit of temperatures
 */
public record CourseUnits(
    Unit<Area> land,
    Unit<Volume> water,
    Unit<Volume> measure,
    Unit<Mass> powder,
    Unit<Mass> yield,
    Unit<Length> course,
    Unit<Speed> speed,
    TemperatureUnit temperature) {

  /** Hectares, litres, grams, metres and degrees Celsius. */
  public static final CourseUnits METRIC =
      new CourseUnits(
          AreaUnit.HECTARE,
          VolumeUnit.LITRE,
          VolumeUnit.MILLILITRE,
          MassUnit.GRAM,
          MassUnit.KILOGRAM,
          LengthUnit.METRE,
          SpeedUnit.KILOMETRE_PER_HOUR,
          TemperatureUnit.CELSIUS);

  /** Acres, US gallons, US fluid ounces, ounces, feet and degrees Fahrenheit. */
  public static final CourseUnits US =
      new CourseUnits(
          AreaUnit.ACRE,
          VolumeUnit.US_GALLON,
          VolumeUnit.US_FLUID_OUNCE,
          MassUnit.OUNCE,
          MassUnit.POUND,
          LengthUnit.FOOT,
          SpeedUnit.MILE_PER_HOUR,
          TemperatureUnit.FAHRENHEIT);

  /** Refuses a missing unit. */
  public CourseUnits {
    Objects.requireNonNull(land, "land");
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(measure, "measure");
    Objects.requireNonNull(powder, "powder");
    Objects.requireNonNull(yield, "yield");
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(temperature, "temperature");
  }

  /**
   * These units with another unit of land, for example a local one.
   *
   * @param unit unit of fields
   * @return the changed units
   */
  public CourseUnits withLand(Unit<Area> unit) {
    return new CourseUnits(unit, water, measure, powder, yield, course, speed, temperature);
  }

  /**
   * Degree-days in the unit that belongs to the temperatures.
   *
   * @return degree-days in °C or °F
   */
  public ThermalTimeUnit thermalTime() {
    return temperature == TemperatureUnit.FAHRENHEIT
        ? ThermalTimeUnit.FAHRENHEIT_DAY
        : ThermalTimeUnit.CELSIUS_DAY;
  }
}
