package agro.course.topic.calibration;

import agro.course.CourseUnits;
import agro.course.CourseWords;
import agro.course.ExerciseDraw;
import agro.course.UnitSizes;
import agro.dose.sprayer.SprayUnits;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.FlowRate;
import agro.units.Length;
import agro.units.LengthUnit;
import agro.units.Pressure;
import agro.units.PressureUnit;
import agro.units.Speed;
import agro.units.SpeedUnit;
import agro.units.Unit;
import agro.units.VolumePerArea;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;

/** The units of calibrations that belong to the units of a class, and figures drawn in them. */
record CalibrationUnits(CourseUnits course) {

  /** Whether lengths are in feet and inches. */
  boolean feet() {
    return course.course().equals(LengthUnit.FOOT);
  }

  /** Whether liquids are in US gallons. */
  boolean gallons() {
    return course.water().equals(VolumeUnit.US_GALLON);
  }

  Unit<FlowRate> flow() {
    return FlowRate.unit(course.water(), WorkTimeUnit.MINUTE);
  }

  Unit<Length> spacing() {
    return feet() ? LengthUnit.INCH : course.course();
  }

  Unit<Area> ground() {
    return feet() ? AreaUnit.SQUARE_FOOT : AreaUnit.SQUARE_METRE;
  }

  Unit<VolumePerArea> volume() {
    return VolumePerArea.unit(course.water(), course.land());
  }

  Unit<VolumePerArea> dose() {
    return VolumePerArea.unit(course.measure(), course.land());
  }

  Unit<Pressure> pressure() {
    return gallons() ? PressureUnit.POUND_PER_SQUARE_INCH : PressureUnit.BAR;
  }

  /** Speeds by the second, in the unit of measured lengths. */
  Unit<Speed> perSecond() {
    return Speed.unit(course.course(), WorkTimeUnit.SECOND);
  }

  /** What a volume becomes for somebody who puts the speed per second into the equation. */
  double speedMixUp(Speed speed) {
    return speed.in(course.speed()) / speed.in(perSecond());
  }

  /** Units for the equation of volume, flow, speed and width, the width in the stated unit. */
  SprayUnits spray(Unit<Length> width) {
    return new SprayUnits(flow(), course.speed(), width, volume(), course.measure(), pressure());
  }

  /** The constant of that equation. */
  double constant(Unit<Length> width) {
    return spray(width).constant().convert(1);
  }

  /** What the land of the class measures on the ground, as a sentence. */
  String givenLand(CourseWords words) {
    return given(words, UnitSizes.in(words).and(course.land(), ground()));
  }

  /** Every size that leads from flow, speed and width to a volume per land, as a sentence. */
  String givenEquation(CourseWords words, Unit<Length> width) {
    var sizes =
        UnitSizes.in(words)
            .and(course.land(), ground())
            .and(perSecond(), course.speed())
            .and(course.course(), width);
    return given(words, gallons() ? sizes.and(course.water(), course.measure()) : sizes);
  }

  /** Sizes as a sentence of the topic. */
  static String given(CourseWords words, UnitSizes sizes) {
    return words.say("given", "sizes", sizes.print());
  }

  /** The flow that brings out a volume per land on a width at a speed. */
  static FlowRate flowFor(VolumePerArea volume, Length width, Speed speed) {
    var minute = new WorkTime(60);
    return volume.times(speed.times(minute).times(width)).dividedBy(minute);
  }

  Length drawSpacing(ExerciseDraw draw) {
    return Length.of(feet() ? draw.step(12, 40, 2) : draw.step(0.3, 0.75, 0.05), spacing());
  }

  Speed drawSpeed(ExerciseDraw draw) {
    return Speed.of(miles() ? draw.step(2.5, 5, 0.1) : draw.step(4, 8, 0.2), course.speed());
  }

  /** A speed at which somebody walks with a sprayer. */
  Speed drawWalk(ExerciseDraw draw) {
    return Speed.of(miles() ? draw.step(1.6, 3.1, 0.1) : draw.step(2.6, 5, 0.1), course.speed());
  }

  private boolean miles() {
    return !course.speed().equals(SpeedUnit.KILOMETRE_PER_HOUR);
  }
}
