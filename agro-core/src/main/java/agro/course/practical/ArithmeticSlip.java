package agro.course.practical;

import agro.course.practical.GroupReadings.NozzleCatches;
import agro.course.practical.GroupReadings.Refilled;
import agro.course.practical.GroupReadings.TimedRuns;
import agro.course.practical.GroupReadings.WholeOutput;
import agro.dose.sprayer.SprayLayout;
import agro.dose.sprayer.SprayUnits;
import agro.units.AreaUnit;
import agro.units.LengthUnit;
import agro.units.SpeedUnit;
import agro.units.Unit;
import agro.units.VolumeUnit;
import agro.units.WorkTime;
import agro.units.WorkTimeUnit;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Slips in the arithmetic of a calibration. Each multiplies the volume per area by a ratio that
 * follows from the units or from the readings of the group, by which it is recognised.
 */
public enum ArithmeticSlip {
  /** The volume per acre was written as one per hectare. */
  ACRE_FOR_HECTARE(group -> ratio(AreaUnit.ACRE, AreaUnit.HECTARE)),
  /** The volume per hectare was written as one per acre. */
  HECTARE_FOR_ACRE(group -> ratio(AreaUnit.HECTARE, AreaUnit.ACRE)),
  /** 10 000 stood in place of 600, with L/min, km/h and metres. */
  TEN_THOUSAND_FOR_600(
      group -> AreaUnit.HECTARE.toBase(1) / SprayUnits.METRIC.constant().convert(1)),
  /** 600 stood in place of 10 000, with L/s, m/s and metres. */
  SIX_HUNDRED_FOR_10_000(
      group -> SprayUnits.METRIC.constant().convert(1) / AreaUnit.HECTARE.toBase(1)),
  /** Metres per second stood in place of kilometres per hour. */
  METRES_PER_SECOND_FOR_KM_PER_HOUR(
      group -> ratio(SpeedUnit.METRE_PER_SECOND, SpeedUnit.KILOMETRE_PER_HOUR)),
  /** Kilometres per hour stood in place of metres per second. */
  KM_PER_HOUR_FOR_METRES_PER_SECOND(
      group -> ratio(SpeedUnit.KILOMETRE_PER_HOUR, SpeedUnit.METRE_PER_SECOND)),
  /** Miles per hour stood in place of kilometres per hour. */
  MILES_FOR_KILOMETRES(group -> ratio(LengthUnit.MILE, LengthUnit.KILOMETRE)),
  /** Kilometres per hour stood in place of miles per hour. */
  KILOMETRES_FOR_MILES(group -> ratio(LengthUnit.KILOMETRE, LengthUnit.MILE)),
  /** The flow in a second stood in place of the flow in a minute. */
  PER_SECOND_FOR_PER_MINUTE(group -> ratio(WorkTimeUnit.SECOND, WorkTimeUnit.MINUTE)),
  /** The flow in a minute stood in place of the flow in a second. */
  PER_MINUTE_FOR_PER_SECOND(group -> ratio(WorkTimeUnit.MINUTE, WorkTimeUnit.SECOND)),
  /** What was caught was taken for the flow in a minute, whatever the time of catching. */
  CATCH_FOR_MINUTE(
      group ->
          catchTime(group)
              .map(time -> time.ratioTo(WorkTime.of(1, WorkTimeUnit.MINUTE)))
              .orElse(Double.NaN)),
  /** The time of catching and that of the course were taken for each other. */
  TIMES_MIXED_UP(
      group ->
          group.pace() instanceof TimedRuns runs && catchTime(group).isPresent()
              ? catchTime(group).get().ratioTo(runs.times().mean())
              : Double.NaN),
  /** A width in centimetres was put in as metres. */
  WIDTH_CM_AS_M(group -> ratio(LengthUnit.CENTIMETRE, LengthUnit.METRE)),
  /** A width or course in feet was put in as metres. */
  FEET_AS_METRES(group -> ratio(LengthUnit.FOOT, LengthUnit.METRE)),
  /** A width or course in metres was put in as feet. */
  METRES_AS_FEET(group -> ratio(LengthUnit.METRE, LengthUnit.FOOT)),
  /** The flow of one nozzle was taken for that of all. */
  ONE_NOZZLE_FOR_ALL(
      group -> group.layout().nozzles() > 1 ? 1.0 / group.layout().nozzles() : Double.NaN),
  /** The flow of all nozzles was put in with the width of one. */
  ALL_NOZZLES_OVER_ONE_WIDTH(
      group -> group.layout().nozzles() > 1 ? group.layout().nozzles() : Double.NaN),
  /** Repeated catches were added up instead of averaged. */
  REPEATS_ADDED_UP(ArithmeticSlip::repeats),
  /** The last nozzle spacing was forgotten: the width was taken from first to last nozzle. */
  SPACES_FOR_NOZZLES(
      group ->
          group.layout() instanceof SprayLayout.Boom boom && boom.nozzles() > 1
              ? boom.nozzles() / (boom.nozzles() - 1.0)
              : Double.NaN),
  /** The course was counted once where it was sprayed there and back. */
  COURSE_COUNTED_ONCE(group -> 2),
  /** The course was counted there and back where it was sprayed once. */
  COURSE_COUNTED_TWICE(group -> 0.5),
  /** Millilitres were put in as litres. */
  MILLILITRES_AS_LITRES(group -> ratio(VolumeUnit.LITRE, VolumeUnit.MILLILITRE)),
  /** Litres were put in as millilitres. */
  LITRES_AS_MILLILITRES(group -> ratio(VolumeUnit.MILLILITRE, VolumeUnit.LITRE)),
  /** Litres were written as US gallons. */
  LITRES_AS_US_GALLONS(group -> ratio(VolumeUnit.US_GALLON, VolumeUnit.LITRE)),
  /** US gallons were written as litres. */
  US_GALLONS_AS_LITRES(group -> ratio(VolumeUnit.LITRE, VolumeUnit.US_GALLON)),
  /** Litres were written as imperial gallons. */
  LITRES_AS_IMPERIAL_GALLONS(group -> ratio(VolumeUnit.IMPERIAL_GALLON, VolumeUnit.LITRE)),
  /** Imperial gallons were written as litres. */
  IMPERIAL_GALLONS_AS_LITRES(group -> ratio(VolumeUnit.LITRE, VolumeUnit.IMPERIAL_GALLON)),
  /** US gallons were taken for imperial ones, or the other way round in the result. */
  US_FOR_IMPERIAL_GALLONS(group -> ratio(VolumeUnit.IMPERIAL_GALLON, VolumeUnit.US_GALLON)),
  /** Imperial gallons were taken for US ones. */
  IMPERIAL_FOR_US_GALLONS(group -> ratio(VolumeUnit.US_GALLON, VolumeUnit.IMPERIAL_GALLON)),
  /** The decimal point went one place to the right. */
  TEN_TIMES(group -> 10),
  /** The decimal point went one place to the left. */
  TENTH(group -> 0.1),
  /** The decimal point went two places to the right. */
  HUNDRED_TIMES(group -> 100),
  /** Only the first run and the first catch were used. */
  FIRST_READINGS_ONLY(ArithmeticSlip::firstReadings);

  private final transient ToDoubleFunction<GroupReadings> ratio;

  ArithmeticSlip(ToDoubleFunction<GroupReadings> ratio) {
    this.ratio = ratio;
  }

  /**
   * By how much the slip multiplies the volume per area of a group.
   *
   * @param group readings of the group
   * @return the wrong volume ÷ the right one; nothing where the slip cannot be made with these
   *     readings or changes nothing
   */
  public Optional<Double> ratioFor(GroupReadings group) {
    double times = ratio.applyAsDouble(group);
    return Double.isFinite(times) && times > 0 && times != 1
        ? Optional.of(times)
        : Optional.empty();
  }

  private static double ratio(Unit<?> above, Unit<?> below) {
    return above.factor().times(below.factor().inverse()).convert(1);
  }

  private static Optional<WorkTime> catchTime(GroupReadings group) {
    if (group.output() instanceof NozzleCatches catches) {
      return Optional.of(catches.time());
    }
    return group.output() instanceof WholeOutput whole
        ? Optional.of(whole.time())
        : Optional.empty();
  }

  private static double repeats(GroupReadings group) {
    int count = 1;
    if (group.output() instanceof WholeOutput whole) {
      count = whole.volumes().count();
    } else if (group.output() instanceof Refilled refilled) {
      count = refilled.volumes().count();
    } else if (group.output() instanceof NozzleCatches catches && catches.catches().size() == 1) {
      count = catches.catches().get(0).volumes().size();
    }
    return count > 1 ? count : Double.NaN;
  }

  private static double firstReadings(GroupReadings group) {
    double flow = 1;
    if (group.output() instanceof WholeOutput whole) {
      flow = whole.volumes().readings().get(0).ratioTo(whole.volumes().mean());
    } else if (group.output() instanceof Refilled refilled) {
      flow = refilled.volumes().readings().get(0).ratioTo(refilled.volumes().mean());
    } else if (group.output() instanceof NozzleCatches catches) {
      var first = catches.catches().get(0).volumes().get(0).dividedBy(catches.time());
      flow = first.times(group.layout().nozzles()).ratioTo(group.wholeFlow().orElseThrow());
    }
    if (group.pace() instanceof TimedRuns runs && !(group.output() instanceof Refilled)) {
      flow *= runs.times().readings().get(0).ratioTo(runs.times().mean());
    }
    return flow;
  }
}
