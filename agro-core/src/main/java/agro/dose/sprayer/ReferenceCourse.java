package agro.dose.sprayer;

import agro.source.Reference;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.ExactFactor;
import agro.units.Unit;
import agro.units.Volume;
import agro.units.VolumePerArea;
import agro.units.VolumePerAreaUnit;
import agro.units.VolumeUnit;

/**
 * Areas on which the number caught in a small unit is the number of the volume per area in a large
 * one, so that a catch needs no arithmetic: US fluid ounces on 1/128 acre are US gallons per acre.
 */
public enum ReferenceCourse {
  /** 1/128 acre, 340.3125 ft²: US fluid ounces caught are US gallons per acre. */
  US_OUNCES(
      ExactFactor.of(1, 128),
      AreaUnit.ACRE,
      VolumeUnit.US_FLUID_OUNCE,
      VolumePerAreaUnit.US_GALLON_PER_ACRE),
  /** 1/160 acre, 272.25 ft²: imperial fluid ounces caught are imperial gallons per acre. */
  IMPERIAL_OUNCES(
      ExactFactor.of(1, 160),
      AreaUnit.ACRE,
      VolumeUnit.IMPERIAL_FLUID_OUNCE,
      VolumePerAreaUnit.IMPERIAL_GALLON_PER_ACRE),
  /** 1/1000 hectare, 10 m²: millilitres caught are litres per hectare. */
  MILLILITRES(
      ExactFactor.of(1, 1000),
      AreaUnit.HECTARE,
      VolumeUnit.MILLILITRE,
      VolumePerAreaUnit.LITRE_PER_HECTARE),
  /** 1/1000 acre, 43.56 ft²: millilitres caught are litres per acre. */
  MILLILITRES_PER_ACRE(
      ExactFactor.of(1, 1000),
      AreaUnit.ACRE,
      VolumeUnit.MILLILITRE,
      VolumePerAreaUnit.LITRE_PER_ACRE);

  private final ExactFactor share;
  private final Unit<Area> land;
  private final Unit<Volume> caught;
  private final Unit<VolumePerArea> volume;

  ReferenceCourse(
      ExactFactor share, Unit<Area> land, Unit<Volume> caught, Unit<VolumePerArea> volume) {
    this.share = share;
    this.land = land;
    this.caught = caught;
    this.volume = volume;
  }

  /**
   * The area of the course.
   *
   * @return for example 1/128 acre
   */
  public Area area() {
    return Area.of(share.convert(1), land);
  }

  /** The share of the unit of land, as written on a blackboard. */
  String shareWords() {
    return share + " " + land.symbol();
  }

  /**
   * The unit in which the catch is read.
   *
   * @return for example the US fluid ounce
   */
  public Unit<Volume> caught() {
    return caught;
  }

  /**
   * The unit of the volume per area that has the same number.
   *
   * @return for example US gallons per acre
   */
  public Unit<VolumePerArea> volume() {
    return volume;
  }

  /**
   * Who describes the method.
   *
   * @return the source
   */
  public Reference source() {
    return this == US_OUNCES ? SprayerSources.OUNCE_METHOD : SprayerSources.VOLUME_EQUATION;
  }
}
